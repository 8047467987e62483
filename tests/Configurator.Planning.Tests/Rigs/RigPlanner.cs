using System.Collections.Immutable;
using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Planning.Tests.Rigs;

/// <summary>Plans rigs with the planner under test.</summary>
internal static class RigPlanner
{
    public static ImmutableSortedDictionary<InstanceKey, Home> NoHomes { get; } =
        ImmutableSortedDictionary<InstanceKey, Home>.Empty;

    public static PlanResult Plan(
        OrderLogic logic,
        ImmutableSortedDictionary<InstanceKey, Home>? homes = null,
        PlanMode mode = PlanMode.KeepHomes
    ) => Planner.Plan(logic, homes ?? NoHomes, mode, PlanEffort.Usual);

    /// <summary>Homes at ports of those fits alone.</summary>
    public static ImmutableSortedDictionary<InstanceKey, Home> Only(
        this ImmutableSortedDictionary<InstanceKey, Home> homes,
        Func<InstanceKey, bool> isWanted
    ) => homes.Where(home => !home.Value.IsDirect && isWanted(home.Key)).ToImmutableSortedDictionary();
}
