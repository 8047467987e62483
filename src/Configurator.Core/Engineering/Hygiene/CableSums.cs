using Configurator.Core.Engineering.Loads;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>How many cables end in an area, as sums over fits: the worst over all configurations is theirs.</summary>
internal static class CableSums
{
    /// <summary>Power and network.</summary>
    public const int TrunkCablesAMaster = 2;

    /// <summary>One sum for each area that has room for so many only.</summary>
    public static IEnumerable<WeightedSum> Of(Machine machine) =>
        (machine.Sanitation?.Areas ?? [])
            .Where(build => build.CablesMax is not null)
            .Select(build => new WeightedSum(0, [.. Terms(machine, build.Area)]));

    /// <summary>Does the device or the port that its cable leads to lie there?</summary>
    public static bool EndsIn(Machine machine, FitInstance instance, Home? home, AreaId area) =>
        instance.Station.Area.Id.Value == area
        || (
            home is { } at
            && (at.Master is { } carrier ? PlanSpot.StationOf(machine, carrier) : machine.Control.Box.Station)
                is { } from
            && from.Area.Id.Value == area
        );

    /// <summary>Does a network cable of its own end there, at the device or at the box?</summary>
    public static bool HasNetworkIn(Machine machine, FitInstance instance, AreaId area) =>
        OptionLoads.HasNetworkCable(instance) && EndsIn(machine, instance, Home.Direct, area);

    private static IEnumerable<WeightedTerm> Networks(Machine machine, AreaId area) =>
        FitConditions
            .Sound(machine)
            .Where(instance => HasNetworkIn(machine, instance, area))
            .Select(instance => new WeightedTerm(FitConditions.Of(instance), 1));

    private static IEnumerable<WeightedTerm> Terms(Machine machine, AreaId area) =>
        FitConditions
            .Sound(machine)
            .Where(instance =>
                instance.Fit.Wiring != Wiring.Inside
                && EndsIn(machine, instance, machine.Plan.HomeOf(instance.Key), area)
            )
            .Select(instance => new WeightedTerm(FitConditions.Of(instance), 1))
            .Concat(Networks(machine, area))
            .Concat(
                machine
                    .Control.Masters.Where(master => master.Station.Area.Id.Value == area)
                    .Select(master => new WeightedTerm(FitConditions.Of(machine, master), TrunkCablesAMaster))
            );
}
