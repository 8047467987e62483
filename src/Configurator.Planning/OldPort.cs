using System.Collections.Immutable;
using Google.OrTools.Sat;

namespace Configurator.Planning;

/// <summary>A port that has tenants already.</summary>
internal sealed class OldPort(PlanGroup group, int port, ImmutableArray<PlanItem> tenants)
{
    public PlanGroup Group => group;

    public int Port => port;

    public ImmutableArray<PlanItem> Tenants => tenants;

    public BoolVar? IsKept { get; set; }

    public static ImmutableArray<OldPort> Of(PlanProblem problem) =>
        [
            .. problem
                .Items.Where(item => item.Old is not null)
                .GroupBy(item => (Group: problem.GroupOf(item.Old!.Value)!, item.Old!.Value.Port))
                .OrderBy(set => set.Key.Group.Index)
                .ThenBy(set => set.Key.Port)
                .Select(set => new OldPort(set.Key.Group, set.Key.Port, [.. set])),
        ];
}
