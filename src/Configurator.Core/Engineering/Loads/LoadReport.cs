using System.Collections.Immutable;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Loads;

/// <summary>All that can be said of one load over all configurations of a machine.</summary>
/// <param name="Mean">Over configurations, not over sales; null where not computed.</param>
/// <param name="Margins">Null where not computed.</param>
/// <param name="Histogram">Null where not computed.</param>
/// <param name="Mixed">By the declared order mix; null where the machine declares none.</param>
public sealed record LoadReport(
    Machine Machine,
    WorstCase WorstCase,
    Rational? Mean,
    ImmutableArray<OptionMargin>? Margins,
    ImmutableArray<WeightClass>? Histogram,
    MixedLoad? Mixed
)
{
    public Load Load => WorstCase.Load;

    /// <summary>Null for a machine without configurations.</summary>
    public static LoadReport? Of(OrderLogic logic, Load load)
    {
        var sum = MachineLoads.Of(logic.Machine, load);
        var weigher = Weigher.Of(logic, sum.Terms.Select(term => term.When));
        var all = PartialOrder.Empty;
        return weigher.Heaviest(sum, all) is { } heaviest && weigher.Lightest(sum, all) is { } lightest
            ? new(
                logic.Machine,
                new(load, sum, lightest, heaviest),
                weigher.Mean(sum, all),
                weigher.Margins(sum, all),
                weigher.Histogram(sum, all),
                logic.Machine.OrderMix is { IsEmpty: false } mix
                    ? new(weigher.Mean(sum, all, mix), weigher.Histogram(sum, all, mix))
                    : null
            )
            : null;
    }
}
