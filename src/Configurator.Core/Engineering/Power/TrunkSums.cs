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
    private const long Nanovolts = 1_000_000_000;

    /// <summary>Of a thousand volts or more: beyond, all is as bad, and sums stay in range.</summary>
    private const long Most = 1_000_000_000_000;

    /// <summary>With more, only the trunk with all extensions is looked at.</summary>
    private const int ExtensionsMax = 5;

    public static IEnumerable<WeightedSum> Of(Machine machine) =>
        machine.Control.Power is { } power
            ? Mountings(machine).SelectMany(mounting => Of(machine, power, mounting))
            : [];

    private static IEnumerable<WeightedSum> Of(Machine machine, FieldPower power, Mounting mounting)
    {
        var feed = TrunkFeed.Of(power, machine, mounting.Masters);
        foreach (var use in power.Circuits.Select(circuit => circuit.Feeds).Distinct())
        {
            ImmutableArray<TrunkDraw> draws = [.. Draws(machine, feed.Masters, use)];
            for (var at = 0; at < feed.Masters.Length; at++)
            {
                ImmutableArray<WeightedTerm> drop = [.. Drops(feed, draws, at, Nanovolts)];
                yield return Within(mounting, drop);
                foreach (var far in Furthest(machine, power, feed.Masters[at], use))
                {
                    yield return Within(mounting with { And = FitConditions.Of(far) }, drop);
                }
            }
        }
    }

    /// <summary>All that may be drawn on a trunk with these masters: by themselves, and by what is at home
    /// there.</summary>
    public static IEnumerable<TrunkDraw> Draws(Machine machine, ImmutableArray<Master> masters, CircuitUse use) =>
        masters
            .SelectMany(
                (master, tap) =>
                    Behind(machine, master)
                        .Select(one => new TrunkDraw(FitConditions.Of(one), tap, TapLoads.AmperesMax(one, use)))
                        .Prepend(new(FitConditions.Of(machine, master), tap, TapLoads.AmperesMax(master, use)))
            )
            .Where(draw => draw.Amperes > 0);

    /// <summary>What each of them adds to the drop at one master, in parts of a volt, rounded up.</summary>
    /// <param name="at">Which of the masters.</param>
    public static IEnumerable<WeightedTerm> Drops(
        TrunkFeed feed,
        IEnumerable<TrunkDraw> draws,
        int at,
        long partsOfVolt
    )
    {
        var loops = feed.LoopOhm;
        return draws.Select(draw => new WeightedTerm(
            draw.When,
            (long)BigInteger.Min((draw.Amperes * loops[Math.Min(draw.Tap, at)] * partsOfVolt).Ceiling(), Most)
        ));
    }

    /// <summary>Devices that may be the one with the least voltage behind a master: of those with a cable from the
    /// master itself, none that loses less than one that is always mounted.</summary>
    private static IEnumerable<FitInstance> Furthest(Machine machine, FieldPower power, Master master, CircuitUse use)
    {
        ImmutableArray<FitInstance> tap = [.. Behind(machine, master)];
        var near = tap.Where(instance =>
                TapLoads.AmperesMax(instance, use) > 0 && machine.Plan.HomeOf(instance.Key)?.Master == master.Name.Value
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

    /// <summary>So much more for the mounting that no other configuration comes near.</summary>
    private static WeightedSum Within(Mounting mounting, ImmutableArray<WeightedTerm> terms) =>
        new(0, terms.Add(new(mounting.Condition, terms.Sum(term => term.Weight) + 1)));

    private static IEnumerable<FitInstance> Behind(Machine machine, Master master) =>
        FitConditions
            .At(machine, master.Name.Value)
            .SelectMany(instance => FitConditions.Behind(machine, instance).Prepend(instance));

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

    /// <summary>Masters on the trunk, and when it is these.</summary>
    private sealed record Mounting(ImmutableArray<Master> Masters, ImmutableArray<Condition> When)
    {
        /// <summary>Only where this device is mounted too.</summary>
        public Condition? And { get; init; }

        public Condition Condition => new AllOf(And is { } and ? When.Add(and) : When, default);
    }
}

/// <summary>Amperes that flow on a trunk where a condition holds, from the box to one of its masters.</summary>
/// <param name="Tap">Which of the masters.</param>
internal sealed record TrunkDraw(Condition When, int Tap, Rational Amperes);
