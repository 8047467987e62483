using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>Every washed part against its area, its washing and the agents; and how the machine is built for
/// it.</summary>
internal static class HygieneChecks
{
    /// <summary>Nothing where the machine does not say how it is cleaned.</summary>
    public static IEnumerable<Finding> Compute(FittedMachine fitted)
    {
        if (fitted.Machine.Sanitation is null)
        {
            return [];
        }

        var parts = WashedParts.On(fitted);
        return
        [
            .. parts.SelectMany(part => OfPart(fitted, part)),
            .. AgentChecks.Compute(fitted, parts),
            .. BuiltChecks.Compute(fitted),
        ];
    }

    private static IEnumerable<Finding> OfPart(FittedMachine fitted, WashedPart part) =>
        Judge(fitted, part).Select(finding =>
            finding is { IsOpen: true, Fix: null } ? finding with { Fix = Mend(fitted, part) } : finding
        );

    private static IEnumerable<Finding> Judge(FittedMachine fitted, WashedPart part) =>
        [
            .. part.HasMarking ? [IngressChecks.Of(fitted, part)] : Array.Empty<Finding>(),
            MaterialChecks.Of(fitted, part),
            .. FinishChecks.Of(part),
        ];

    /// <summary>Alternates of the library that pass every check there, by id.</summary>
    public static IEnumerable<Device> Passing(FittedMachine fitted, WashedPart part) =>
        (part.Device?.Alternates ?? [])
            .Select(id => fitted.Machine.Library.GetValueOrDefault(id))
            .OfType<Device>()
            .Where(other => other is { IsWhole: true, IsSoundForWashing: true })
            .Where(other => Judge(fitted, part.With(other)).All(finding => !finding.IsOpen))
            .OrderBy(other => other.Id.Value);

    private static string Mend(FittedMachine fitted, WashedPart part) =>
        Passing(fitted, part).Select(other => $"`{other.Id.Value}`").ToList() switch
        {
            { Count: > 0 } passing => $"take {string.Join(" or ", passing)} instead, which passes there",
            _ when part.Device is null => "state a box that is made for it",
            _ =>
                $"no alternate of `{part.Device.Id.Value}` passes there: name one under its `alternates`, mount it elsewhere,"
                    + " or rule out the order",
        };
}
