using Configurator.Core.Engineering.Box;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Timing;

/// <summary>By what another way is shorter.</summary>
internal enum TimingMeans
{
    Cycle,
    LessData,
    FasterRate,
    OwnPort,
    Direct,
}

/// <summary>Another way for a signal, with all of its times, and what it costs the box.</summary>
internal sealed record TimingMend(TimingMeans Means, string Words, ResponseChain Chain);

/// <summary>Other ways that the signal of a fit could take, each computed, cheapest for the box first; of one means,
/// the least change first.</summary>
internal static class TimingMends
{
    public static IEnumerable<TimingMend> Of(FittedMachine fitted, FitInstance instance)
    {
        var way = SignalWay.Of(fitted, instance);
        if (way.IsDirect)
        {
            return [];
        }

        return
        [
            .. way is { Hub: null, Data: { } data } ? Exchanges(data).Select(By) : [OfOwnPort()],
            .. instance.Device.Connection is ConnectionKind.IoLink or ConnectionKind.Switching
                ? Direct(fitted, instance)
                : [],
        ];

        TimingMend By((TimingMeans Means, string Words, IoLinkData Data) other) =>
            new(other.Means, other.Words, Chain(way with { Data = other.Data }));

        TimingMend OfOwnPort() =>
            new(TimingMeans.OwnPort, "a port of a master in place of the hub", Chain(new(false, null, null)));

        ResponseChain Chain(SignalWay other) => ResponseChain.Of(fitted.Machine, instance, other);
    }

    /// <summary>The shortest cycle for its data, less data, a faster rate; the last two with the shortest cycle that
    /// can be stated for them.</summary>
    private static IEnumerable<(TimingMeans Means, string Words, IoLinkData Data)> Exchanges(IoLinkData data)
    {
        if (Fastest(data) is { } same && same.Cycle.InBase < data.Cycle.InBase)
        {
            yield return (
                TimingMeans.Cycle,
                $"a device with a cycle of {same.Cycle}, the shortest for its data,",
                same
            );
        }

        for (var octets = data.InputOctets - 1; octets > 0; octets--)
        {
            if (Fastest(data with { InputOctets = octets }) is { } less)
            {
                yield return (TimingMeans.LessData, Octets(octets, data.InputOctets), less);
            }
        }

        for (var rate = data.Rate + 1; rate <= BitRate.Com3; rate++)
        {
            if (Fastest(data with { Rate = rate }) is { } faster)
            {
                yield return (
                    TimingMeans.FasterRate,
                    $"a device at {CycleChecks.Word(rate)} in place of {CycleChecks.Word(data.Rate)}",
                    faster
                );
            }
        }
    }

    private static string Octets(int fewer, int now) =>
        FormattableString.Invariant($"process data of {fewer} octets in place of {now}");

    private static IEnumerable<TimingMend> Direct(FittedMachine fitted, FitInstance instance)
    {
        var chain = ResponseChain.Of(fitted.Machine, instance, new(true, null, null));
        if (chain.Missing.IsEmpty)
        {
            var kept = instance.Device.Connection == ConnectionKind.IoLink ? " with IO-Link kept for parameters" : "";
            yield return new(TimingMeans.Direct, $"a direct signal{kept}, which takes {Cost(fitted)},", chain);
        }
    }

    /// <summary>One cable entry and one fast input, of those that this order leaves.</summary>
    private static string Cost(FittedMachine fitted)
    {
        var left = BoxChecks
            .Compute(fitted, Cabling.Of(fitted))
            .Where(finding => finding.Rule == BoxChecks.Entries || finding.Rule == BoxChecks.DirectInputs)
            .ToDictionary(finding => finding.Rule, finding => finding.Margin!.Value);
        return $"a cable entry of {left[BoxChecks.Entries]} and a fast input of {left[BoxChecks.DirectInputs]} left";
    }

    private static IoLinkData? Fastest(IoLinkData data) =>
        CycleTime.ShortestFor(MSequences.Of(data).MillisecondsMax(data.Rate)) is { } cycle
            ? data with
            {
                Cycle = new(cycle, UnitTable.Find("ms")!, cycle, $"{cycle} ms"),
            }
            : null;
}
