using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>Other ways to feed the same masters, cheapest first, each computed anew.</summary>
internal static class PowerMends
{
    /// <summary>Thicker than that no M12 plug takes: of a trunk, in mm2.</summary>
    private const int AreaMax = 6;

    /// <summary>The same of a cordset with A-coded M12 plugs. From memory.</summary>
    private static readonly Rational CordsetMax = Rational.Of(0.75m);

    /// <summary>What brings every master to that voltage; a sentence that names nothing where nothing does.</summary>
    public static string For(FedCircuit fed, Rational least) => Segment(fed) + MendOf(fed, least);

    private static string MendOf(FedCircuit fed, Rational least) =>
        Joined(OfTrunk(fed, least))
        ?? "no larger conductor up to 6 mm2, no feed from the other end and no split of the trunk in two is enough: move loads to another trunk";

    /// <summary>What brings a device to that voltage: a cable of its own with thicker cores, else more at its
    /// master.</summary>
    /// <param name="atMaster">Volts where its cable begins.</param>
    public static string For(FedCircuit fed, FarDevice far, Rational atMaster, Rational least) =>
        Segment(fed) + MendOf(fed, far, atMaster, least);

    private static string MendOf(FedCircuit fed, FarDevice far, Rational atMaster, Rational least) =>
        Joined([Cordset(far, atMaster, least), .. OfTrunk(fed, least + far.Drop)])
        ?? $"neither a cordset with cores up to {CordsetMax.ToString(2)} mm2 nor a change of the trunk is enough: give it a home on a nearer master";

    /// <summary>The stretch of the trunk that loses most, to begin the sentence with; empty where no voltage carries
    /// the load.</summary>
    private static string Segment(FedCircuit fed)
    {
        if (fed.Solved is not { } solved)
        {
            return "";
        }

        var lost = solved
            .Volts.Select((volts, i) => (At: i, Lost: (i == 0 ? fed.Feed.Volts : solved.Volts[i - 1]) - volts))
            .MaxBy(stretch => stretch.Lost);
        var from = lost.At == 0 ? "the box" : $"`{fed.Masters[lost.At - 1].Name.Value}`";
        return $"the stretch from {from} to `{fed.Masters[lost.At].Name.Value}` loses most, {lost.Lost.ToString(2)} V; ";
    }

    private static string? Joined(IEnumerable<string?> mends) =>
        mends.OfType<string>().ToList() is { Count: > 0 } helping ? string.Join("; or ", helping) : null;

    private static IEnumerable<string?> OfTrunk(FedCircuit fed, Rational least) =>
        [Thicker(fed, least), FromTheEnd(fed, least), Split(fed, least)];

    private static string? Cordset(FarDevice far, Rational atMaster, Rational least) =>
        ConductorSizes.ClassFive.FirstOrDefault(size =>
            size.AreaMm2 > far.AreaMm2 && size.AreaMm2 <= CordsetMax && atMaster - far.DropWith(size.AreaMm2) >= least
        )
            is { } enough
            ? $"take a cordset for `{far.Instance.Key}` with cores of {enough.AreaMm2.ToString(2)} mm2: then {(atMaster - far.DropWith(enough.AreaMm2)).ToString(2)} V there"
            : null;

    private static string? Thicker(FedCircuit fed, Rational least)
    {
        for (
            var size = ConductorSizes.After(TrunkFeed.AreaOf(fed.Machine));
            size is not null && size.AreaMm2 <= AreaMax;
            size = ConductorSizes.After(size.AreaMm2)
        )
        {
            var feed = fed.Feed with { OhmPerKm = TrunkFeed.Hot(fed.Power, size.AreaMm2) };
            if (Lowest(feed, fed.Loads) is { } volts && volts >= least)
            {
                return $"take a trunk cable of {size.AreaMm2.ToString(2)} mm2: then {volts.ToString(2)} V at the lowest";
            }
        }

        return null;
    }

    private static string? FromTheEnd(FedCircuit fed, Rational least) =>
        fed.Masters.Length > 1
        && Lowest(fed, [.. fed.Masters.Reverse()], [.. fed.Loads.Reverse()]) is { } volts
        && volts >= least
            ? $"feed the trunk from its other end, at `{fed.Masters[^1].Name.Value}`: then {volts.ToString(2)} V at the lowest"
            : null;

    /// <summary>Two trunks from the box; the split that leaves the most.</summary>
    private static string? Split(FedCircuit fed, Rational least)
    {
        var best = Enumerable
            .Range(1, Math.Max(0, fed.Masters.Length - 1))
            .Select(at => (At: at, Volts: LowestSplit(fed, at)))
            .Where(split => split.Volts is not null)
            .OrderByDescending(split => split.Volts)
            .FirstOrDefault();
        return best.Volts is { } volts && volts >= least
            ? $"split the trunk, with a feed of its own from `{fed.Masters[best.At].Name.Value}` on: then {volts.ToString(2)} V at the lowest"
            : null;
    }

    private static Rational? LowestSplit(FedCircuit fed, int at) =>
        Lowest(fed, fed.Masters[..at], fed.Loads[..at]) is { } first
        && Lowest(fed, fed.Masters[at..], fed.Loads[at..]) is { } second
            ? first < second
                ? first
                : second
            : null;

    /// <summary>With the same conductors, from the box to these masters in this order.</summary>
    private static Rational? Lowest(FedCircuit fed, ImmutableArray<Master> masters, ImmutableArray<TapLoad> loads) =>
        Lowest(TrunkFeed.Of(fed.Power, fed.Machine, masters), loads);

    private static Rational? Lowest(TrunkFeed feed, ImmutableArray<TapLoad> loads) =>
        FeedVolts.Of(feed, loads) is { } solved ? solved.Volts.Min() : null;
}
