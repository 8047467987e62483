using System.Collections.Immutable;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Loads;

/// <summary>What cables add up to, in micrometres: the stock length where the cable is bought, else the length
/// needed.</summary>
internal static class CableLoads
{
    public static IEnumerable<WeightedTerm> Of(Machine machine) =>
        FitConditions
            .Sound(machine)
            .Where(instance => instance.Fit.Wiring != Wiring.Inside)
            .SelectMany(instance => ToDevice(machine, instance))
            .Concat(Networks(machine))
            .Concat(Trunk(machine));

    private static IEnumerable<WeightedTerm> Networks(Machine machine) =>
        FitConditions
            .Sound(machine)
            .Where(OptionLoads.HasNetworkCable)
            .Select(instance => new WeightedTerm(
                FitConditions.Of(instance),
                Length(machine, machine.Control.Trunk.Network, machine.Control.Box.Station, instance.Station)
            ));

    /// <summary>Power and network enter the box where the trunk starts, if any master is mounted.</summary>
    public static IEnumerable<WeightedTerm> TrunkEntries(Machine machine)
    {
        ImmutableArray<Condition> mounted =
        [
            .. machine.Control.Masters.Select(master => FitConditions.Of(machine, master)),
        ];
        return [new(new AnyOf(mounted, default), 2)];
    }

    private static IEnumerable<WeightedTerm> ToDevice(Machine machine, FitInstance instance)
    {
        if (machine.Plan.HomeOf(instance.Key) is not { } home)
        {
            return [];
        }

        var fitted = FitConditions.Of(instance);
        if (home.Master is not { } carrier)
        {
            return [new(fitted, Length(machine, instance, home, machine.Control.Box.Station))];
        }

        return machine.Control.Find(carrier) is { } master
            ? [new(fitted, Length(machine, instance, home, master.Station))]
            : ToHub(machine, instance, home, fitted);
    }

    /// <summary>From the first hub of that name that is mounted.</summary>
    private static IEnumerable<WeightedTerm> ToHub(Machine machine, FitInstance instance, Home home, Condition fitted)
    {
        ImmutableArray<FitInstance> hubs =
        [
            .. FitConditions.Sound(machine).Where(hub => FittedMachine.AsCarrier(hub) == home.Master),
        ];
        return hubs.Select(
            (hub, i) =>
                new WeightedTerm(
                    new AllOf(
                        [
                            fitted,
                            FitConditions.Of(hub),
                            .. hubs[..i].Select(Condition (before) => new NoneOf([FitConditions.Of(before)], default)),
                        ],
                        default
                    ),
                    Length(machine, instance, home, hub.Station)
                )
        );
    }

    private static IEnumerable<WeightedTerm> Trunk(Machine machine) =>
        TrunkStep
            .Of(machine)
            .Select(step => new WeightedTerm(
                step.When,
                Length(machine, machine.Control.Trunk.Power, step.From, step.Next.Station)
                    + Length(machine, machine.Control.Trunk.Network, step.From, step.Next.Station)
            ));

    private static long Length(Machine machine, FitInstance instance, Home home, Station from) =>
        Length(
            machine,
            Cabling.CordsetFor(machine, instance.Device, Cabling.ClassOf(machine, home)),
            from,
            instance.Station
        );

    private static long Length(Machine machine, Device? cordset, Station from, Station to)
    {
        var needed = Cabling.Needed(machine, from, to);
        return Cabling.StockFor(cordset, needed) is { } stock ? Micrometres.From(stock).Value : needed?.Value ?? 0;
    }
}
