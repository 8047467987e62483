using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering;

/// <summary>Records of accepted deviations: where they stand, what they can accept, and until when.</summary>
public class AcceptanceTests
{
    private const string Machine = "machines/tray-one/machine.yaml";
    private const string Salad = "machines/tray-one/configurations/salad.yaml";

    private static string Accept(string finding, string until = "2027-03-31") =>
        $"accepted:\n  - {{finding: {finding}, by: controls lead, because: A test bench, until: {until}}}\n";

    private static BaseCatalogue With(string path, string text) => BaseCatalogue.Whole.And(path, BaseCatalogue.Whole.TextOf(path) + text);

    /// <summary>The master `main` then lacks a spare port.</summary>
    private static BaseCatalogue Short(BaseCatalogue catalogue) => catalogue.Replacing(Machine, "spare-ports: 1", "spare-ports: 6");

    private static string Said(BaseCatalogue catalogue) =>
        string.Join('\n', catalogue.Check().Diagnostics.Select(diagnostic => $"{diagnostic.Rule.Code} {diagnostic.Message}"));

    [Theory]
    [InlineData(Machine)]
    [InlineData(Salad)]
    public void A_record_counts_to_the_end_of_its_last_day(string path)
    {
        var catalogue = Short(With(path, Accept("ports.spare/main")));

        Assert.Equal("", Said(catalogue));
        Assert.Equal("", Said(catalogue.On(2027, 3, 1)));
        Assert.Equal("CFG4904 `ports.spare/main` is accepted until 2027-03-31 only", Said(catalogue.On(2027, 3, 2)));
        Assert.Equal("CFG4904 `ports.spare/main` is accepted until 2027-03-31 only", Said(catalogue.On(2027, 3, 31)));
        Assert.StartsWith("CFG4903 `ports.spare/main` was accepted until 2027-03-31, and fails: ", Said(catalogue.On(2027, 4, 1)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_that_has_ended_gives_way_to_one_that_has_not() => Assert.Equal(
        "",
        Said(Short(With(Salad, Accept("ports.spare/main", "2026-01-01")).And(
            Machine, BaseCatalogue.Whole.TextOf(Machine) + Accept("ports.spare/main", "2029-01-01"))).On(2027, 1, 1)));

    [Fact]
    public void A_record_of_the_machine_that_no_configuration_needs_is_useless() => Assert.Equal(
        "CFG4901 `ports.spare/main` is not a failed finding of any configuration of `tray-one`",
        Said(With(Machine, Accept("ports.spare/main"))));

    [Fact]
    public void A_record_of_the_machine_cannot_accept_a_safety_finding_either()
    {
        var catalogue = With(Machine, Accept("safety.wiring/top-film/film-eye/1"))
            .Replacing("options/devices/contrast-eye.yaml", "kind: sensor", "kind: safety");

        Assert.StartsWith("CFG4902 `safety.wiring/top-film/film-eye/1` is a safety finding: ", Said(catalogue), StringComparison.Ordinal);
        Assert.DoesNotContain('\n', Said(catalogue));
    }
}
