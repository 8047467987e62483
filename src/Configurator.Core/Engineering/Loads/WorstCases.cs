using System.Collections.Immutable;
using System.Numerics;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Weighing;

namespace Configurator.Core.Engineering.Loads;

/// <summary>The worst cases of a machine, each load by itself.</summary>
/// <param name="Configurations">All that keep the rules; null where not computed.</param>
public sealed record WorstCases(BigInteger? Configurations, ImmutableArray<WorstCase> Loads)
{
    /// <summary>None for a machine without configurations or whose layout has faults.</summary>
    public static WorstCases Of(OrderLogic logic)
    {
        var machine = logic.Machine;
        if (!machine.IsWhole || !logic.IsPossible(PartialOrder.Empty))
        {
            return new(logic.Count(PartialOrder.Empty), []);
        }

        var sums = MachineLoads.Of(machine).Select(load => (Load: load, Sum: MachineLoads.Of(machine, load))).ToList();
        var weigher = Weigher.Of(logic, sums.SelectMany(pair => pair.Sum.Terms).Select(term => term.When));
        return new(
            logic.Count(PartialOrder.Empty),
            [
                .. sums.Select(pair => new WorstCase(
                    pair.Load,
                    pair.Sum,
                    weigher.Lightest(pair.Sum, PartialOrder.Empty)!,
                    weigher.Heaviest(pair.Sum, PartialOrder.Empty)!
                )),
            ]
        );
    }
}
