using System.Collections.Immutable;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Differences;
using Configurator.Core.Model;
using Configurator.Core.Tests.Logic.Compiling;
using Configurator.Core.Tests.Logic.Orders;
using CsCheck;

namespace Configurator.Core.Tests.Logic.Differences;

public class DifferenceTests
{
    // Source: Oracle on both sides; two machines with nothing in common but the names of their options.
    [Fact]
    public void Configurations_won_and_lost_are_those_that_only_one_side_allows() =>
        Cases.Check(
            Gen.Select(RandomMachines.Of(9, 1024), RandomMachines.Of(9, 1024)),
            61,
            700,
            both => Compare(both.Item1, both.Item2),
            both => Machines.Words(both.Item1) + Machines.Words(both.Item2)
        );

    // Source: Oracle; as changes mostly are: one rule more.
    [Fact]
    public void One_rule_more_loses_what_breaks_it_and_wins_nothing() =>
        Cases.Check(
            from machine in RandomMachines.Of(9, 1024)
            from need in RandomConditions.Of(Gen.OneOf(machine.Options.Keys.ToArray()))
            select (Machine: machine, Rule: Machines.Rule("added", need)),
            62,
            500,
            both =>
            {
                var more = both.Machine with { Rules = both.Machine.Rules.Add(both.Rule) };
                var difference = Compare(both.Machine, more);
                Assert.Equal(0, difference.Won);
                Assert.All(
                    difference.LostExamples,
                    example => Assert.Equal(both.Rule.Need, Assert.Single(example.Because).Meaning)
                );
            },
            both => Machines.Words(both.Machine)
        );

    // Law: a search with less work allowed finds the first of the same examples, or says that it found none.
    [Fact]
    public void A_search_that_is_cut_short_keeps_the_examples_it_has()
    {
        var machine = Machines.Of([.. "abcdefgh".Select(name => Machines.Option($"{name}"))]);
        var rule = Machines.Rule("added", new OptionCount(new("a"), 1, null, default));
        var models = (OrderLogic.Of(machine).Model, OrderLogic.Of(machine with { Rules = [rule] }).Model);
        var whole = Find(long.MaxValue / 2)!;
        var partial = Enumerable.Range(0, 400).Select(step => Find(step * 5)).ToList();
        Assert.All(partial.OfType<string[]>(), found => Assert.Equal(whole[..found.Length], found));
        Assert.Contains(partial, found => found is null);
        Assert.Contains(partial, found => found is { Length: > 0 } && found.Length < whole.Length);

        string[]? Find(long work)
        {
            try
            {
                var found = new DifferenceSearch(machine.Id.Value, models.Item1, models.Item2).Find(work);
                return [.. found.Select(example => string.Join(' ', example.Configuration.Quantities))];
            }
            catch (TooEntangledException)
            {
                return null;
            }
        }
    }

    // Law: a name means nothing where the new one lists the old.
    [Fact]
    public void Renamed_options_count_as_the_same() =>
        Cases.Check(
            RandomMachines.Of(12, 4096),
            63,
            200,
            machine => Assert.True(RuleDifference.Of(OrderLogic.Of(machine), OrderLogic.Of(Renamed(machine))).IsNone),
            Machines.Words
        );

    [Fact]
    public void An_option_that_is_no_longer_offered_is_named_with_its_example()
    {
        var before = Machines.Of([Machines.Option("a"), Machines.Option("b", 1, 3)]);
        var after = Machines.Of([Machines.Option("b", 1, 2)]);
        var difference = RuleDifference.Of(OrderLogic.Of(before), OrderLogic.Of(after));
        Assert.Equal((8, 3, 5, 0), (difference.Before, difference.After, difference.Lost, difference.Won));
        Assert.Equal(
            ["`a` is not offered", "`b` is not offered 3 times"],
            difference.LostExamples.Take(2).Select(example => Assert.Single(example.Because).Statement).Order()
        );
    }

    private static RuleDifference Compare(Machine before, Machine after)
    {
        var difference = RuleDifference.Of(OrderLogic.Of(before), OrderLogic.Of(after));
        var (old, now) = (Kept(before), Kept(after));
        Assert.Equal((old.Count, now.Count), (difference.Before, difference.After));
        Check(difference.LostExamples, difference.Lost, [.. old.Except(now, StringComparer.Ordinal)], after);
        Check(difference.WonExamples, difference.Won, [.. now.Except(old, StringComparer.Ordinal)], before);
        return difference;
    }

    /// <summary>Different ones of those there are, none of more options than one left out, each with all it
    /// breaks.</summary>
    private static void Check(
        ImmutableArray<DifferenceExample> examples,
        System.Numerics.BigInteger? count,
        List<string> expected,
        Machine other
    )
    {
        Assert.Equal(expected.Count, count);
        Assert.Equal(Math.Min(5, expected.Count), examples.Length);
        var shown = examples.Select(example => Words(example.Configuration.Quantities)).ToList();
        Assert.Equal(shown.Count, shown.Distinct(StringComparer.Ordinal).Count());
        Assert.All(shown, one => Assert.Contains(one, expected));
        Assert.Equal(
            expected.Select(Size).Order().Take(shown.Count),
            shown.Select(Size)
        );
        Assert.All(examples, example => Assert.Equal(Broken(other, example), example.Because.Length));
    }

    private static int Broken(Machine machine, DifferenceExample example)
    {
        var broken = Meanings.Of(machine).Count(rule => !rule.IsKept(example.Configuration.QuantityOf));
        return broken
            + example.Configuration.Quantities.Count(taken =>
                !machine.Options.TryGetValue(taken.Key, out var option)
                || taken.Value < (option.Quantity?.From ?? 1)
                || taken.Value > (option.Quantity?.To ?? 1)
            );
    }

    private static List<string> Kept(Machine machine)
    {
        var oracle = new Oracle(machine);
        return
        [
            .. oracle.Kept.Select(way =>
                Words(oracle.Options.Select(option => KeyValuePair.Create(option, oracle.CountOf(way, option))))
            ),
        ];
    }

    private static string Words(IEnumerable<KeyValuePair<OptionId, int>> taken) =>
        string.Join(
            ' ',
            taken.Where(one => one.Value > 0).Select(one => FormattableString.Invariant($"{one.Key}={one.Value}"))
        );

    private static int Size(string words) => words.Count(letter => letter == '=');

    private static Machine Renamed(Machine machine)
    {
        var renaming = new Renaming(machine);
        var renamed = renaming.Renamed;
        var old = machine.Options.Keys.ToDictionary(renaming.Of, option => option);
        return renamed with
        {
            Options = renamed.Options.ToImmutableSortedDictionary(
                option => option.Key,
                option => option.Value with { Formerly = [new(old[option.Key].Value, default)] }
            ),
        };
    }
}
