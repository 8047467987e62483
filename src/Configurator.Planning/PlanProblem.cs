using System.Collections.Immutable;

namespace Configurator.Planning;

/// <summary>Which fits need a port, which ports there are, and who can live where. Items stand in the order of their
/// keys, so that the order in which definitions are read does not matter.</summary>
/// <param name="Cable">Millimetres of cable for each item at each group; null where it cannot live there.</param>
/// <param name="Pairs">Can the item share a port of the group with another one through a splitter?</param>
/// <param name="SplitterCable">What a splitter counts for in millimetres of cable.</param>
internal sealed record PlanProblem(
    ImmutableArray<PlanItem> Items,
    ImmutableArray<PlanGroup> Groups,
    ImmutableArray<PlanCarrier> Carriers,
    ConditionFacts Facts,
    long?[,] Cable,
    bool[,] Pairs,
    long SplitterCable,
    int BoxCables
)
{
    public int Extensions => Carriers.Count(carrier => carrier.Extension is not null);

    public IEnumerable<PlanGroup> GroupsOf(PlanItem item) => Groups.Where(group => CanLive(item, group));

    /// <summary>By class, reach and current; a hub's ports only for what is never fitted without the hub.</summary>
    public bool CanLive(PlanItem item, PlanGroup group) =>
        Cable[item.Index, group.Index] is not null
        && (group.Hub is not { } hub || (hub != item.Index && Facts.Implies[item.Condition, Items[hub].Condition]));

    public bool CanPair(PlanItem item, PlanGroup group) => Pairs[item.Index, group.Index];

    /// <summary>Do both live at one port, through a splitter?</summary>
    public bool IsPair(PlanItem one, PlanItem other) =>
        one.Old is { } home
        && other.Old is { } beside
        && home.IsPinTwo != beside.IsPinTwo
        && one.Key.Source == other.Key.Source
        && GroupOf(home) is { } group
        && CanPair(one, group)
        && CanPair(other, group);

    public bool CanMeet(PlanItem one, PlanItem other) => Facts.Together[one.Condition, other.Condition];

    public PlanGroup? GroupOf(Core.Model.Home home) =>
        home.Master is { } name
            ? Groups.FirstOrDefault(group => group.Name == name && group.Ports.Contains(home.Port))
            : null;
}
