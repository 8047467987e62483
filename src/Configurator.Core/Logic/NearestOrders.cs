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

    public NearestOrders(OrderLogic logic, PartialOrder order, bool isComplete)
    {
        (_logic, _order, _search) = (logic, order, logic.Search);
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
        var counter = new ChangeCounter(_search.Solver, [.. _changes.Select(change => change.Switch)], Math.Min(ChangesMax, _changes.Count));
        var found = ImmutableArray.CreateBuilder<Repair>();
        for (var changes = 0; changes <= counter.Most && found.Count < FoundMax;)
        {
            if (!_search.Solver.Solve([.. _search.AllRules, RuleSearch.Positive(_session), .. counter.AtMost(changes)]))
            {
                changes++;
                continue;
            }

            var on = _changes.Where(change => _search.Solver.IsTrue(change.Switch >> 1)).ToList();
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
            _search.Solver.Add([RuleSearch.Negative(_session), change, .. _search.Any(variable.Literal(range.Contains))]);
        }
        else if (!range.Contains(0))
        {
            _search.Solver.Add(RuleSearch.Negative(_session), change);
        }
    }

    /// <summary>The option is taken though it was not ordered and does not come with another one.</summary>
    private void AddAddition(OptionId option)
    {
        var change = NewChange(option);
        var bringers = _logic.Machine.Options.Values
            .Where(other => other.ComesWith.Any(link => link.Other.Value == option))
            .SelectMany(other => _search.Any(_search.Options.Literal(other.Id.Value, taken => taken > 0)));
        _search.Solver.Add([RuleSearch.Negative(_session), change, .. _search.Any(_search.Options.Literal(option, taken => taken == 0)), .. bringers]);
    }

    private int NewChange(OptionId option)
    {
        var change = RuleSearch.Positive(_search.Solver.NewVariable());
        _changes.Add((option, change));
        return change;
    }

    private Repair Read(ImmutableArray<OptionId> changed)
    {
        ImmutableArray<OrderChange> changes = [.. changed.Order().Select(option =>
            new OrderChange(option, _order.Picks.GetValueOrDefault(option, NumberRange.None), CountNow(option)))];
        return new(changes, changes.Aggregate(_order, (order, change) => change.After == 0
            ? order.Without(change.Option)
            : order.With(change.Option, new(change.After, change.After))));
    }

    private int CountNow(OptionId option) => _search.Options.Variables.TryGetValue(option, out var variable)
        ? variable.Counts[_search.ValueOf(variable.Variable)]
        : 0;
}
