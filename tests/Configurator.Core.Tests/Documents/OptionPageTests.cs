using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Documents;

public class OptionPageTests
{
    private const string Machine = "machines/cup-one/index.html";

    private static readonly Check Excluded = Check.Small.Changing(
        SmallCatalogue.Option("agitator"),
        "offered-on",
        "not-with: [{option: cup-check, because: The eye sees the stirrer}]\noffered-on");

    [Theory]
    [InlineData("agitator", "Not together with | Cup check | The eye sees the stirrer")]
    [InlineData("cup-check", "Not together with | Agitator | The eye sees the stirrer")]
    public void An_exclusion_stands_on_the_pages_of_both_options(string option, string row)
    {
        var facts = Excluded.Section($"options/{option}.html", "facts");
        Assert.Contains(row, facts, StringComparison.Ordinal);
        Assert.Contains("Not together with: ", facts, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("counter")]
    [InlineData("cup-check")]
    public void A_rule_of_a_machine_stands_on_the_page_of_every_option_it_speaks_of(string option) => Assert.Contains(
        "Cup filler with one lane | “Cup counter” | Needs | “Cup check” | Only a cup that is seen can be counted",
        Check.Small.Section($"options/{option}.html", "facts"),
        StringComparison.Ordinal);

    [Fact]
    public void An_option_that_no_rule_speaks_of_shows_none() =>
        Assert.DoesNotContain(" | Needs | ", Check.Small.Section("options/heads.html", "facts"), StringComparison.Ordinal);

    [Fact]
    public void What_must_never_be_is_said_as_an_exclusion_on_every_page()
    {
        var check = Check.Small.Machine("    need: cup-check", "    never: agitator");
        const string Row = "“Cup counter” | Not together with | “Agitator” | Only a cup that is seen can be counted";
        Assert.Contains(Row, check.Section(Machine, "rules"), StringComparison.Ordinal);
        Assert.Contains(Row, check.Section("options/agitator.html", "facts"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_price_of_an_option_is_without_its_devices() => Assert.Contains(
        "List price, devices extra: 340 EUR",
        Check.Small.Changing(SmallCatalogue.Option("heads"), "offered-on", "price: 340 EUR\noffered-on").Section("options/heads.html", "facts"),
        StringComparison.Ordinal);
}
