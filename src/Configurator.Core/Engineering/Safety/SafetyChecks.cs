using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Safety;

/// <summary>Guard locks, emergency stops and safe air exhaust never hang on a standard IO-Link port, and the box has
/// the inputs, outputs and test pulses that they need. Connections and counts only: performance levels are for
/// competent persons.</summary>
internal static class SafetyChecks
{
    private const string Governs =
        "common practice, no source; ISO 13849-1 and IEC 62061 govern, a competent person decides";

    public static readonly FindingRule NotOnPort = new(
        "safety.wiring",
        "Safety devices are wired into the box",
        new("CFG4101", Severity.Error, "Safety device on a standard port"),
        Governs,
        IsSafety: true
    );

    public static readonly FindingRule Inputs = new(
        "safety.inputs",
        "Safety inputs of the box",
        new("CFG4102", Severity.Error, "Too few safety inputs"),
        "inputs that the machine states for its box, channels that devices state",
        IsSafety: true
    );

    public static readonly FindingRule Outputs = new(
        "safety.outputs",
        "Safety outputs of the box",
        new("CFG4103", Severity.Error, "Too few safety outputs"),
        "outputs that the machine states for its box, channels that devices state",
        IsSafety: true
    );

    public static readonly FindingRule Pulses = new(
        "safety.test-pulses",
        "Test pulses for plain contacts",
        new("CFG4104", Severity.Error, "Contacts without test pulses"),
        Governs,
        IsSafety: true
    );

    public static ImmutableArray<FindingRule> All { get; } = [NotOnPort, Inputs, Outputs, Pulses];

    public static IEnumerable<Finding> Compute(FittedMachine fitted) =>
        [
            .. fitted
                .Cabled.Where(pair => pair.Instance.Device.Kind == DeviceKind.Safety)
                .Select(pair => Wired(pair.Instance)),
            .. fitted.Machine.Control.Box.Safety is { } offer ? Offered(fitted, offer) : [],
        ];

    /// <summary>Those that need something of the box.</summary>
    public static IEnumerable<(FitInstance Instance, SafetyNeeds Needs)> Needing(FittedMachine fitted) =>
        fitted
            .Fitted.Where(instance => instance.Device.Safety is not null)
            .Select(instance => (instance, instance.Device.Safety!));

    private static Finding Wired(FitInstance instance) =>
        Finding.That(
            NotOnPort,
            instance.Key.ToString(),
            $"safety device `{instance.Key}` is wired {(instance.Fit.Wiring == Wiring.Direct ? "directly into the box" : "to a standard IO-Link port")}",
            instance.Fit.Wiring == Wiring.Direct,
            instance.Fit.Name.Span
        ) with
        {
            Fix = instance.Fit.Wiring == Wiring.Direct ? null : "set `wiring: direct` on the fit",
        };

    private static IEnumerable<Finding> Offered(FittedMachine fitted, SafetyOffer offer)
    {
        var needing = Needing(fitted).ToList();
        yield return Count(fitted, Inputs, "safety inputs", needing.Sum(pair => pair.Needs.Inputs), offer.Inputs);
        yield return Count(fitted, Outputs, "safety outputs", needing.Sum(pair => pair.Needs.Outputs), offer.Outputs);
        foreach (var (instance, _) in needing.Where(pair => pair.Needs.Pulses == TestPulses.Needed))
        {
            yield return Finding.That(
                Pulses,
                instance.Key.ToString(),
                $"`{instance.Key}` has plain contacts, and the box {(offer.GivesPulses ? "sends test pulses through them" : "sends no test pulses")}",
                offer.GivesPulses,
                instance.Fit.Name.Span
            ) with
            {
                Fix = offer.GivesPulses
                    ? null
                    : "take a device that tests its own outputs, or a safety controller with test pulses",
            };
        }
    }

    private static Finding Count(FittedMachine fitted, FindingRule rule, string what, int needed, int offered)
    {
        var station = fitted.Machine.Control.Box.Station.Id;
        return Finding.AtMost(
            rule,
            station.Value.Value,
            FormattableString.Invariant($"safety devices take {needed} {what} of the box"),
            Measure.Count(needed),
            Measure.Count(offered),
            station.Span
        ) with
        {
            Fix = $"give the box more {what}, or leave out an option that takes them",
        };
    }
}
