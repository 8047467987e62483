using System.Collections.Immutable;
using Configurator.Core.Logic.Formulas;
using Configurator.Core.Model;

namespace Configurator.Core.Logic.Rules;

/// <summary>The clauses of a rule model, with what each option's numbers are called in them.</summary>
/// <param name="Variables">For each option: its variable, and which of the variable's values mean how many.</param>
/// <param name="Defined">For each condition that was asked for: a literal that holds exactly when it does.</param>
internal sealed record OptionFormula(
    Formula Formula,
    ImmutableSortedDictionary<OptionId, OptionVariable> Variables,
    ImmutableArray<Literal> Defined
)
{
    /// <summary>The option is taken in one of the numbers that fit.</summary>
    public Literal Literal(OptionId option, Func<int, bool> fits) => Variables[option].Literal(fits);
}

/// <param name="Counts">How often the option is taken for each value of the variable.</param>
internal sealed record OptionVariable(int Variable, ImmutableArray<int> Counts)
{
    public Literal Literal(Func<int, bool> fits)
    {
        var values = 0UL;
        for (var value = 0; value < Counts.Length; value++)
        {
            values |= fits(Counts[value]) ? 1UL << value : 0;
        }

        return new(Variable, values);
    }
}

/// <summary>Turns rules about options into clauses over many-valued variables.</summary>
internal sealed class FormulaBuilder
{
    /// <summary>Beyond so many clauses a part of a condition gets a variable of its own.</summary>
    private const int ClausesMax = 24;

    /// <summary>Literals made in all, many times what honest rules come to.</summary>
    private const long LiteralsMax = 5_000_000;

    /// <summary>Marks clauses that only define a variable and belong to no rule.</summary>
    public const int NoRule = -1;

    private readonly List<int> _sizes = [];
    private readonly List<Clause> _clauses = [];
    private readonly SortedDictionary<OptionId, OptionVariable> _variables = [];
    private long _literals;

    /// <param name="groupChoices">Makes a choice of one out of many one variable. Its rule then cannot be left
    /// out.</param>
    /// <param name="defined">Conditions that are to have literals of their own; solutions stay the same in
    /// number.</param>
    public static OptionFormula Build(RuleModel model, bool groupChoices, IEnumerable<Condition> defined)
    {
        var builder = new FormulaBuilder();
        var grouped = groupChoices ? builder.GroupChoices(model) : [];
        foreach (var option in model.Options.Where(option => !builder._variables.ContainsKey(option.Id)))
        {
            builder.AddOption(option);
        }

        for (var rule = 0; rule < model.Rules.Length; rule++)
        {
            if (!grouped.Contains(rule))
            {
                builder.Add(model.Rules[rule], rule);
            }
        }

        ImmutableArray<Literal> literals =
        [
            .. defined.Select(condition =>
                builder.Define(builder.Clauses(condition, true), builder.Clauses(condition, false))
            ),
        ];
        return new(
            new([.. builder._sizes], [.. builder._clauses]),
            builder._variables.ToImmutableSortedDictionary(),
            literals
        );
    }

    private int NewVariable(int size)
    {
        if (size > Formula.ValuesMax)
        {
            throw new InvalidOperationException(
                FormattableString.Invariant($"{size} values are too many for a variable")
            );
        }

        _sizes.Add(size);
        return _sizes.Count - 1;
    }

    private void AddOption(OptionNumbers option)
    {
        ImmutableArray<int> counts = [0, .. Enumerable.Range(option.From, option.To - option.From + 1)];
        _variables.Add(option.Id, new(NewVariable(counts.Length), counts));
    }

    /// <summary>Rules that the new variables keep by themselves.</summary>
    private HashSet<int> GroupChoices(RuleModel model)
    {
        var numbers = model.Options.ToDictionary(option => option.Id);
        var kept = new HashSet<int>();
        for (var rule = 0; rule < model.Rules.Length; rule++)
        {
            if (
                model.Rules[rule].Choice is { When: null, Take: not Take.OneOrMore } choice
                && CanGroup(choice, numbers)
            )
            {
                Group(choice);
                kept.Add(rule);
            }
        }

        return kept;
    }

    private bool CanGroup(Choice choice, Dictionary<OptionId, OptionNumbers> numbers) =>
        choice.Of.Length is >= 2 and < Formula.ValuesMax
        && choice.Of.Select(option => option.Value).Distinct().Count() == choice.Of.Length
        && choice.Of.All(option =>
            numbers.TryGetValue(option.Value, out var range)
            && range is { From: 1, To: 1 }
            && !_variables.ContainsKey(option.Value)
        );

    private void Group(Choice choice)
    {
        var none = choice.Take == Take.AtMostOne ? 1 : 0;
        var size = choice.Of.Length + none;
        var variable = NewVariable(size);
        for (var member = 0; member < choice.Of.Length; member++)
        {
            _variables.Add(
                choice.Of[member].Value,
                new(variable, [.. Enumerable.Range(0, size).Select(value => value == member + none ? 1 : 0)])
            );
        }
    }

    private void Add(OrderRule rule, int index)
    {
        if (rule.Meaning is { } meaning)
        {
            AddAll(Clauses(meaning, isPositive: true), index);
        }

        if (rule.Limit is { } limit)
        {
            AddAll(ClauseList.Of(SumAtMost(limit)), index);
        }
    }

    private void AddAll(ClauseList clauses, int rule)
    {
        foreach (var clause in clauses.Clauses)
        {
            var merged = clause
                .GroupBy(literal => literal.Variable)
                .Select(group => new Literal(
                    group.Key,
                    group.Aggregate(0UL, (values, literal) => values | literal.Values)
                ))
                .OrderBy(literal => literal.Variable)
                .ToImmutableArray();
            if (!merged.Any(literal => literal.Values == Formula.DomainOf(_sizes[literal.Variable])))
            {
                _clauses.Add(new([.. merged.Where(literal => literal.Values != 0)], rule));
            }
        }
    }

    /// <exception cref="TooEntangledException">They are more than can be held.</exception>
    private ClauseList Clauses(Condition condition, bool isPositive)
    {
        var clauses = Made(condition, isPositive);
        _literals += 1 + clauses.Clauses.Sum(clause => (long)clause.Length);
        return _literals <= LiteralsMax ? clauses : throw new TooEntangledException();
    }

    private ClauseList Made(Condition condition, bool isPositive) =>
        (condition, isPositive) switch
        {
            (OptionCount count, _) => Clauses(count, isPositive),
            (AllOf all, true) => ClauseList.And(all.Of.Select(part => Clauses(part, true))),
            (AllOf all, false) => Either(all.Of, false),
            (AnyOf any, true) => Either(any.Of, true),
            (AnyOf any, false) => ClauseList.And(any.Of.Select(part => Clauses(part, false))),
            (NoneOf none, true) => ClauseList.And(none.Of.Select(part => Clauses(part, false))),
            (NoneOf none, false) => Either(none.Of, true),
            _ => throw new InvalidOperationException($"no clauses for {condition.GetType().Name}"),
        };

    private ClauseList Clauses(OptionCount count, bool isPositive)
    {
        bool Fits(int taken) =>
            (taken >= count.AtLeast && (count.AtMost is not { } most || taken <= most)) == isPositive;
        return _variables.TryGetValue(count.Option, out var variable) ? ClauseList.Of(variable.Literal(Fits))
            : Fits(0) ? ClauseList.Always
            : ClauseList.Never;
    }

    private ClauseList Either(ImmutableArray<Condition> parts, bool isPositive)
    {
        var lists = parts.Select(part => Clauses(part, isPositive)).ToList();
        if (ClauseList.OrCount(lists) <= ClausesMax)
        {
            return ClauseList.Or(lists);
        }

        // The longest part can stay as it is: with single literals in place of all others it does not grow.
        var longest = lists.IndexOf(lists.MaxBy(list => list.Clauses.Length)!);
        return ClauseList.Or([
            .. parts.Select(
                (part, i) =>
                    i == longest || lists[i].Clauses.Length <= 1
                        ? lists[i]
                        : ClauseList.Of(Define(lists[i], Clauses(part, !isPositive)))
            ),
        ]);
    }

    /// <summary>A literal that holds exactly when the clauses do; <paramref name="opposite"/> are those of the
    /// contrary.</summary>
    private Literal Define(ClauseList clauses, ClauseList opposite)
    {
        if (clauses.Clauses is [[var only]])
        {
            return only;
        }

        var variable = NewVariable(2);
        AddAll(ClauseList.Or([ClauseList.Of(Literal.False(variable)), clauses]), NoRule);
        AddAll(ClauseList.Or([ClauseList.Of(Literal.True(variable)), opposite]), NoRule);
        return Literal.True(variable);
    }

    /// <summary>Adds the options up one by one in variables that stop counting just above the limit.</summary>
    private Literal SumAtMost(CountLimit limit)
    {
        var size = limit.AtMost + 2;
        var sum = new OptionVariable(NewVariable(size), [.. Enumerable.Range(0, size)]);
        AddAll(ClauseList.Of(sum.Literal(value => value == 0)), NoRule);
        foreach (var share in limit.Counts.Where(share => _variables.ContainsKey(share.Option.Value)))
        {
            sum = Plus(sum, _variables[share.Option.Value], share.Each, limit.AtMost + 1);
        }

        return sum.Literal(value => value <= limit.AtMost);
    }

    private OptionVariable Plus(OptionVariable sum, OptionVariable option, int each, int most)
    {
        var next = new OptionVariable(NewVariable(sum.Counts.Length), sum.Counts);
        foreach (var before in sum.Counts)
        {
            foreach (var count in option.Counts.Distinct())
            {
                var after = Math.Min(most, before + (count * each));
                AddAll(
                    new([
                        [
                            sum.Literal(value => value != before),
                            option.Literal(taken => taken != count),
                            next.Literal(value => value == after),
                        ],
                    ]),
                    NoRule
                );
            }
        }

        return next;
    }
}
