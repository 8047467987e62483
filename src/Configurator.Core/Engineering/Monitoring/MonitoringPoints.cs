using System.Collections.Immutable;
using Configurator.Core.Engineering.Signals;
using Configurator.Core.Engineering.Timing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Monitoring;

/// <summary>What a machine built to a configuration offers a monitoring system, port by port.</summary>
public static class MonitoringPoints
{
    private const int MillisecondsOfMinute = 60_000;
    private const int BackstopMilliseconds = 60_000;
    private const int RiseMilliseconds = 3_600_000;
    private const int OctetsOfText = 16;

    /// <summary>Parameters that every IO-Link device has the same way, where it has them.</summary>
    /// <remarks>Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) Table B.8; corroborated. All
    /// are
    /// optional there. Intervals: common practice, no source.</remarks>
    private static readonly ImmutableArray<Standard> Standards =
    [
        new(0x0024, "DeviceStatus", "UIntegerT(8)", 1, PointKind.Status, BackstopMilliseconds, RateReason.Backstop),
        new(
            0x0025,
            "DetailedDeviceStatus",
            "ArrayT of OctetStringT(3)",
            3,
            PointKind.Status,
            null,
            RateReason.StatusChange
        ),
        new(0x0020, "ErrorCount", "UIntegerT(16)", 2, PointKind.Counter, RiseMilliseconds, RateReason.Rise),
        new(0x0015, "SerialNumber", "StringT", OctetsOfText, PointKind.Identity, null, RateReason.Start),
        new(0x0017, "FirmwareRevision", "StringT", OctetsOfText, PointKind.Identity, null, RateReason.Start),
    ];

    public static ImmutableArray<MonitoredPoint> Of(FittedMachine fitted)
    {
        var values = SignalList
            .Of(fitted)
            .Where(signal => signal is { Kind: SignalKind.Input, MasterPort: not null })
            .Select(signal => OfSignal(fitted.Machine, signal));
        var devices = fitted
            .Fitted.Where(instance =>
                instance is { Fit.Wiring: Wiring.Port, Device: { Connection: ConnectionKind.IoLink, IoLink: not null } }
            )
            .SelectMany(instance =>
                fitted.Pins.HomeOf(instance.Key) is { } home ? OfDevice(instance, home, instance.Device.IoLink!) : []
            );
        return [.. values, .. devices];
    }

    private static MonitoredPoint OfSignal(Machine machine, Signal signal)
    {
        var isSwitching = signal is { Type: ProcessType.BooleanT, RawOctets: 0 };
        Rational? cycle = machine.Rate is { InBase: var rate } && rate > 0 ? MillisecondsOfMinute / rate : null;
        var response = signal.Instance.Device.Response?.InBase ?? 0;
        var (every, reason) = (isSwitching, cycle) switch
        {
            (true, _) => ((Rational?)null, RateReason.Change),
            (false, { } of) when response > of => (response, RateReason.Response),
            (false, { } of) => (of, RateReason.MachineCycle),
            _ => (1000, RateReason.EverySecond),
        };
        return new(signal.Instance, signal.MasterPort!.Value, PointKind.ProcessValue, signal.Name, every, reason)
        {
            Signal = signal,
            Type = SignalTypes.Of(signal),
        };
    }

    private static IEnumerable<MonitoredPoint> OfDevice(FitInstance instance, Home home, IoLinkData data)
    {
        var standards = Standards.Select(standard => new MonitoredPoint(
            instance,
            home,
            standard.Kind,
            standard.Name,
            standard.Every,
            standard.Reason
        )
        {
            Index = standard.Index,
            Type = standard.Type,
            ReadingMilliseconds = Reading(data, hasSubindex: false, indexOctets: 1, standard.Octets),
        });
        var held = instance
            .Fit.Settings.Select(setting => setting.Value)
            .Concat(instance.Fit.Set.Keys)
            .ToHashSet(StringComparer.Ordinal);
        var settings = instance
            .Device.Parameters.Where(parameter => held.Contains(parameter.Name.Value))
            .Select(parameter => new MonitoredPoint(
                instance,
                home,
                PointKind.Setting,
                parameter.Name.Value,
                null,
                RateReason.Changeover
            )
            {
                Index = parameter.Index,
                Subindex = parameter.Subindex,
                Type = SignalTypes.Of(parameter.Type),
                Parameter = parameter,
                ReadingMilliseconds = Reading(
                    data,
                    hasSubindex: parameter.Subindex > 0,
                    indexOctets: parameter.Index > byte.MaxValue ? 2 : 1,
                    SignalTypes.OctetsOf(parameter.Type)
                ),
            });
        return standards.Concat(settings);
    }

    /// <summary>IOL-08 and IOL-09: request and answer, a few octets a cycle, the device busy for none of
    /// them.</summary>
    private static Rational Reading(IoLinkData data, bool hasSubindex, int indexOctets, int octets)
    {
        var request = Isdu.Length(indexOctets, hasSubindex, dataOctets: 0)!.Value;
        var answer = Isdu.Length(indexOctets: 0, hasSubindex: false, octets)!.Value;
        return Isdu.Cycles(request, answer, data.OnRequestOctets) * data.Cycle.InBase;
    }

    private sealed record Standard(
        int Index,
        string Name,
        string Type,
        int Octets,
        PointKind Kind,
        int? Every,
        RateReason Reason
    );
}
