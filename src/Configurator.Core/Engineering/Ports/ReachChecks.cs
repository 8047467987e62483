using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Engineering.Ports;

/// <summary>Does a cable from stock reach, and is none to a port longer than IO-Link allows?</summary>
internal static class ReachChecks
{
    /// <summary>Master port to device. Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) Table
    /// 11.</summary>
    public static readonly Micrometres IoLinkMax = Micrometres.FromMillimetres(20_000);

    public static IEnumerable<Finding> Compute(FittedMachine fitted, ImmutableArray<CableRun> cables) =>
        cables
            .Where(cable => cable.Cordset is not null || cable is DeviceCable { Home.IsDirect: false })
            .Select(cable => Of(fitted, cable));

    private static Finding Of(FittedMachine fitted, CableRun cable)
    {
        var (about, what, span) = Describe(fitted, cable);
        if (cable.Needed is not { } needed)
        {
            return Finding.That(PortRules.Reach, about, $"no cable path leads to {what}", isSo: false, span);
        }

        var limit = LimitFor(cable);
        return Finding.AtMost(
            PortRules.Reach,
            about,
            $"{what} needs a cable of {needed} with drops and slack",
            Measure.Of(needed),
            Measure.Of(limit),
            span
        ) with
        {
            Fix = needed > limit ? $"{needed - limit} too long: give it a home nearer by" : null,
        };
    }

    /// <summary>The longest cable to a port: the longest in stock, and no more than IO-Link allows.</summary>
    public static Micrometres LimitAtPort(Device? cordset) =>
        LongestOf(cordset) is { } stock && stock < IoLinkMax ? stock : IoLinkMax;

    private static Micrometres LimitFor(CableRun cable) =>
        cable is DeviceCable { Home.IsDirect: false }
            ? LimitAtPort(cable.Cordset)
            : LongestOf(cable.Cordset) ?? IoLinkMax;

    private static Micrometres? LongestOf(Device? cordset) =>
        cordset?.Cordset is { } cable ? Micrometres.From(cable.Lengths[^1]) : null;

    private static (string About, string What, SourceSpan Span) Describe(FittedMachine fitted, CableRun cable) =>
        cable switch
        {
            DeviceCable device => (
                device.Instance.Key.ToString(),
                $"`{device.Instance.Key}` at `{device.Home}`",
                fitted.Pins.Homes.TryGetValue(device.Instance.Key, out var home)
                    ? home.Span
                    : device.Instance.Fit.Name.Span
            ),
            TrunkCable trunk => (
                $"trunk-{(trunk.IsPower ? "power" : "network")}-{trunk.Next.Name.Value}",
                $"the trunk to `{trunk.Next.Name.Value}`",
                trunk.Next.Name.Span
            ),
            NetworkCable network => (
                $"network-{network.Instance.Key}",
                $"the network cable of `{network.Instance.Key}`",
                network.Instance.Fit.Name.Span
            ),
            _ => throw new InvalidOperationException(cable.GetType().Name),
        };
}
