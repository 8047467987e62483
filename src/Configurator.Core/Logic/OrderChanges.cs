using Configurator.Core.Logic.Searching;
using Configurator.Core.Model;

namespace Configurator.Core.Logic;

/// <summary>Every possible change of an order as a switch of the search: on where the change is made.</summary>
internal sealed class OrderChanges
{
    private readonly OrderLogic _logic;
    private readonly PartialOrder _order;
    private readonly RuleSearch _search;
    private readonly List<(OptionId Option, int Switch)> _changes = [];
    private readonly int _session;
    private readonly bool _isComplete;
    private readonly ILookup<OptionId, OptionId> _bringers;

    public OrderChanges(OrderLogic logic, PartialOrder order, bool isComplete)
    {
        (_logic, _order, _isComplete, _search) = (logic, order, isComplete, logic.Search);
        _session = _search.Solver.NewVariable();
        _bringers = logic
            .Machine.Options.Values.SelectMany(option =>
                option.ComesWith.Select(link => (Bringer: option.Id.Value, Other: link.Other.Value))
            )
            .ToLookup(pair => pair.Other, pair => pair.Bringer);
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

    public IReadOnlyList<(OptionId Option, int Switch)> All => _changes;

    /// <summary>Assume these to search for orders that keep all rules.</summary>
    public IEnumerable<int> Assumptions => _search.AllRules.Append(RuleSearch.Positive(_session));

    /// <summary>From now on not all of these together.</summary>
    public void Bar(IEnumerable<int> switches) => Add(switches.Select(change => change ^ 1));

    /// <summary>
    /// Does the assignment found take options that only come with each other, and nothing ordered or changed brings
    /// them? Then that is barred.
    /// </summary>
    public bool BarAdrift(HashSet<OptionId> changed)
    {
        if (!_isComplete || BroughtByNothing(changed) is not { Count: > 0 } adrift)
        {
            return false;
        }

        List<int> reasons =
        [
            .. _changes.Where(change => adrift.Contains(change.Option)).Select(change => change.Switch),
            .. adrift.SelectMany(option => _bringers[option]).Except(adrift).SelectMany(Taken),
        ];
        foreach (var option in adrift)
        {
            Add([.. LeftOut(option), .. reasons]);
        }

        return true;
    }

    /// <summary>How often the assignment found takes the option.</summary>
    public int CountNow(OptionId option) =>
        _search.Options.Variables.TryGetValue(option, out var variable)
            ? variable.Counts[_search.ValueOf(variable.Variable)]
            : 0;

    /// <summary>The option is not taken as ordered.</summary>
    private void AddDrop(OptionId option, NumberRange range)
    {
        var change = NewChange(option);
        if (_search.Options.Variables.TryGetValue(option, out var variable))
        {
            Add([change, .. _search.Any(variable.Literal(range.Contains))]);
        }
        else if (!range.Contains(0))
        {
            Add([change]);
        }
    }

    /// <summary>An option that was not ordered is left out, comes with another one in its smallest number, or is a
    /// change.</summary>
    private void AddAddition(OptionId option)
    {
        var change = NewChange(option);
        var smallest = _search.Options.Variables[option].Counts.Where(count => count > 0).Min();
        Add([change, .. In(option, count => count == 0 || count == smallest)]);
        Add([change, .. LeftOut(option), .. _bringers[option].SelectMany(Taken)]);
    }

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

    private int NewChange(OptionId option)
    {
        var change = RuleSearch.Positive(_search.Solver.NewVariable());
        _changes.Add((option, change));
        return change;
    }

    private void Add(IEnumerable<int> literals) => _search.Solver.Add([RuleSearch.Negative(_session), .. literals]);

    private IEnumerable<int> Taken(OptionId option) => In(option, count => count > 0);

    private IEnumerable<int> LeftOut(OptionId option) => In(option, count => count == 0);

    private IEnumerable<int> In(OptionId option, Func<int, bool> fits) =>
        _search.Any(_search.Options.Literal(option, fits));
}
