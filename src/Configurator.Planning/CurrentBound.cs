using Google.OrTools.Sat;

namespace Configurator.Planning;

/// <summary>
/// Keeps the current of masters and hubs within their limits in every order: of conditions that never hold together
/// only the largest counts. The bound is on the safe side; what is exact is computed when a plan is checked.
/// </summary>
internal static class CurrentBound
{
    public static void AddTo(CpModel model, PlanProblem problem, Func<PlanItem, PlanGroup, IEnumerable<BoolVar>> at)
    {
        foreach (var carrier in problem.Carriers)
        {
            var groups = problem.Groups.Where(group => group.Carrier == carrier.Index).ToList();
            Add(model, problem, groups, carrier.CurrentMax, item => Drawn(item, carrier), at, []);
            var classB = groups.FindAll(group => group.Class == Core.Model.PortClass.B);
            Add(model, problem, classB, carrier.ExtraMax, item => item.Extra, at, []);
            if (carrier.Hub is { } hub)
            {
                AddPortOf(problem.Items[hub], groups);
            }
        }

        // What hangs on a hub comes through the one port that the hub has.
        void AddPortOf(PlanItem hub, List<PlanGroup> groups)
        {
            foreach (var home in problem.GroupsOf(hub))
            {
                var left = problem.Carriers[home.Carrier].PortMax - hub.Current;
                Add(model, problem, groups, left, item => item.Current, at, [.. at(hub, home)]);
            }
        }
    }

    /// <summary>A hub hands on no more than its port gives it.</summary>
    private static long Drawn(PlanItem item, PlanCarrier carrier) =>
        item.Hub is null ? item.Current : Math.Min(item.CurrentMax, carrier.PortMax);

    /// <param name="where">Holds only where one of these is true; everywhere if there are none.</param>
    private static void Add(
        CpModel model,
        PlanProblem problem,
        List<PlanGroup> groups,
        long? limit,
        Func<PlanItem, long> draw,
        Func<PlanItem, PlanGroup, IEnumerable<BoolVar>> at,
        List<BoolVar> where
    )
    {
        var drawing = problem
            .Items.Where(item => draw(item) > 0 && groups.Exists(group => problem.CanLive(item, group)))
            .ToList();
        var all = drawing.Sum(draw);
        if (limit is not { } most || all <= most)
        {
            return;
        }

        var sets = Cliques.Cover(problem.Facts.Together, drawing.Select(item => item.Condition).Distinct().Order());
        var tops = new List<LinearExpr>();
        foreach (var set in sets)
        {
            var top = model.NewIntVar(0, all, "");
            tops.Add(top);
            foreach (var condition in set)
            {
                var terms = drawing
                    .Where(item => item.Condition == condition)
                    .SelectMany(item =>
                        groups.SelectMany(group => at(item, group)).Select(literal => literal * draw(item))
                    );
                model.Add(LinearExpr.Sum(terms) <= top);
            }
        }

        if (where.Count == 0)
        {
            model.Add(LinearExpr.Sum(tops) <= most);
        }

        where.ForEach(literal => model.Add(LinearExpr.Sum(tops) <= most).OnlyEnforceIf(literal));
    }
}
