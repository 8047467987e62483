using Configurator.Core.Engineering;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering.Hygiene;

public class AgentTests
{
    private const string Machine = "machines/tray-one/machine.yaml";
    private const string Eye = "options/devices/contrast-eye.yaml";
    private const string Manifold = "options/devices/gas-manifold.yaml";

    // Source: reference rows: polycarbonate is to be kept from both foams of the base machine, POM from one of them.
    [Theory]
    [InlineData("PMMA", "caustic-foam, chlorinated-foam", "peracetic, quat")]
    [InlineData("POM", "caustic-foam", "quat")]
    [InlineData("NBR", "caustic-foam", "quat")]
    [InlineData("PTFE", "caustic-foam, chlorinated-foam", "peracetic, quat")]
    public void What_is_left_is_what_every_part_bears(string material, string foams, string sanitizers)
    {
        var findings = Findings(BaseCatalogue.Whole.Replacing(Eye, "PMMA", material));

        Assert.Equal(foams, Left(findings, "wet/foam-and-scrub"));
        Assert.Equal(sanitizers, Left(findings, "wet/sanitize"));
    }

    // Source: reference rows: FKM is to be kept from caustic, POM from chlorinated foam; each alone bears the other one.
    [Fact]
    public void Two_parts_can_rule_out_every_agent_between_them()
    {
        var findings = Findings(
            BaseCatalogue.Whole.Replacing(Eye, "PMMA", "FKM").Replacing(Manifold, "EPDM", "POM"));

        var left = Assert.Single(findings, finding => finding.Id == "hygiene.agents/wet/foam-and-scrub");
        Assert.Equal(Verdict.Fail, left.Verdict);
        Assert.Contains("`caustic-foam` is ruled out by `contrast-eye` of `top-film/film-eye/1`", left.Statement, StringComparison.Ordinal);
        Assert.DoesNotContain(findings, finding => finding.Rule.Name == "hygiene.materials" && finding.IsOpen);
    }

    // One mistake gives one diagnostic: the part that bears none is named, the step is not judged besides.
    [Fact]
    public void A_part_that_bears_no_agent_of_a_step_is_named_alone()
    {
        var open = Findings(BaseCatalogue.Whole.Replacing(Eye, "PMMA", "polycarbonate"))
            .Where(finding => finding.IsOpen);

        var failed = Assert.Single(open);
        Assert.Equal("hygiene.materials/top-film/film-eye/1", failed.Id);
        Assert.Contains("stress cracking", failed.Statement, StringComparison.Ordinal);
        Assert.Contains("(corroborated)", failed.Statement, StringComparison.Ordinal);
    }

    // Source: common label values, common practice: quat 400 ppm, contact 15 min, foam 60 degC.
    [Theory]
    [InlineData("300 ppm", "401 ppm", "quat")]
    [InlineData("concentration: 150 ppm", "concentration: 0.021 percent", "peracetic")]
    [InlineData("concentration: 3 percent, temperature: 50 degC", "concentration: 3 percent, temperature: 145 degF", "chlorinated-foam")]
    public void An_agent_beyond_what_ratings_cover_is_for_a_person(string was, string now, string agent)
    {
        var findings = Findings(BaseCatalogue.Whole.Replacing(Machine, was, now));

        var open = Assert.Single(findings, finding => finding.IsOpen);
        Assert.Equal($"hygiene.strength/{agent}", open.Id);
        Assert.Equal(Verdict.Review, open.Verdict);
    }

    private static IReadOnlyList<Finding> Findings(BaseCatalogue catalogue) =>
        Assert.Single(catalogue.Check().Value.Configurations).Report.Findings;

    private static string Left(IReadOnlyList<Finding> findings, string about) => string.Join(", ", Assert.Single(
        findings, finding => finding.Id == $"hygiene.agents/{about}").Details[3].Split(", ").Order(StringComparer.Ordinal));
}
