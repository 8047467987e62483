using System.Numerics;
using Google.OrTools.Sat;

namespace Configurator.Planning;

/// <summary>
/// In how many configurations each extension is fitted, for the solver to make small. That number grows ever more
/// slowly with every condition added (it is submodular), so each order of the conditions gives a lower bound that is a
/// plain sum, exact for those that stand first. Bounds are added for the plans found until the best one is exact.
/// </summary>
/// <remarks>Source: J. Edmonds, Submodular functions, matroids, and certain polyhedra, 1970.</remarks>
internal sealed class OrderCuts
{
    /// <summary>Counts larger than that are given in its parts, rounded down.</summary>
    public const int Scale = 1_000_000;

    private readonly PlanProblem _problem;
    private readonly PlanModel _model;
    private readonly BoolVar?[,] _isAt;
    private readonly List<IntVar> _counts = [];

    public OrderCuts(PlanProblem problem, PlanModel model)
    {
        (_problem, _model) = (problem, model);
        _isAt = new BoolVar?[problem.Facts.Count, problem.Extensions];
        foreach (var group in problem.Groups.Where(group => group.Extension is not null))
        {
            foreach (var item in problem.Items)
            {
                foreach (var literal in model.At(item, group))
                {
                    model.Model.AddImplication(literal, IsAt(item.Condition, group.Extension!.Value));
                }
            }
        }

        for (var extension = 0; extension < problem.Extensions; extension++)
        {
            _counts.Add(model.Model.NewIntVar(0, Scaled(problem.Facts.Total), ""));
            Add(extension, []);
        }
    }

    public LinearExpr Goal => LinearExpr.Sum(_counts);

    /// <summary>Adds the bounds that are exact for this solution; what it really comes to.</summary>
    public long Learn(CpSolver solver)
    {
        var value = 0L;
        for (var extension = 0; extension < _counts.Count; extension++)
        {
            List<int> first = [];
            for (var condition = 0; condition < _problem.Facts.Count; condition++)
            {
                if (_isAt[condition, extension] is { } literal && solver.BooleanValue(literal))
                {
                    first.Add(condition);
                }
            }

            value += Scaled(_problem.Facts.CountAny(first));
            Add(extension, first);
        }

        return value;
    }

    /// <summary>Later stages may not make it worse, as far as the bounds can tell.</summary>
    public void KeepTo(long best) => _model.Model.Add(Goal <= best);

    /// <summary>Nothing but what this plan has at the extensions may be there: then it cannot get worse.</summary>
    public void Freeze(PlanDraft draft)
    {
        foreach (var (extension, conditions) in ConditionsAt(draft))
        {
            for (var condition = 0; condition < _problem.Facts.Count; condition++)
            {
                if (_isAt[condition, extension] is { } literal && !conditions.Contains(condition))
                {
                    _model.Model.Add(literal == 0);
                }
            }
        }
    }

    private IEnumerable<(int Extension, HashSet<int> Conditions)> ConditionsAt(PlanDraft draft)
    {
        var homes = draft
            .Kept.Select(item => (Item: item, Group: _problem.GroupOf(item.Old!.Value)!))
            .Concat(draft.Joined.Select(joined => (joined.Item, joined.Port.Group)))
            .Concat(draft.Placed.SelectMany(shared => shared.Items.Select(item => (Item: item, shared.Group))))
            .ToList();
        return Enumerable
            .Range(0, _counts.Count)
            .Select(extension =>
                (
                    extension,
                    homes
                        .Where(home => home.Group.Extension == extension)
                        .Select(home => home.Item.Condition)
                        .ToHashSet()
                )
            );
    }

    private BoolVar IsAt(int condition, int extension) => _isAt[condition, extension] ??= _model.Model.NewBoolVar("");

    /// <summary>A bound in which these conditions stand first, then all others, the most frequent before the
    /// rest.</summary>
    private void Add(int extension, List<int> first)
    {
        var others = Enumerable
            .Range(0, _problem.Facts.Count)
            .Where(condition => _isAt[condition, extension] is not null && !first.Contains(condition))
            .OrderByDescending(condition => _problem.Facts.CountAny([condition]));
        var (seen, before) = (new List<int>(), 0L);
        var terms = new List<LinearExpr>();
        foreach (var condition in first.Concat(others))
        {
            seen.Add(condition);
            var after = Scaled(_problem.Facts.CountAny(seen));
            if (after > before)
            {
                terms.Add(_isAt[condition, extension]! * (after - before));
            }

            before = after;
        }

        if (terms.Count > 0)
        {
            _model.Model.Add(LinearExpr.Sum(terms) <= _counts[extension]);
        }
    }

    private long Scaled(BigInteger count) =>
        _problem.Facts.Total <= Scale ? (long)count : (long)(count * Scale / _problem.Facts.Total);
}
