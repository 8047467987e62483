using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Loads;

/// <summary>Whole numbers of fits, each under the condition that mounts it.</summary>
internal static class FitSums
{
    public static WeightedSum Of(IEnumerable<(FitInstance Instance, long Weight)> parts) => new(0, [.. Terms(parts)]);

    public static IEnumerable<WeightedTerm> Terms(IEnumerable<(FitInstance Instance, long Weight)> parts) =>
        parts
            .Where(part => part.Weight != 0)
            .Select(part => new WeightedTerm(FitConditions.Of(part.Instance), part.Weight));
}
