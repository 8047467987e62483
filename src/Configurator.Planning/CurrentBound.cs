using System.Collections.Immutable;
using Google.OrTools.Sat;

namespace Configurator.Planning;

/// <summary>
/// Keeps the current of masters and hubs within their limits in every order: of conditions that never hold together
/// only the largest counts. The bound is on the safe side; what is exact is computed when a plan is checked.
/// Where homes that stay come to more than a limit by this bound, nothing that draws joins them.
/// </summary>
/// <param name="mayMove">Homes so far may be given up.</param>
internal sealed class CurrentBound(
    CpModel model,
    PlanProblem problem,
    bool mayMove,
    Func<PlanItem, PlanGroup, IEnumerable<BoolVar>> at
)
{
    public void Add()
    {
        foreach (var carrier in problem.Carriers)
        {
            var groups = problem.Groups.Where(group => group.Carrier == carrier.Index).ToList();
            Limit(groups, carrier.CurrentMax, item => Drawn(item, carrier), null);
            var classB = groups.FindAll(group => group.Class == Core.Model.PortClass.B);
            Limit(classB, carrier.ExtraMax, item => item.Extra, null);
            if (carrier.Hub is { } hub)
            {
                LimitPortOf(problem.Items[hub], groups);
            }
        }
    }

    /// <summary>What hangs on a hub comes through the one port that the hub has.</summary>
    private void LimitPortOf(PlanItem hub, List<PlanGroup> groups)
    {
        foreach (var home in problem.GroupsOf(hub))
        {
            var left = problem.Carriers[home.Carrier].PortMax - hub.Current;
            Limit(groups, left, item => item.Current, [.. at(hub, home)]);
        }
    }

    /// <param name="where">Holds only where one of these is true; everywhere if null.</param>
    private void Limit(List<PlanGroup> groups, long? limit, Func<PlanItem, long> draw, List<BoolVar>? where)
    {
        var drawing = problem
            .Items.Where(item => draw(item) > 0 && groups.Exists(group => problem.CanLive(item, group)))
            .ToList();
        var all = drawing.Sum(draw);
        if (limit is not { } stated || all <= stated)
        {
            return;
        }

        var sets = Cliques.Cover(problem.Facts.Together, drawing.Select(item => item.Condition).Distinct().Order());
        var rule =
            !mayMove && Staying(drawing, sets, groups, draw) > stated
                ? LinearExpr.Sum(drawing.Where(item => !IsHere(item, groups)).SelectMany(item => AtAny(item, groups))) <= 0
                : LinearExpr.Sum(sets.Select(set => Top(drawing, set, groups, draw))) <= stated;
        if (where is null)
        {
            model.Add(rule);
        }

        where?.ForEach(literal => model.Add(rule).OnlyEnforceIf(literal));
    }

    private bool IsHere(PlanItem item, List<PlanGroup> groups) =>
        item.Old is { } home && groups.Contains(problem.GroupOf(home)!);

    private IEnumerable<BoolVar> AtAny(PlanItem item, List<PlanGroup> groups) =>
        groups.SelectMany(group => at(item, group));

    /// <summary>The most that one of the conditions of a set draws.</summary>
    private IntVar Top(List<PlanItem> drawing, IEnumerable<int> set, List<PlanGroup> groups, Func<PlanItem, long> draw)
    {
        var top = model.NewIntVar(0, drawing.Sum(draw), "");
        foreach (var condition in set)
        {
            var terms = drawing
                .Where(item => item.Condition == condition)
                .SelectMany(item => AtAny(item, groups).Select(literal => literal * draw(item)));
            model.Add(LinearExpr.Sum(terms) <= top);
        }

        return top;
    }

    /// <summary>What fits come to that have their home here already.</summary>
    private long Staying(
        List<PlanItem> drawing,
        ImmutableArray<ImmutableArray<int>> sets,
        List<PlanGroup> groups,
        Func<PlanItem, long> draw
    )
    {
        var here = drawing.FindAll(item => IsHere(item, groups));
        return sets.Sum(set => set.Max(condition => here.FindAll(item => item.Condition == condition).Sum(draw)));
    }

    /// <summary>A hub hands on no more than its port gives it.</summary>
    private static long Drawn(PlanItem item, PlanCarrier carrier) =>
        item.Hub is null ? item.Current : Math.Min(item.CurrentMax, carrier.PortMax);
}
