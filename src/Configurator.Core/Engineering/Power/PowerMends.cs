using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>Other ways to feed the same masters, cheapest first, each computed anew.</summary>
internal static class PowerMends
{
    /// <summary>Thicker than that no M12 plug takes.</summary>
    private const int AreaMax = 6;

    /// <summary>What brings every master to that voltage; a sentence that names nothing where nothing does.</summary>
    public static string For(
        FieldPower power,
        Machine machine,
        TrunkFeed feed,
        ImmutableArray<TapLoad> loads,
        Rational least
    )
    {
        ImmutableArray<string> helping =
        [
            .. new[]
            {
                Thicker(power, machine, feed, loads, least),
                FromTheEnd(machine, feed, loads, least),
                Split(machine, feed, loads, least),
            }.OfType<string>(),
        ];
        return helping.IsEmpty
            ? "no larger conductor up to 6 mm2, no feed from the other end and no split of the trunk in two is enough: move loads to another trunk"
            : string.Join("; or ", helping);
    }

    private static string? Thicker(
        FieldPower power,
        Machine machine,
        TrunkFeed feed,
        ImmutableArray<TapLoad> loads,
        Rational least
    )
    {
        for (
            var size = ConductorSizes.After(TrunkFeed.AreaOf(machine));
            size is not null && size.AreaMm2 <= AreaMax;
            size = ConductorSizes.After(size.AreaMm2)
        )
        {
            if (
                Lowest(feed with { OhmPerKm = TrunkFeed.Hot(power, size.AreaMm2) }, loads) is { } volts
                && volts >= least
            )
            {
                return $"take a trunk cable of {size.AreaMm2.ToString(2)} mm2: then {volts.ToString(2)} V at the lowest";
            }
        }

        return null;
    }

    private static string? FromTheEnd(Machine machine, TrunkFeed feed, ImmutableArray<TapLoad> loads, Rational least) =>
        feed.Masters.Length > 1
        && Lowest(On(machine, feed, [.. feed.Masters.Reverse()]), [.. loads.Reverse()]) is { } volts
        && volts >= least
            ? $"feed the trunk from its other end, at `{feed.Masters[^1].Name.Value}`: then {volts.ToString(2)} V at the lowest"
            : null;

    /// <summary>Two trunks from the box; the split that leaves the most.</summary>
    private static string? Split(Machine machine, TrunkFeed feed, ImmutableArray<TapLoad> loads, Rational least)
    {
        var best = Enumerable
            .Range(1, Math.Max(0, feed.Masters.Length - 1))
            .Select(at => (At: at, Volts: Lowest(machine, feed, loads, at)))
            .Where(split => split.Volts is not null)
            .OrderByDescending(split => split.Volts)
            .FirstOrDefault();
        return best.Volts is { } volts && volts >= least
            ? $"split the trunk, with a feed of its own from `{feed.Masters[best.At].Name.Value}` on: then {volts.ToString(2)} V at the lowest"
            : null;
    }

    private static Rational? Lowest(Machine machine, TrunkFeed feed, ImmutableArray<TapLoad> loads, int at) =>
        Lowest(On(machine, feed, feed.Masters[..at]), loads[..at]) is { } first
        && Lowest(On(machine, feed, feed.Masters[at..]), loads[at..]) is { } second
            ? first < second
                ? first
                : second
            : null;

    private static TrunkFeed On(Machine machine, TrunkFeed feed, ImmutableArray<Master> masters) =>
        feed with
        {
            Masters = masters,
            Lengths =
            [
                .. masters.Select((master, i) => TrunkFeed.Length(machine, i == 0 ? null : masters[i - 1], master)),
            ],
        };

    private static Rational? Lowest(TrunkFeed feed, ImmutableArray<TapLoad> loads) =>
        FeedVolts.Of(feed, loads) is { } solved ? solved.Volts.Min() : null;
}
