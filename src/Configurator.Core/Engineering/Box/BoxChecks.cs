using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Box;

/// <summary>Counts what an order adds to the control box: cable entries and fast inputs.</summary>
internal static class BoxChecks
{
    public static readonly FindingRule Entries = new(
        "box.entries",
        "Cable entries of the box",
        new("CFG4201", Severity.Error, "Too few cable entries"),
        "entries that the machine states for its box"
    );

    public static readonly FindingRule DirectInputs = new(
        "box.direct-inputs",
        "Fast inputs of the controller",
        new("CFG4202", Severity.Error, "Too few fast inputs"),
        "inputs that the machine states for its box"
    );

    public static readonly FindingRule Honest = new(
        "box.declared",
        "Options say what they add to the box",
        new("CFG4203", Severity.Error, "Option adds to the box without saying so"),
        "one architecture: every option that touches the box names it"
    );

    public static ImmutableArray<FindingRule> All { get; } = [Entries, DirectInputs, Honest];

    public static IEnumerable<Finding> Compute(FittedMachine fitted, ImmutableArray<CableRun> cables)
    {
        var control = fitted.Machine.Control;
        var entering = cables.Count(cable =>
            cable is DeviceCable { Home.IsDirect: true } or TrunkCable { Previous: null } or NetworkCable
        );
        yield return Finding.AtMost(
            Entries,
            control.Box.Station.Id.Value.Value,
            FormattableString.Invariant($"{entering} cables enter the box"),
            Measure.Count(entering),
            Measure.Count(control.Box.Entries),
            control.Box.Station.Id.Span
        ) with
        {
            Fix = "move a direct fit to a port, or give the box more entries",
        };

        var signals = FastInputs(cables);
        yield return Finding.AtMost(
            DirectInputs,
            control.Box.Station.Id.Value.Value,
            FormattableString.Invariant($"{signals} signals go straight to fast inputs"),
            Measure.Count(signals),
            Measure.Count(control.Box.DirectInputs),
            control.Box.Station.Id.Span
        ) with
        {
            Fix = "move a direct fit to a port",
        };

        foreach (
            var option in fitted
                .Fitted.Where(TouchesBox)
                .Select(instance => instance.Option!)
                .DistinctBy(option => option.Id.Value)
        )
        {
            yield return Finding.That(
                Honest,
                option.Id.Value.Value,
                $"`{option.Id.Value}` adds to the control box and {(option.TouchesBox.IsEmpty ? "does not say so" : "says so")}",
                !option.TouchesBox.IsEmpty,
                option.Id.Span
            ) with
            {
                Fix = option.TouchesBox.IsEmpty ? "list what it adds under `touches-box`" : null,
            };
        }
    }

    /// <summary>One for each sensor wired directly, and one for each option that says it takes one but whose device,
    /// such as a coder, is wired to terminals.</summary>
    private static int FastInputs(ImmutableArray<CableRun> cables)
    {
        var direct = cables.OfType<DeviceCable>().Where(cable => cable.Home.IsDirect).ToList();
        var sensors = direct
            .Where(cable => cable.Instance.Device.Connection is ConnectionKind.Switching or ConnectionKind.IoLink)
            .Select(cable => cable.Instance)
            .ToList();
        var seen = sensors.Select(instance => instance.Option?.Id.Value).ToHashSet();
        var others = direct
            .Select(cable => cable.Instance.Option)
            .OfType<Option>()
            .Where(option => option.TouchesBox.Any(touch => touch.Value == BoxTouch.DirectInput))
            .Select(option => option.Id.Value)
            .Distinct();
        return sensors.Count + others.Count(option => !seen.Contains(option));
    }

    private static bool TouchesBox(FitInstance instance) =>
        instance is { Option: not null, Fit.Wiring: Wiring.Direct or Wiring.Inside };
}
