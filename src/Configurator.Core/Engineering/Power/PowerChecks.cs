using System.Collections.Immutable;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>Voltage, current, protection and stop function of each circuit of the trunk, and what its supplies
/// give.</summary>
internal static class PowerChecks
{
    public static IEnumerable<Finding> Compute(FittedMachine fitted, ImmutableArray<CableRun> cables) =>
        fitted.Machine.Control.Power is { } power && !fitted.Masters.IsEmpty
            ? power
                .Circuits.SelectMany(circuit => OfCircuit(fitted, cables, power, circuit))
                .Concat(SupplyChecks.Compute(fitted, power))
            : [];

    private static IEnumerable<Finding> OfCircuit(
        FittedMachine fitted,
        ImmutableArray<CableRun> cables,
        FieldPower power,
        FieldCircuit circuit
    )
    {
        var feed = TrunkFeed.Of(power, fitted.Machine, fitted.Masters);
        ImmutableArray<TapLoad> loads =
        [
            .. fitted.Masters.Select(master => TapLoads.Of(fitted, master, circuit.Feeds)),
        ];
        var solved = FeedVolts.Of(feed, loads);
        for (var i = 0; i < feed.Masters.Length; i++)
        {
            foreach (var finding in AtMaster(fitted, cables, power, circuit, feed, loads, solved, i))
            {
                yield return finding;
            }
        }

        yield return Current(circuit, loads, solved);
        yield return Conductor(fitted.Machine, circuit);
        yield return Trip(circuit, feed);
        yield return Stop(circuit);
    }

    private static IEnumerable<Finding> AtMaster(
        FittedMachine fitted,
        ImmutableArray<CableRun> cables,
        FieldPower power,
        FieldCircuit circuit,
        TrunkFeed feed,
        ImmutableArray<TapLoad> loads,
        FeedVolts? solved,
        int i
    )
    {
        var master = feed.Masters[i];
        var about = $"{master.Name.Value}/{circuit.Name.Value}";
        if (circuit.Feeds == CircuitUse.ActuatorSupply && loads[i] == default)
        {
            yield break;
        }

        if (solved is null)
        {
            yield return Finding.That(
                PowerRules.MasterVoltage,
                about,
                $"`{circuit.Name.Value}` cannot carry its load to master `{master.Name.Value}` at any voltage",
                isSo: false,
                master.Name.Span
            ) with
            {
                Fix = PowerMends.For(power, fitted.Machine, feed, loads, PowerRules.MasterMin(circuit.Feeds)),
            };
            yield break;
        }

        yield return Voltage(
            PowerRules.MasterVoltage,
            about,
            $"`{circuit.Name.Value}` reaches master `{master.Name.Value}` with {Print(solved.Volts[i])}",
            solved.Volts[i],
            PowerRules.MasterMin(circuit.Feeds)
        );
        if (DeviceVolts.Furthest(fitted, cables, power, master, circuit.Feeds) is { } far)
        {
            yield return Voltage(
                PowerRules.DeviceVoltage,
                about,
                $"`{circuit.Name.Value}` reaches `{far.Instance.Key}` at master `{master.Name.Value}` with {Print(solved.Volts[i] - far.Drop)}",
                solved.Volts[i] - far.Drop,
                PowerRules.DeviceMin(circuit.Feeds)
            );
        }

        Finding Voltage(FindingRule rule, string what, string statement, Rational volts, Rational least) =>
            Finding.AtLeast(rule, what, statement, new(volts, "V"), new(least, "V"), master.Name.Span) is var finding
            && finding.Verdict == Verdict.Pass
                ? finding
                : finding with
                {
                    Fix = PowerMends.For(power, fitted.Machine, feed, loads, least + (solved.Volts[i] - volts)),
                };
    }

    private static Finding Current(FieldCircuit circuit, ImmutableArray<TapLoad> loads, FeedVolts? solved)
    {
        var amperes =
            solved?.Total
            ?? loads.Aggregate((Rational)0, (sum, load) => sum + load.At(PowerRules.DeviceMin(circuit.Feeds)));
        return Finding.AtMost(
            PowerRules.TrunkCurrent,
            circuit.Name.Value,
            $"`{circuit.Name.Value}` draws {amperes.ToString(3)} A from the box into the trunk",
            new(amperes, "A"),
            Amperes(circuit.Protection),
            circuit.Name.Span
        ) with
        {
            Fix =
                "split the trunk, each part with a protective device of its own, or take one of a higher rating that the conductors bear",
        };
    }

    private static Finding Conductor(Machine machine, FieldCircuit circuit)
    {
        var area = TrunkFeed.AreaOf(machine);
        var carries = Ampacity.Amperes(area, Installation.E);
        var protection = Amperes(circuit.Protection);
        var finding = carries is { } amperes
            ? Finding.AtMost(
                PowerRules.Conductor,
                circuit.Name.Value,
                $"`{circuit.Name.Value}` is protected at {protection}, its smallest conductor has {area.ToString(2)} mm2",
                protection,
                new(amperes, "A"),
                circuit.Name.Span
            )
            : Finding.That(
                PowerRules.Conductor,
                circuit.Name.Value,
                $"the tables say nothing of what a conductor of {area.ToString(2)} mm2 behind `{circuit.Name.Value}` may carry",
                isSo: false,
                circuit.Name.Span
            );
        return finding with
        {
            Fix = Ampacity.Rows.FirstOrDefault(row => row.E >= protection.Value) is { } enough
                ? $"take a trunk cable of {enough.AreaMm2.ToString(2)} mm2, which carries {enough.E.ToString(1)} A"
                : "take a protective device of a lower rating",
        };
    }

    /// <summary>Ohm; of connectors, so that no line is without any resistance.</summary>
    private static readonly Rational Contacts = Rational.Of(0.001m);

    private static Finding Trip(FieldCircuit circuit, TrunkFeed feed)
    {
        var amperes = Conductors.ShortCircuitAmperes(feed.Volts, feed.Source + Contacts, feed.Whole, feed.OhmPerKm);
        return Finding.AtLeast(
            PowerRules.Trip,
            circuit.Name.Value,
            $"a short circuit at the far end of `{circuit.Name.Value}` draws {amperes.ToString(1)} A over {feed.Whole.ToString(1)} m",
            new(amperes, "A"),
            Amperes(circuit.TripsAt),
            circuit.Name.Span
        ) with
        {
            Fix = "take thicker conductors, or a protective device that opens at less, such as an electronic one",
        };
    }

    /// <summary>Connections only: what a stop has to achieve is for competent persons.</summary>
    private static Finding Stop(FieldCircuit circuit)
    {
        var name = circuit.Name.Value;
        var (isSo, statement) = (circuit.DroppedBy, circuit) switch
        {
            ({ } by, { StaysAlive: true }) => (false, $"`{name}` has to stay alive and is dropped by {by.In("en")}"),
            ({ } by, _) => (true, $"`{name}` is dropped by {by.In("en")}"),
            (null, { Feeds: CircuitUse.ActuatorSupply }) => (false, $"no stop function is named that drops `{name}`"),
            _ => (true, $"`{name}` is dropped by no stop: sensors and communication stay alive"),
        };
        return Finding.That(PowerRules.Stop, name, statement, isSo, circuit.Name.Span) with
        {
            Fix = isSo
                ? null
                : "name the stop function under `dropped-by` of every circuit that feeds actuators, and of no other that stays alive",
        };
    }

    private static Measure Amperes(Quantity current) => new(current.InBase / 1000, "A");

    private static string Print(Rational volts) => $"{volts.ToString(2)} V";
}
