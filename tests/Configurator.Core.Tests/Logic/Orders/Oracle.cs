using System.Collections.Immutable;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Tests.Logic.Orders;

/// <summary>Answers by trying every way to take the options. Shares no code with the logic that it judges.</summary>
internal sealed class Oracle
{
    private readonly ImmutableArray<int[]> _numbers;
    private readonly ImmutableArray<Meaning> _rules;
    private readonly Dictionary<OptionId, int> _index;

    public Oracle(Machine machine)
    {
        Machine = machine;
        Options = [.. machine.Options.Keys];
        _index = Options.Select((option, i) => (option, i)).ToDictionary(pair => pair.option, pair => pair.i);
        _numbers = [.. machine.Options.Values.Select(Numbers)];
        _rules = Meanings.Of(machine);
        Assert.True(_rules.Length + Options.Length < 60, "rules and picks are told apart by the bits of one number");
        All = [.. Enumerable.Range(0, _numbers.Aggregate(1, (ways, numbers) => ways * numbers.Length)).Select(Way)];
    }

    public Machine Machine { get; }

    public ImmutableArray<OptionId> Options { get; }

    /// <summary>Every way to take the options; <see cref="IndexOf"/> finds one.</summary>
    public ImmutableArray<Way> All { get; }

    public IEnumerable<Way> Kept => All.Where(way => way.Broken == 0);

    public ImmutableArray<SourceSpan> Rules => [.. _rules.Select(rule => rule.Span)];

    /// <summary>The ways that keep all rules and fit the order.</summary>
    public IEnumerable<Way> Within(PartialOrder order) => Kept.Where(way => Broken(way, order) == 0);

    /// <summary>The numbers of an option in some ways, ascending.</summary>
    public IEnumerable<int> NumbersIn(IEnumerable<Way> ways, OptionId option) =>
        ways.Select(way => way.Counts[_index[option]]).Distinct().Order();

    public int CountOf(Way way, OptionId option) => _index.TryGetValue(option, out var i) ? way.Counts[i] : 0;

    /// <summary>A bit for each pick that the way does not fit, in the order of picks.</summary>
    public ulong Broken(Way way, PartialOrder order)
    {
        var broken = 0UL;
        var bit = 1UL;
        foreach (var (option, range) in order.Picks)
        {
            var count = CountOf(way, option);
            broken |= count < range.From || count > range.To ? bit : 0;
            bit <<= 1;
        }

        return broken;
    }

    /// <summary>The bits that stand for rules, found by where they stand.</summary>
    public ulong Bits(IEnumerable<OrderRule> rules) =>
        rules.Aggregate(0UL, (bits, rule) => bits | (1UL << Rules.IndexOf(rule.Span)));

    public int IndexOf(ReadOnlySpan<int> counts)
    {
        var index = 0;
        for (var option = 0; option < counts.Length; option++)
        {
            index = (index * _numbers[option].Length) + Array.IndexOf(_numbers[option], counts[option]);
        }

        return index;
    }

    private static int[] Numbers(Option option) =>
        option.Quantity is { } range ? [0, .. Enumerable.Range(range.From, range.To - range.From + 1)] : [0, 1];

    private Way Way(int index)
    {
        var counts = new int[_numbers.Length];
        for (var option = counts.Length - 1; option >= 0; option--)
        {
            (index, var number) = Math.DivRem(index, _numbers[option].Length);
            counts[option] = _numbers[option][number];
        }

        var broken = 0UL;
        for (var rule = 0; rule < _rules.Length; rule++)
        {
            broken |= _rules[rule].IsKept(id => _index.TryGetValue(id, out var i) ? counts[i] : 0) ? 0 : 1UL << rule;
        }

        return new(counts, broken);
    }
}

/// <param name="Counts">How often each option is taken, in the order of ids.</param>
/// <param name="Broken">A bit for each rule that does not hold.</param>
internal readonly record struct Way(int[] Counts, ulong Broken);
