using System.Collections.Immutable;
using Configurator.Core.Logic.Searching;
using Configurator.Core.Model;

namespace Configurator.Core.Logic;

/// <summary>
/// Finds the orders that work and change the least of a given one: each possible change gets a switch, a counter limits
/// how many are on, and what was found is barred together with everything that only adds to it.
/// </summary>
internal sealed class NearestOrders
{
    private const int FoundMax = 5;
    private const int ChangesMax = 24;

    private readonly OrderLogic _logic;
    private readonly PartialOrder _order;
    private readonly RuleSearch _search;
    private readonly List<(OptionId Option, int Switch)> _changes = [];
    private readonly int _session;
    private readonly bool _isComplete;
    private readonly ILookup<OptionId, OptionId> _bringers;

    public NearestOrders(OrderLogic logic, PartialOrder order, bool isComplete)
    {
        (_logic, _order, _isComplete, _search) = (logic, order, isComplete, logic.Search);
        _bringers = logic
            .Machine.Options.Values.SelectMany(option =>
                option.ComesWith.Select(link => (Bringer: option.Id.Value, Other: link.Other.Value))
            )
            .ToLookup(pair => pair.Other, pair => pair.Bringer);
        _session = _search.Solver.NewVariable();
        foreach (var (option, range) in order.Picks)
        {
            AddDrop(option, range);
        }

        if (isComplete)
        {
            foreach (var option in _search.Options.Variables.Keys.Where(option => !order.Picks.ContainsKey(option)))
            {
                AddAddition(option);
            }
        }
    }

    public ImmutableArray<Repair> Find()
    {
        var counter = new ChangeCounter(
            _search.Solver,
            [.. _changes.Select(change => change.Switch)],
            Math.Min(ChangesMax, _changes.Count)
        );
        var found = ImmutableArray.CreateBuilder<Repair>();
        for (var changes = 0; changes <= counter.Most && found.Count < FoundMax; )
        {
            if (!_search.Solver.Solve([.. _search.AllRules, RuleSearch.Positive(_session), .. counter.AtMost(changes)]))
            {
                changes++;
                continue;
            }

            var on = _changes.Where(change => _search.Solver.IsTrue(change.Switch >> 1)).ToList();
            if (_isComplete && BroughtByNothing([.. on.Select(change => change.Option)]) is { Count: > 0 } adrift)
            {
                Bar(adrift);
                continue;
            }

            found.Add(Read([.. on.Select(change => change.Option)]));
            if (on.Count == 0)
            {
                break;
            }

            _search.Solver.Add([RuleSearch.Negative(_session), .. on.Select(change => change.Switch ^ 1)]);
        }

        return found.ToImmutable();
    }

    /// <summary>The option is not taken as ordered.</summary>
    private void AddDrop(OptionId option, NumberRange range)
    {
        var change = NewChange(option);
        if (_search.Options.Variables.TryGetValue(option, out var variable))
        {
            _search.Solver.Add([
                RuleSearch.Negative(_session),
                change,
                .. _search.Any(variable.Literal(range.Contains)),
            ]);
        }
        else if (!range.Contains(0))
        {
            _search.Solver.Add(RuleSearch.Negative(_session), change);
        }
    }

    /// <summary>An option that was not ordered is left out, comes with another one in its smallest number, or is a
    /// change.</summary>
    private void AddAddition(OptionId option)
    {
        var change = NewChange(option);
        var smallest = _search.Options.Variables[option].Counts.Where(count => count > 0).Min();
        _search.Solver.Add([
            RuleSearch.Negative(_session),
            change,
            .. TakenIn(option, count => count == 0 || count == smallest),
        ]);
        _search.Solver.Add([
            RuleSearch.Negative(_session),
            change,
            .. TakenIn(option, count => count == 0),
            .. Taken(_bringers[option]),
        ]);
    }

    /// <summary>Options in the assignment found that only come with each other: nothing ordered or changed brings
    /// them.</summary>
    private HashSet<OptionId> BroughtByNothing(HashSet<OptionId> changed)
    {
        var taken = _search.Options.Variables.Keys.Where(option => CountNow(option) > 0).ToHashSet();
        var open = new Stack<OptionId>(
            taken.Where(option => changed.Contains(option) || _order.Picks.ContainsKey(option))
        );
        while (open.TryPop(out var option))
        {
            if (taken.Remove(option))
            {
                _logic.Machine.Options[option].ComesWith.ToList().ForEach(link => open.Push(link.Other.Value));
            }
        }

        return taken;
    }

    /// <summary>None of them is taken unless one is a change or comes with an option that is not one of them.</summary>
    private void Bar(HashSet<OptionId> adrift)
    {
        List<int> reasons =
        [
            .. _changes.Where(change => adrift.Contains(change.Option)).Select(change => change.Switch),
            .. Taken(
                adrift.SelectMany(option => _bringers[option]).Distinct().Where(bringer => !adrift.Contains(bringer))
            ),
        ];
        foreach (var option in adrift)
        {
            _search.Solver.Add([RuleSearch.Negative(_session), .. TakenIn(option, count => count == 0), .. reasons]);
        }
    }

    private IEnumerable<int> Taken(IEnumerable<OptionId> options) =>
        options.SelectMany(option => TakenIn(option, count => count > 0));

    private IEnumerable<int> TakenIn(OptionId option, Func<int, bool> fits) =>
        _search.Any(_search.Options.Literal(option, fits));

    private int NewChange(OptionId option)
    {
        var change = RuleSearch.Positive(_search.Solver.NewVariable());
        _changes.Add((option, change));
        return change;
    }

    private Repair Read(ImmutableArray<OptionId> changed)
    {
        ImmutableArray<OrderChange> changes =
        [
            .. changed
                .Order()
                .Select(option => new OrderChange(
                    option,
                    _order.Picks.GetValueOrDefault(option, NumberRange.None),
                    CountNow(option)
                )),
        ];
        return new(
            changes,
            changes.Aggregate(
                _order,
                (order, change) =>
                    change.After == 0
                        ? order.Without(change.Option)
                        : order.With(change.Option, new(change.After, change.After))
            )
        );
    }

    private int CountNow(OptionId option) =>
        _search.Options.Variables.TryGetValue(option, out var variable)
            ? variable.Counts[_search.ValueOf(variable.Variable)]
            : 0;
}
