using System.Collections.Immutable;
using System.Numerics;
using Configurator.Core.Logic.Formulas;
using Configurator.Core.Logic.Rules;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Logic.Weighing;

/// <summary>
/// Weighs the configurations of a machine: the heaviest and the lightest, margins, distributions and means of any whole
/// number that adds up over conditions, exactly and over all configurations that fit an order.
/// </summary>
/// <remarks>
/// Conditions become variables of the compiled rules; they follow from the options, so nothing is counted twice. Naming
/// them all beforehand saves compiling anew. Where the rules cannot be compiled, the heaviest and the lightest come
/// from a search, and what is null is not computed. Not for several threads at once.
/// </remarks>
public sealed class Weigher
{
    private readonly Dictionary<string, int> _indexOf = new(StringComparer.Ordinal);
    private readonly List<Condition> _conditions = [];
    private readonly OrderLogic _logic;
    private CompiledRules? _compiled;
    private WeightSearch? _search;

    private Weigher(OrderLogic logic) => _logic = logic;

    /// <param name="conditions">Those that sums will be made of, as far as they are known.</param>
    public static Weigher Of(OrderLogic logic, params IEnumerable<Condition> conditions)
    {
        var weigher = new Weigher(logic);
        weigher.Know(conditions);
        return weigher;
    }

    public Machine Machine => _logic.Machine;

    /// <summary>False where the rules with these conditions are too entangled to compile: then only the heaviest and
    /// the lightest are answered, by search.</summary>
    public bool IsCompiled => Compiled.Diagram is not null;

    private CompiledRules Compiled => _compiled ??= CompiledRules.Of(_logic.Model, _conditions, _logic.Limits);

    private WeightSearch Search => _search ??= new(_logic, _conditions);

    /// <summary>The heaviest configuration that fits the order, of several one with the fewest options; null where none
    /// fits.</summary>
    public Extreme? Heaviest(WeightedSum sum, PartialOrder within)
    {
        if (Values(sum, within) is not { } asked)
        {
            return Search.Heaviest(sum, within, [], long.MaxValue, firstConflictsMax: long.MaxValue).Found;
        }

        if (asked.Within is not { } values || Heaviest(asked.Diagram, values, asked.Weights) is not { } heaviest)
        {
            return null;
        }

        var witness = Read(heaviest);
        var weight = sum.Of(witness.QuantityOf);
        return new(weight, weight, witness);
    }

    /// <summary>The lightest configuration that fits the order; null where none fits.</summary>
    public Extreme? Lightest(WeightedSum sum, PartialOrder within) => Heaviest(sum.Negated, within)?.Negated;

    /// <summary>The heaviest configuration that fits the order and keeps all limits at once.</summary>
    public Sought Heaviest(WeightedSum sum, PartialOrder within, params IEnumerable<SumLimit> limits)
    {
        ImmutableArray<SumLimit> all = [.. limits];
        Know(all.SelectMany(limit => limit.Sum.Terms).Concat(sum.Terms).Select(term => term.When));
        var free = IsCompiled ? Heaviest(sum, within) : null;
        return IsCompiled && (free is null || all.All(limit => Keeps(free.Witness, limit)))
            ? new(free, IsSettled: true)
            : Search.Heaviest(sum, within, all, free?.Bound ?? long.MaxValue, WeightSearch.ConflictsMax);
    }

    /// <summary>The lightest configuration that fits the order and keeps all limits at once.</summary>
    public Sought Lightest(WeightedSum sum, PartialOrder within, params IEnumerable<SumLimit> limits)
    {
        var sought = Heaviest(sum.Negated, within, limits);
        return sought with { Found = sought.Found?.Negated };
    }

    /// <summary>For each option, how heavy a configuration can be with it and without; empty where none fits, null
    /// where not computed.</summary>
    public ImmutableArray<OptionMargin>? Margins(WeightedSum sum, PartialOrder within)
    {
        if (Values(sum, within) is not { } asked)
        {
            return null;
        }

        if (asked.Within is not { } values)
        {
            return [];
        }

        var margins = ValueMargins.Of(asked.Diagram, values, asked.Weights);
        return
        [
            .. Compiled
                .Options.Variables.Select(option => Margin(option.Key, option.Value, margins))
                .Where(margin => !margin.HeaviestAt.IsEmpty),
        ];
    }

    /// <summary>How many configurations weigh how much, ascending; sums to their number. Null where not
    /// computed.</summary>
    public ImmutableArray<WeightClass>? Histogram(WeightedSum sum, PartialOrder within) => Histogram(sum, within, []);

    /// <summary>The same, each configuration counted by a declared order mix (<see cref="OrderMixMeasure"/>): only the
    /// shares in the sum of all mean something.</summary>
    public ImmutableArray<WeightClass>? Histogram(WeightedSum sum, PartialOrder within, ImmutableArray<OrderShare> mix)
    {
        if (Values(sum, within) is not { } asked)
        {
            return null;
        }

        var spread = asked.Within is { } values
            ? Distribution.Of(asked.Diagram, values, asked.Weights, Measured(mix), DistributionLimits.Usual)
            : Spread.Nothing;
        return spread is null
            ? null
            : [.. spread.Weights.Zip(spread.Counts, (weight, count) => new WeightClass(weight, count))];
    }

    /// <summary>How many configurations weigh more, with the heaviest as an example.</summary>
    public OverLimit Over(WeightedSum sum, long limit, PartialOrder within)
    {
        var heaviest = Heaviest(sum, within);
        if (heaviest is null || heaviest.Bound <= limit)
        {
            return new(limit, BigInteger.Zero, null);
        }

        var over = Histogram(sum, within)?.Where(weight => weight.Weight > limit);
        return new(
            limit,
            over?.Aggregate(BigInteger.Zero, (count, weight) => count + weight.Configurations),
            heaviest.Weight > limit ? heaviest : null
        );
    }

    /// <summary>The exact mean over all configurations that fit; null where none does or it is not computed.</summary>
    public Rational? Mean(WeightedSum sum, PartialOrder within) => Mean(sum, within, []);

    /// <summary>The same, each configuration counted by a declared order mix (<see cref="OrderMixMeasure"/>).</summary>
    public Rational? Mean(WeightedSum sum, PartialOrder within, ImmutableArray<OrderShare> mix)
    {
        if (Values(sum, within) is not { Within: { } values } asked)
        {
            return null;
        }

        var (count, total) = Average.Of(asked.Diagram, values, asked.Weights, Measured(mix));
        return count.IsZero ? null : new Rational(total, count);
    }

    /// <summary>In how many configurations that fit the order the condition holds; null where not computed.</summary>
    public BigInteger? Count(Condition condition, PartialOrder within)
    {
        Know([condition]);
        if (Compiled.Diagram is not { } diagram)
        {
            return null;
        }

        if (Compiled.Within(within) is not { } values)
        {
            return BigInteger.Zero;
        }

        var literal = LiteralOf(condition);
        values[literal.Variable] &= literal.Values;
        return Compiling.Counting.Count(diagram, values);
    }

    /// <summary>Configurations that fit the order, drawn at random, each equally likely and every time anew; none where
    /// none fits, null where not computed.</summary>
    /// <param name="seed">The same seed gives the same configurations on every platform.</param>
    public ImmutableArray<Configuration>? Sample(PartialOrder within, int count, ulong seed)
    {
        if (Compiled.Diagram is not { } diagram)
        {
            return null;
        }

        var values = Compiled.Within(within) ?? new ulong[diagram.Sizes.Length];
        var sampler = new Sampler(diagram, values, Measure.OneEach(values.Length));
        var random = new RandomNumbers(seed);
        return sampler.IsEmpty ? [] : [.. Enumerable.Range(0, count).Select(_ => Read(sampler.Next(random)))];
    }

    /// <summary>Taking an option weighs so much less than any load that it only decides between equals.</summary>
    private int[]? Heaviest(Compiling.Diagram diagram, ulong[] within, ValueWeights weights)
    {
        var options = Compiled.Options.Variables;
        var refined = weights.Scaled(options.Count + 1) ?? weights;
        foreach (var option in refined == weights ? [] : options.Values)
        {
            refined.Add(option.Literal(count => count > 0), -1);
        }

        return Optimum.Heaviest(diagram, within, refined)?.Values;
    }

    /// <summary>The weights on the diagram and the values that the order leaves, none where it asks for what is not
    /// offered; null where there is no diagram.</summary>
    private (Compiling.Diagram Diagram, ValueWeights Weights, ulong[]? Within)? Values(
        WeightedSum sum,
        PartialOrder within
    )
    {
        Know(sum.Terms.Select(term => term.When));
        if (Compiled.Diagram is not { } diagram)
        {
            return null;
        }

        var weights = new ValueWeights(Compiled.Options.Formula.Sizes) { Fixed = sum.Fixed };
        foreach (var term in sum.Terms)
        {
            weights.Add(LiteralOf(term.When), term.Weight);
        }

        return (diagram, weights, Compiled.Within(within));
    }

    private Measure Measured(ImmutableArray<OrderShare> mix) =>
        OrderMixMeasure.Of(Compiled.Options.Formula.Sizes, Compiled.Options.Variables, mix);

    private static OptionMargin Margin(OptionId option, OptionVariable variable, long[][] margins) =>
        new(
            option,
            variable
                .Counts.Select((count, value) => (Count: count, Weight: margins[variable.Variable][value]))
                .Where(number => number.Weight != Optimum.None)
                .GroupBy(number => number.Count)
                .ToImmutableSortedDictionary(group => group.Key, group => group.Max(number => number.Weight))
        );

    private static bool Keeps(Configuration configuration, SumLimit limit) =>
        limit.Sum.Of(configuration.QuantityOf) <= limit.AtMost;

    private Configuration Read(int[] values) => Compiled.Read(Machine.Id.Value, variable => values[variable]);

    private Literal LiteralOf(Condition condition) => Compiled.Options.Defined[_indexOf[ConditionKey.Of(condition)]];

    /// <summary>Conditions not met before make all be compiled anew.</summary>
    private void Know(IEnumerable<Condition> conditions)
    {
        foreach (var condition in conditions)
        {
            if (_indexOf.TryAdd(ConditionKey.Of(condition), _conditions.Count))
            {
                _conditions.Add(condition);
                (_compiled, _search) = (null, null);
            }
        }
    }
}
