using System.Numerics;
using Configurator.Core.Logic.Formulas;
using Configurator.Core.Logic.Rules;
using Configurator.Core.Logic.Searching;
using Configurator.Core.Model;

namespace Configurator.Core.Logic.Weighing;

/// <summary>The heaviest configuration by search: where the rules are not compiled, or several sums are limited at
/// once.</summary>
internal sealed class WeightSearch
{
    /// <summary>So many conflicts may go into one step of closing in on the heaviest.</summary>
    public const long ConflictsMax = 100_000;

    private readonly OrderLogic _logic;
    private readonly RuleSearch _search;
    private readonly Func<Condition, Literal> _literalOf;
    private readonly Dictionary<Literal, int> _switches = [];

    public WeightSearch(OrderLogic logic, IReadOnlyList<Condition> conditions)
    {
        _logic = logic;
        _search = new(FormulaBuilder.Build(logic.Model, groupChoices: false, conditions), logic.Rules.Length);
        var literals = conditions
            .Zip(_search.Options.Defined)
            .ToDictionary(pair => ConditionKey.Of(pair.First), pair => pair.Second, StringComparer.Ordinal);
        _literalOf = condition => literals[ConditionKey.Of(condition)];
    }

    /// <param name="most">Nothing is heavier: what is known already.</param>
    /// <param name="firstConflictsMax">So many conflicts may go into finding any configuration at all.</param>
    public Sought Heaviest(
        WeightedSum sum,
        PartialOrder within,
        IEnumerable<SumLimit> limits,
        long most,
        long firstConflictsMax
    )
    {
        List<int> assumed = [.. _search.AllRules, .. Picks(within), .. limits.Select(Holds)];
        var answer = _search.Solver.Solve(firstConflictsMax, [.. assumed]);
        return new(answer == true ? CloseIn(sum, assumed, most) : null, answer is not null);
    }

    /// <summary>Halves what lies between the heaviest found and what is known to be too heavy.</summary>
    private Extreme CloseIn(WeightedSum sum, List<int> assumed, long most)
    {
        var (digits, below, unit) = Digits(sum);
        var found = Read();
        var weight = sum.Of(found.QuantityOf);
        var bound = Math.Min(most, below + (digits.Most * unit));
        while (weight < bound)
        {
            var middle = weight + 1 + ((bound - weight - 1) / 2);
            var least = Ceiling(middle - below, unit);
            var answer = _search.Solver.Solve(ConflictsMax, [.. assumed, digits.AtLeast(least)]);
            if (answer == true)
            {
                found = Read();
                weight = sum.Of(found.QuantityOf);
            }
            else if (answer == false)
            {
                bound = Math.Max(weight, below + ((least - 1) * unit));
            }
            else
            {
                break;
            }
        }

        return new(weight, bound, found);
    }

    private int Holds(SumLimit limit)
    {
        var (digits, below, unit) = Digits(limit.Sum);
        return digits.AtMost(Floor(limit.AtMost - below, unit));
    }

    /// <summary>The sum is the number below plus the digits times the unit: a literal of negative weight counts where
    /// it is false.</summary>
    private (BinarySum Digits, long Below, long Unit) Digits(WeightedSum sum)
    {
        var terms = sum
            .Terms.GroupBy(term => ConditionKey.Of(term.When), StringComparer.Ordinal)
            .Select(group => (group.First().When, Weight: group.Sum(term => term.Weight)))
            .Where(term => term.Weight != 0)
            .ToList();
        var unit = terms.Aggregate(0L, (divisor, term) => (long)BigInteger.GreatestCommonDivisor(divisor, term.Weight));
        var below = sum.Fixed + terms.Where(term => term.Weight < 0).Sum(term => term.Weight);
        var literals = terms.Select(term =>
        {
            var literal = Exactly(_literalOf(term.When));
            return term.Weight > 0 ? (literal, term.Weight / unit) : (literal ^ 1, -term.Weight / unit);
        });
        return (new(_search.Solver, literals.ToList()), below, Math.Max(1, unit));
    }

    /// <summary>A solver literal that is true exactly when the literal holds.</summary>
    private int Exactly(Literal literal)
    {
        if (!_switches.TryGetValue(literal, out var exactly))
        {
            exactly = _search.NewSwitch(literal);
            foreach (var any in _search.Any(literal).ToList())
            {
                _search.Solver.Add(any ^ 1, exactly);
            }

            _switches.Add(literal, exactly);
        }

        return exactly;
    }

    private IEnumerable<int> Picks(PartialOrder order) =>
        order.Picks.Select(pick =>
            _search.Options.Variables.TryGetValue(pick.Key, out var variable)
                ? Exactly(variable.Literal(pick.Value.Contains))
                : _search.NewSwitch(isPossible: pick.Value.Contains(0))
        );

    private Configuration Read() =>
        new CompiledRules(_search.Options, null).Read(_logic.Machine.Id.Value, _search.ValueOf);

    private static long Floor(long value, long unit) => (value - Remainder(value, unit)) / unit;

    private static long Ceiling(long value, long unit) => -Floor(-value, unit);

    private static long Remainder(long value, long unit) => ((value % unit) + unit) % unit;
}
