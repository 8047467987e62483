using System.Collections.Immutable;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using CsCheck;

namespace Configurator.Core.Tests.Logic.Orders;

/// <summary>Machines with rules of every sort in every shape, sensible or not.</summary>
internal static class RandomMachines
{
    private const int Letters = 26;

    private static readonly Gen<(int From, int To)> Numbers = Gen.Frequency(
        (12, (1, 1)),
        (2, (1, 2)),
        (2, (1, 3)),
        (1, (2, 2)),
        (1, (2, 3)),
        (1, (2, 4))
    );

    /// <summary>Machines of at most so many options, with at most so many ways to take them.</summary>
    public static Gen<Machine> Of(int options, long ways) =>
        from count in Gen.Frequency((1, Gen.Int[2, options / 2]), (3, Gen.Int[options / 2, options]))
        from numbers in Numbers.Array[count]
        let offered = Offered(Limited(numbers, ways))
        let names = Names(offered)
        from links in Links(names, count)
        from choices in Choices(names)
        from rules in Rules(names)
        from limits in Limits(names)
        select Machines.Of(offered.Select(option => links(option)), choices, rules, limits);

    /// <summary>A machine and an order of it: picks of every sort, some of options not offered.</summary>
    public static Gen<(Machine Machine, PartialOrder Order)> WithOrder(int options, long ways) =>
        from machine in Of(options, ways)
        from order in RandomOrders.Partial([.. machine.Options.Keys])
        select (machine, order);

    /// <summary>A machine and an order of it as a customer writes one: each option in a number.</summary>
    public static Gen<(Machine Machine, PartialOrder Order)> WithCompleteOrder(int options, long ways) =>
        from machine in Of(options, ways)
        from order in RandomOrders.Complete([.. machine.Options.Keys])
        select (machine, order);

    public static string Words((Machine Machine, PartialOrder Order) both) =>
        Machines.Words(both.Machine) + Machines.Words(both.Order);

    /// <summary>Plain options in place of counted ones where the ways to take them would be too many.</summary>
    private static ImmutableArray<(int From, int To)> Limited((int From, int To)[] numbers, long ways)
    {
        var plain = 1L << numbers.Length;
        var limited = ImmutableArray.CreateBuilder<(int, int)>();
        foreach (var (from, to) in numbers)
        {
            var more = plain / 2 * (to - from + 2);
            var fits = more <= ways;
            limited.Add(fits ? (from, to) : (1, 1));
            plain = fits ? more : plain;
        }

        return limited.ToImmutable();
    }

    private static ImmutableArray<Option> Offered(ImmutableArray<(int From, int To)> numbers) =>
        [.. numbers.Select((range, i) => Machines.Option(Name(i), range.From, range.To))];

    /// <summary>a, b, ... z, za, zb ...</summary>
    private static string Name(int option) => (option < Letters ? "" : "z") + (char)('a' + (option % Letters));

    /// <summary>What rules may name: the options offered, and now and then one that is not.</summary>
    private static Gen<OptionId> Names(ImmutableArray<Option> offered) =>
        Gen.Frequency(
            (80, Gen.OneOf(offered.Select(option => option.Id.Value).ToArray())),
            (1, Gen.Const(RandomConditions.NotOffered))
        );

    private static Gen<Func<Option, Option>> Links(Gen<OptionId> names, int options) =>
        from requires in Gen.Select(names, RandomConditions.Of(names)).Array[0, (options / 3) + 1]
        from notWith in Gen.Select(names, names).Array[0, (options / 3) + 1]
        from comesWith in Gen.Select(names, names).Array[0, (options / 4) + 1]
        select (Func<Option, Option>)(
            option =>
                option with
                {
                    Requires =
                    [
                        .. requires
                            .Where(pair => pair.Item1 == option.Id.Value)
                            .Select(pair => new Requirement(pair.Item2, null)),
                    ],
                    NotWith =
                    [
                        .. notWith
                            .Where(pair => pair.Item1 == option.Id.Value && pair.Item2 != option.Id.Value)
                            .Select(pair => Machines.Link(pair.Item2)),
                    ],
                    ComesWith =
                    [
                        .. comesWith
                            .Where(pair => pair.Item1 == option.Id.Value)
                            .Select(pair => Machines.Link(pair.Item2)),
                    ],
                }
        );

    private static Gen<Choice[]> Choices(Gen<OptionId> names) =>
        (
            from take in Gen.Enum<Take>()
            from members in Gen.Frequency((1, Gen.Int[1, 3]), (4, Gen.Int[3, 9])).SelectMany(size => names.Array[size])
            from hasWhen in Gen.Frequency((2, false), (1, true))
            from when in RandomConditions.Of(names)
            select Machines.Choice("choice", take, members.Distinct(), hasWhen ? when : null)
        ).Array[0, 2];

    private static Gen<MachineRule[]> Rules(Gen<OptionId> names) =>
        (
            from hasWhen in Gen.Frequency((4, true), (1, false))
            from when in RandomConditions.Of(names)
            from need in RandomConditions.Of(names)
            select Machines.Rule("rule", need, hasWhen ? when : null)
        ).Array[0, 3];

    private static Gen<CountLimit[]> Limits(Gen<OptionId> names) =>
        (
            from atMost in Gen.Frequency((1, Gen.Int[0, 1]), (6, Gen.Int[3, 9]))
            from shares in Gen.Select(names, Gen.Int[1, 3]).Array[1, 6]
            select Machines.Limit("limit", atMost, shares)
        ).Array[0, 2];
}
