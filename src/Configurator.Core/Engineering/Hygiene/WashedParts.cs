using System.Collections.Immutable;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>Everything on a machine that a wash can reach: devices outside the box, masters, the stock cables at
/// both of their ends, the jackets of cables cut to length, caps and the box.</summary>
internal static class WashedParts
{
    /// <summary>All that any order can mount, with the homes of a plan.</summary>
    public static ImmutableArray<WashedPart> Of(Machine machine, PortPlan pins) =>
        [
            .. Fits(machine)
                .Concat(Leads(machine))
                .Concat(Masters(machine))
                .Concat(Cables(machine, pins))
                .Concat(Caps(machine))
                .Concat(Box(machine))
                .Where(part => part.Device?.IsSoundForWashing ?? true),
        ];

    /// <summary>Those on a machine built to a configuration.</summary>
    public static ImmutableArray<WashedPart> On(FittedMachine fitted) =>
        [.. Of(fitted.Machine, fitted.Pins).Where(part => part.When.Holds(fitted.Configuration.QuantityOf))];

    /// <summary>Where cables of stock end, one entry an end.</summary>
    public static IEnumerable<(Device Cable, Area Area, Condition When)> Ends(Machine machine, PortPlan pins) =>
        FitEnds(machine, pins).Concat(TrunkEnds(machine)).Concat(NetworkEnds(machine));

    private static IEnumerable<(Device, Area, Condition)> NetworkEnds(Machine machine) =>
        FitConditions
            .Sound(machine)
            .Where(OptionLoads.HasNetworkCable)
            .SelectMany(instance =>
                new[] { instance.Station.Area, BoxStation(machine).Area }.Select(area =>
                    (machine.Control.Trunk.Network, area, FitConditions.Of(instance))
                )
            );

    private static IEnumerable<WashedPart> Fits(Machine machine) =>
        FitConditions
            .Sound(machine)
            .Where(instance => instance.Fit.Wiring != Wiring.Inside)
            .Select(instance =>
                WashedPart.Of(
                    instance.Key.ToString(),
                    instance.Device,
                    instance.Station.Area,
                    FitConditions.Of(instance),
                    instance.Fit.Name.Span
                ) with
                {
                    HasFinish = true,
                }
            );

    private static IEnumerable<WashedPart> Leads(Machine machine) =>
        Fits(machine)
            .Where(part => part.Device!.Leads is not null)
            .Select(part =>
                part with
                {
                    About = $"{part.About}/lead",
                    Materials = [part.Device!.Leads!.Jacket],
                    HasFinish = false,
                    HasMarking = false,
                }
            );

    private static IEnumerable<WashedPart> Masters(Machine machine) =>
        machine.Control.Masters.Select(master =>
            WashedPart.Of(
                master.Name.Value.Value,
                master.Device,
                master.Station.Area,
                FitConditions.Of(machine, master),
                master.Name.Span
            ) with
            {
                HasFinish = true,
            }
        );

    /// <summary>Equal cables in one area fare alike: one part for all of them.</summary>
    private static IEnumerable<WashedPart> Cables(Machine machine, PortPlan pins) =>
        Ends(machine, pins)
            .GroupBy(end => (Cable: end.Cable.Id.Value, Area: end.Area.Id.Value))
            .OrderBy(group => group.Key.Cable)
            .ThenBy(group => group.Key.Area)
            .Select(group =>
                WashedPart.Of(
                    $"{group.Key.Cable}@{group.Key.Area}",
                    group.First().Cable,
                    group.First().Area,
                    AnyOf(group.Select(end => end.When)),
                    group.First().Cable.Id.Span
                )
            );

    private static IEnumerable<(Device, Area, Condition)> FitEnds(Machine machine, PortPlan pins)
    {
        foreach (var instance in FitConditions.Sound(machine).Where(instance => instance.Fit.Wiring != Wiring.Inside))
        {
            if (
                pins.HomeOf(instance.Key) is { } home
                && Cabling.CordsetFor(machine, instance.Device, Cabling.ClassOf(machine, home)) is { } cable
            )
            {
                var when = FitConditions.Of(instance);
                var from = home.Master is { } carrier ? PlanSpot.StationOf(machine, carrier) : BoxStation(machine);
                yield return (cable, instance.Station.Area, when);
                yield return (cable, (from ?? instance.Station).Area, when);
            }
        }
    }

    /// <summary>A cable to each master, and one on from every master but the last.</summary>
    private static IEnumerable<(Device, Area, Condition)> TrunkEnds(Machine machine)
    {
        var (power, network) = machine.Control.Trunk;
        foreach (var cable in new[] { power, network })
        {
            yield return (cable, BoxStation(machine).Area, FitConditions.Always);
            foreach (var master in machine.Control.Masters)
            {
                yield return (cable, master.Station.Area, FitConditions.Of(machine, master));
            }
        }
    }

    private static IEnumerable<WashedPart> Caps(Machine machine) =>
        machine.Sanitation?.Cap is not { } cap
            ? []
            : machine
                .Control.Masters.GroupBy(master => master.Station.Area.Id.Value)
                .OrderBy(group => group.Key)
                .Select(group =>
                    WashedPart.Of(
                        $"{cap.Id.Value}@{group.Key}",
                        cap,
                        group.First().Station.Area,
                        AnyOf(group.Select(master => FitConditions.Of(machine, master))),
                        machine.Sanitation.Span
                    )
                );

    private static IEnumerable<WashedPart> Box(Machine machine) =>
        machine.Sanitation is { } sanitation
            ?
            [
                new(
                    BoxStation(machine).Id.Value.Value,
                    null,
                    sanitation.BoxIngress,
                    sanitation.BoxMaterials,
                    BoxStation(machine).Area,
                    FitConditions.Always,
                    sanitation.Span
                ),
            ]
            : [];

    private static Station BoxStation(Machine machine) => machine.Control.Box.Station;

    private static Condition AnyOf(IEnumerable<Condition> conditions)
    {
        ImmutableArray<Condition> each = [.. conditions.DistinctBy(Logic.ConditionKey.Of, StringComparer.Ordinal)];
        return each is [var only] ? only
            : each.Any(one => one is AllOf { Of.IsEmpty: true }) ? FitConditions.Always
            : new AnyOf(each, default);
    }
}
