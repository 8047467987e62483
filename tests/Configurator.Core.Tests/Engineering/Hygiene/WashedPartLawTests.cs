using System.Collections.Immutable;
using Configurator.Core.Engineering;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Model;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering.Hygiene;

/// <summary>Every washed part of the demonstration machines, moved in thought into areas of every class.</summary>
public class WashedPartLawTests
{
    private static readonly ImmutableArray<AreaClass> FromMildest = [AreaClass.NonFood, AreaClass.Splash, AreaClass.Food];

    private static readonly Lazy<ImmutableArray<(FittedMachine Fitted, WashedPart Part)>> Parts = new(() =>
        [
            .. DemoCatalogue.Engineered.Configurations
                .Select(configuration => configuration.Report.Fitted)
                .SelectMany(fitted => WashedParts.On(fitted).Select(part => (fitted, part))),
        ]);

    // Law: what fails in an area fails in every stricter one too, check by check.
    [Fact]
    public void A_stricter_area_never_turns_a_failure_of_a_part_into_a_pass() => Assert.All(Parts.Value, pair =>
    {
        foreach (var (milder, stricter) in FromMildest.Zip(FromMildest.Skip(1)))
        {
            var after = Failed(pair.Fitted, In(pair.Part, stricter));
            Assert.All(Failed(pair.Fitted, In(pair.Part, milder)), rule => Assert.Contains(rule, after));
        }
    });

    [Fact]
    public void Some_part_passes_in_a_mild_area_and_fails_in_a_strict_one() => Assert.Contains(Parts.Value, pair =>
        Failed(pair.Fitted, In(pair.Part, AreaClass.NonFood)).IsEmpty
        && !Failed(pair.Fitted, In(pair.Part, AreaClass.Food)).IsEmpty);

    [Fact]
    public void Each_finding_of_a_part_names_device_area_requirement_marking_rule_and_source() => Assert.All(
        Parts.Value,
        pair => Assert.All(
            Findings(pair.Fitted, pair.Part),
            finding =>
            {
                Assert.Equal(4, finding.Details.Length);
                Assert.All(finding.Details, detail => Assert.NotEqual("", detail));
                Assert.Contains($"`{finding.Details[1]}`", finding.Statement, StringComparison.Ordinal);
                Assert.Contains(pair.Part.Name, finding.Statement, StringComparison.Ordinal);
                Assert.NotEqual("", finding.Rule.Title);
                Assert.NotEqual("", finding.Source ?? finding.Rule.Source);
            }));

    private static WashedPart In(WashedPart part, AreaClass area) => part with { Area = part.Area with { Class = area } };

    private static ImmutableArray<string> Failed(FittedMachine fitted, WashedPart part) =>
        [.. Findings(fitted, part).Where(finding => finding.Verdict == Verdict.Fail).Select(finding => finding.Rule.Name)];

    private static ImmutableArray<Finding> Findings(FittedMachine fitted, WashedPart part) =>
        [
            .. part.HasMarking ? [IngressChecks.Of(fitted, part)] : Array.Empty<Finding>(),
            MaterialChecks.Of(fitted, part),
            .. FinishChecks.Of(part),
        ];
}
