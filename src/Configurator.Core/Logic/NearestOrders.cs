using System.Collections.Immutable;
using Configurator.Core.Logic.Searching;
using Configurator.Core.Model;

namespace Configurator.Core.Logic;

/// <summary>
/// Finds the orders that work and change the least of a given one: each possible change has a switch, a counter limits
/// how many are on, and what was found is barred together with everything that only adds to it.
/// </summary>
internal sealed class NearestOrders(OrderLogic logic, PartialOrder order, bool isComplete)
{
    private const int FoundMax = 5;
    private const int ChangesMax = 24;

    private readonly RuleSearch _search = logic.Search;
    private readonly OrderChanges _changes = new(logic, order, isComplete);

    public ImmutableArray<Repair> Find()
    {
        var counter = new ChangeCounter(
            _search.Solver,
            [.. _changes.All.Select(change => change.Switch)],
            Math.Min(ChangesMax, _changes.All.Count)
        );
        var found = ImmutableArray.CreateBuilder<Repair>();
        for (var changes = 0; changes <= counter.Most && found.Count < FoundMax; )
        {
            if (!_search.Solver.Solve([.. _changes.Assumptions, .. counter.AtMost(changes)]))
            {
                changes++;
                continue;
            }

            var on = _changes.All.Where(change => _search.Solver.IsTrue(change.Switch >> 1)).ToList();
            var changed = on.Select(change => change.Option).ToHashSet();
            Settle([.. _changes.All.Except(on).Select(change => change.Switch ^ 1)], changed);
            if (_changes.BarAdrift(changed))
            {
                continue;
            }

            found.Add(Read(changed));
            if (changed.Count == 0)
            {
                break;
            }

            _changes.Bar(on.Select(change => change.Switch));
        }

        return found.ToImmutable();
    }

    /// <summary>Of all assignments with these changes, one whose numbers come nearest to those ordered.</summary>
    private void Settle(List<int> unchanged, HashSet<OptionId> changed)
    {
        List<int> held = [.. _changes.Assumptions, .. unchanged];
        foreach (var option in changed.Order().Where(_search.Options.Variables.ContainsKey))
        {
            var variable = _search.Options.Variables[option];
            held.Add(
                variable
                    .Counts.Distinct()
                    .OrderBy(count => Distance(count, option))
                    .ThenBy(count => count)
                    .Select(count => _search.NewSwitch(variable.Literal(taken => taken == count)))
                    .First(number => _search.Solver.Solve([.. held, number]))
            );
        }
    }

    private int Distance(int count, OptionId option) =>
        Before(option) is var range && count < range.From ? range.From - count : count - Math.Min(count, range.To);

    private NumberRange Before(OptionId option) => order.Picks.GetValueOrDefault(option, NumberRange.None);

    private Repair Read(HashSet<OptionId> changed)
    {
        ImmutableArray<OrderChange> changes =
        [
            .. changed.Order().Select(option => new OrderChange(option, Before(option), _changes.CountNow(option))),
        ];
        return new(
            changes,
            changes.Aggregate(order, (repaired, change) =>
                change.After == 0
                    ? repaired.Without(change.Option)
                    : repaired.With(change.Option, new(change.After, change.After))
            )
        );
    }
}
