using System.Collections.Immutable;
using System.Numerics;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>
/// Volts lost on the trunk as sums over fits. With homes fixed and the mounted extensions known, the drop at a master
/// is a plain sum: each current times the resistance that it shares with that master. So there is a sum for each set of
/// extensions that can be mounted, and the heaviest of them all is the worst case, exact for constant currents.
/// </summary>
/// <remarks>Source: CON-03. Constant power is taken at the least voltage allowed, which is on the safe side.</remarks>
internal static class TrunkSums
{
    /// <summary>A drop of a thousand volts, or a million amperes or ohms: beyond, all is as bad, and sums stay in
    /// range.</summary>
    public const long Most = 1_000_000_000_000;

    /// <summary>With more, only the trunk with all extensions is looked at.</summary>
    private const int ExtensionsMax = 5;

    public static IEnumerable<WeightedSum> Of(Machine machine) =>
        machine.Control.Power is { } power
            ? Mountings(machine).SelectMany(mounting => Of(machine, power, mounting)).Concat(Supplies(machine, power))
            : [];

    private static IEnumerable<WeightedSum> Of(Machine machine, FieldPower power, Mounting mounting)
    {
        var feed = TrunkFeed.Of(power, machine, mounting.Masters);
        ImmutableArray<long> loops = [.. feed.LoopOhm.Select(Micro)];
        foreach (var use in power.Circuits.Select(circuit => circuit.Feeds).Distinct())
        {
            ImmutableArray<ImmutableArray<FitInstance>> taps =
            [
                .. mounting.Masters.Select(master => Behind(machine, master.Name.Value)),
            ];
            for (var at = 0; at < taps.Length; at++)
            {
                var drop = DropAt(at, loops, taps, use, mounting);
                yield return Within(mounting, drop);
                foreach (var far in Furthest(machine, power, mounting.Masters[at], taps[at], use))
                {
                    yield return Within(mounting with { And = FitConditions.Of(far) }, drop);
                }
            }
        }
    }

    /// <summary>Devices that may be the one with the least voltage behind a master: of those with a cable from the
    /// master itself, none that loses less than one that is always mounted.</summary>
    private static IEnumerable<FitInstance> Furthest(
        Machine machine,
        FieldPower power,
        Master master,
        ImmutableArray<FitInstance> tap,
        CircuitUse use
    )
    {
        var near = tap.Where(instance =>
                Current(instance, use) > 0 && machine.Plan.HomeOf(instance.Key)?.Master == master.Name.Value
            )
            .Select(instance => (Instance: instance, Drop: DeviceVolts.OwnDrop(machine, power, master, instance, use)))
            .ToList();
        var least = near.Where(pair => FitConditions.Of(pair.Instance) is AllOf { Of.IsEmpty: true })
            .Select(pair => pair.Drop)
            .DefaultIfEmpty(0)
            .Max();
        return near.Where(pair => pair.Drop > least)
            .GroupBy(pair => Logic.ConditionKey.Of(FitConditions.Of(pair.Instance)), StringComparer.Ordinal)
            .Select(group => group.MaxBy(pair => pair.Drop).Instance)
            .Concat(tap.Where(guest => machine.Plan.HomeOf(guest.Key)?.Master != master.Name.Value));
    }

    /// <summary>In nanovolts.</summary>
    private static WeightedSum DropAt(
        int at,
        ImmutableArray<long> loops,
        ImmutableArray<ImmutableArray<FitInstance>> taps,
        CircuitUse use,
        Mounting mounting
    ) =>
        new(
            mounting.Masters.Select((master, j) => Drop(Own(master, use), loops[Math.Min(at, j)])).Sum(),
            [
                .. taps.SelectMany(
                        (tap, j) =>
                            tap.Select(instance => new WeightedTerm(
                                FitConditions.Of(instance),
                                Drop(Current(instance, use), loops[Math.Min(at, j)])
                            ))
                    )
                    .Where(term => term.Weight != 0),
            ]
        );

    /// <summary>So much more for the mounting that no other configuration comes near.</summary>
    private static WeightedSum Within(Mounting mounting, WeightedSum sum)
    {
        var more = sum.Terms.Sum(term => term.Weight) + 1;
        return sum with { Terms = [.. sum.Terms, new(mounting.Condition, more)] };
    }

    /// <summary>What each supply gives: for ever, and at start-up.</summary>
    private static IEnumerable<WeightedSum> Supplies(Machine machine, FieldPower power)
    {
        foreach (var use in power.Circuits.Select(circuit => circuit.Feeds).Distinct())
        {
            var fits = FitConditions
                .Sound(machine)
                .Where(instance => use == CircuitUse.SensorSupply || instance.Fit.Wiring == Wiring.Port)
                .ToList();
            yield return Sum(
                machine,
                fits,
                use,
                instance => TapLoads.Current(instance, use),
                master => master.Device.Current
            );
            yield return Sum(
                machine,
                fits,
                use,
                instance => SupplyChecks.StartUp(instance, use),
                master => master.Device.StartUpCurrent ?? master.Device.Current
            );
        }
    }

    private static WeightedSum Sum(
        Machine machine,
        IEnumerable<FitInstance> fits,
        CircuitUse use,
        Func<FitInstance, Microamperes> current,
        Func<Master, Quantity?> own
    ) =>
        new(
            0,
            [
                .. fits.Select(instance => new WeightedTerm(FitConditions.Of(instance), current(instance).Value)),
                .. use == CircuitUse.SensorSupply
                    ? machine.Control.Masters.Select(master => new WeightedTerm(
                        FitConditions.Of(machine, master),
                        own(master) is { } stated ? Microamperes.From(stated).Value : 0
                    ))
                    : [],
            ]
        );

    public static ImmutableArray<FitInstance> Behind(Machine machine, MasterName master) =>
        [
            .. FitConditions
                .At(machine, master)
                .SelectMany(instance => FitConditions.Behind(machine, instance).Prepend(instance)),
        ];

    private static IEnumerable<Mounting> Mountings(Machine machine)
    {
        ImmutableArray<Master> extensions = [.. machine.Control.Masters.Where(master => master.IsExtension)];
        var all = (1 << extensions.Length) - 1;
        foreach (var set in extensions.Length > ExtensionsMax ? [all] : Enumerable.Range(0, all + 1))
        {
            yield return new(
                [
                    .. machine.Control.Masters.Where(master =>
                        !master.IsExtension || (set >> extensions.IndexOf(master) & 1) != 0
                    ),
                ],
                [
                    .. extensions.Select(
                        (master, i) =>
                            (set >> i & 1) != 0
                                ? FitConditions.Of(machine, master)
                                : new NoneOf([FitConditions.Of(machine, master)], default)
                    ),
                ]
            );
        }
    }

    /// <summary>Microamperes; constant power at the least voltage.</summary>
    private static long Current(FitInstance instance, CircuitUse use) =>
        Micro(TapLoads.Of(instance, use).At(PowerRules.DeviceMin(use)));

    private static long Own(Master master, CircuitUse use) =>
        Micro(TapLoads.Own(master, use).At(PowerRules.MasterMin(use)));

    private static long Drop(long microamperes, long microohm) =>
        (long)BigInteger.Min((BigInteger)microamperes * microohm / 1000, Most);

    private static long Micro(Rational value) => (long)BigInteger.Min((value * 1_000_000).Ceiling(), Most);

    /// <summary>Masters on the trunk, and when it is these.</summary>
    private sealed record Mounting(ImmutableArray<Master> Masters, ImmutableArray<Condition> When)
    {
        /// <summary>Only where this device is mounted too.</summary>
        public Condition? And { get; init; }

        public Condition Condition => new AllOf(And is { } and ? When.Add(and) : When, default);
    }
}
