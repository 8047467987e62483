using System.Collections.Immutable;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Covering;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering;

/// <summary>Configurations that are engineered although nobody ordered them: together they hold every two options in
/// every way that the rules allow.</summary>
/// <param name="Passed">Those without failed findings.</param>
/// <param name="Engineered">How many were engineered.</param>
public sealed record CheckedSet(ImmutableArray<Configuration> Passed, int Engineered)
{
    public static CheckedSet Empty { get; } = new([], 0);

    /// <summary>Empty where the layout has faults, or the rules are too entangled to choose from.</summary>
    public static CheckedSet Of(OrderLogic logic)
    {
        if (!logic.Machine.IsWhole || CoveringSet.Of(logic, CoveringSet.QuickWork) is not { } covering)
        {
            return Empty;
        }

        return new(
            [.. covering.Configurations.Where(configuration => Passes(logic.Machine, configuration))],
            covering.Configurations.Length
        );
    }

    private static bool Passes(Machine machine, Configuration configuration) =>
        Engineer.Compute(machine, configuration, machine.Plan).Findings.All(finding => finding.Verdict != Verdict.Fail);
}
