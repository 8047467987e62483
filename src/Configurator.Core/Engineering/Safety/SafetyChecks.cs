using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Safety;

/// <summary>Guard locks, emergency stops and safe air exhaust never hang on a standard IO-Link port.</summary>
internal static class SafetyChecks
{
    public static readonly FindingRule NotOnPort = new(
        "safety.wiring",
        "Safety devices are wired into the box",
        new("CFG4101", Severity.Error, "Safety device on a standard port"),
        "common practice, no source; ISO 13849-1 and IEC 62061 govern, a competent person decides",
        IsSafety: true
    );

    public static ImmutableArray<FindingRule> All { get; } = [NotOnPort];

    public static IEnumerable<Finding> Compute(FittedMachine fitted) =>
        fitted
            .Cabled.Where(pair => pair.Instance.Device.Kind == DeviceKind.Safety)
            .Select(pair =>
                Finding.That(
                    NotOnPort,
                    pair.Instance.Key.ToString(),
                    $"safety device `{pair.Instance.Key}` is wired {(pair.Instance.Fit.Wiring == Wiring.Direct ? "directly into the box" : "to a standard IO-Link port")}",
                    pair.Instance.Fit.Wiring == Wiring.Direct,
                    pair.Instance.Fit.Name.Span
                ) with
                {
                    Fix = pair.Instance.Fit.Wiring == Wiring.Direct ? null : "set `wiring: direct` on the fit",
                }
            );
}
