using System.Collections.Immutable;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>Voltage, current, protection and stop function of each circuit of the trunk, and what its supplies
/// give.</summary>
internal static class PowerChecks
{
    public static IEnumerable<Finding> Compute(FittedMachine fitted, ImmutableArray<CableRun> cables)
    {
        if (fitted.Machine.Control.Power is not { } power || fitted.Masters.IsEmpty)
        {
            return [];
        }

        var cableOf = cables.OfType<DeviceCable>().ToDictionary(cable => cable.Instance.Key);
        return power
            .Circuits.SelectMany(circuit => OfCircuit(FedCircuit.Of(fitted, power, circuit), cableOf))
            .Concat(SupplyChecks.Compute(fitted, power));
    }

    private static IEnumerable<Finding> OfCircuit(
        FedCircuit fed,
        IReadOnlyDictionary<InstanceKey, DeviceCable> cableOf
    ) =>
        [
            .. fed.Masters.SelectMany((_, i) => AtMaster(fed, cableOf, i)),
            Current(fed),
            Conductor(fed),
            .. new[] { BranchChecks.Of(fed, cableOf) }.OfType<Finding>(),
            Trip(fed),
            Stop(fed.Circuit),
        ];

    private static IEnumerable<Finding> AtMaster(
        FedCircuit fed,
        IReadOnlyDictionary<InstanceKey, DeviceCable> cableOf,
        int i
    )
    {
        var master = fed.Masters[i];
        var about = $"{master.Name.Value}/{fed.Name}";
        if (fed.Use == CircuitUse.ActuatorSupply && fed.Loads[i] == default)
        {
            yield break;
        }

        if (fed.Solved is not { } solved)
        {
            yield return Finding.That(
                PowerRules.MasterVoltage,
                about,
                $"`{fed.Name}` cannot carry its load to master `{master.Name.Value}` at any voltage",
                isSo: false,
                master.Name.Span
            ) with
            {
                Fix = PowerMends.For(fed, PowerRules.MasterMin(fed.Use)),
            };
            yield break;
        }

        yield return Voltage(
            PowerRules.MasterVoltage,
            about,
            $"`{fed.Name}` reaches master `{master.Name.Value}` with {Print(solved.Volts[i])}",
            solved.Volts[i],
            PowerRules.MasterMin(fed.Use),
            least => PowerMends.For(fed, least)
        );
        if (DeviceVolts.Furthest(fed, cableOf, master) is { } far)
        {
            yield return Voltage(
                PowerRules.DeviceVoltage,
                about,
                $"`{fed.Name}` reaches `{far.Instance.Key}` at master `{master.Name.Value}` with {Print(solved.Volts[i] - far.Drop)}",
                solved.Volts[i] - far.Drop,
                PowerRules.DeviceMin(fed.Use),
                least => PowerMends.For(fed, far, solved.Volts[i], least)
            );
        }

        Finding Voltage(
            FindingRule rule,
            string what,
            string statement,
            Rational volts,
            Rational least,
            Func<Rational, string> mend
        ) =>
            Finding.AtLeast(rule, what, statement, new(volts, "V"), new(least, "V"), master.Name.Span) is var finding
            && finding.Verdict == Verdict.Pass
                ? finding
                : finding with
                {
                    Fix = mend(least),
                };
    }

    private static Finding Current(FedCircuit fed)
    {
        var amperes = fed.Solved?.Total
            ?? fed.Loads.Aggregate((Rational)0, (sum, load) => sum + load.At(PowerRules.DeviceMin(fed.Use)));
        return Finding.AtMost(
            PowerRules.TrunkCurrent,
            fed.Name,
            $"`{fed.Name}` draws {amperes.ToString(3)} A from the box into the trunk",
            new(amperes, "A"),
            Amperes(fed.Circuit.Protection),
            fed.Circuit.Name.Span
        ) with
        {
            Fix =
                "split the trunk, each part with a protective device of its own, or take one of a higher rating that the conductors bear",
        };
    }

    private static Finding Conductor(FedCircuit fed)
    {
        var area = TrunkFeed.AreaOf(fed.Machine);
        var carries = Ampacity.Amperes(area, Installation.E);
        var protection = Amperes(fed.Circuit.Protection);
        var finding = carries is { } amperes
            ? Finding.AtMost(
                PowerRules.Conductor,
                fed.Name,
                $"`{fed.Name}` is protected at {protection}, its smallest conductor has {area.ToString(2)} mm2",
                protection,
                new(amperes, "A"),
                fed.Circuit.Name.Span
            )
            : Finding.That(
                PowerRules.Conductor,
                fed.Name,
                $"the tables say nothing of what a conductor of {area.ToString(2)} mm2 behind `{fed.Name}` may carry",
                isSo: false,
                fed.Circuit.Name.Span
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

    private static Finding Trip(FedCircuit fed)
    {
        var feed = fed.Feed;
        var amperes = Conductors.ShortCircuitAmperes(feed.Volts, feed.Source + Contacts, feed.Whole, feed.OhmPerKm);
        return Finding.AtLeast(
            PowerRules.Trip,
            fed.Name,
            $"a short circuit at the far end of `{fed.Name}` draws {amperes.ToString(1)} A over {feed.Whole.ToString(1)} m",
            new(amperes, "A"),
            Amperes(fed.Circuit.TripsAt),
            fed.Circuit.Name.Span
        ) with
        {
            Fix = "take thicker conductors, or a protective device that opens at less, such as an electronic one",
        };
    }

    /// <summary>Connections only: what a stop has to achieve is for competent persons.</summary>
    private static Finding Stop(FieldCircuit circuit)
    {
        var name = circuit.Name.Value;
        var by = circuit.DroppedBy.IsEmpty
            ? null
            : string.Join(" and ", circuit.DroppedBy.Select(stop => $"`{stop.Value}`"));
        var (isSo, statement) = (by, circuit) switch
        {
            (not null, { StaysAlive: true }) => (false, $"`{name}` has to stay alive and is dropped by {by}"),
            (not null, _) => (true, $"`{name}` is dropped by {by}"),
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
