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
            Add(model, problem, groups, carrier.CurrentMax, item => item.Current, at);
            var classB = groups.FindAll(group => group.Class == Core.Model.PortClass.B);
            Add(model, problem, classB, carrier.ExtraMax, item => item.Extra, at);
        }
    }

    private static void Add(
        CpModel model,
        PlanProblem problem,
        List<PlanGroup> groups,
        long? limit,
        Func<PlanItem, long> draw,
        Func<PlanItem, PlanGroup, IEnumerable<BoolVar>> at
    )
    {
        var drawing = problem
            .Items.Where(item => draw(item) > 0 && groups.Exists(group => problem.CanLive(item, group)))
            .ToList();
        if (limit is not { } most || drawing.Sum(draw) <= most)
        {
            return;
        }

        var sets = Cliques.Cover(problem.Facts.Together, drawing.Select(item => item.Condition).Distinct().Order());
        var tops = new List<LinearExpr>();
        foreach (var set in sets)
        {
            var top = model.NewIntVar(0, most, "");
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

        model.Add(LinearExpr.Sum(tops) <= most);
    }
}
