using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>What a crew has to know of a machine built to a configuration.</summary>
public static class SanitationFacts
{
    /// <summary>Of the machine, of options ordered, and of devices fitted, each once.</summary>
    public static IEnumerable<WashCare> Cares(FittedMachine fitted) =>
        fitted
            .Configuration.Quantities.Keys.Select(id => fitted.Machine.Options[id].Care)
            .Concat(
                fitted
                    .Fitted.Select(instance => instance.Device)
                    .Concat(fitted.Masters.Select(master => master.Device))
                    .DistinctBy(device => device.Id.Value)
                    .OrderBy(device => device.Id.Value)
                    .Select(device => device.Care)
            )
            .Prepend(fitted.Machine.Sanitation?.Care ?? WashCare.None);

    public static IEnumerable<Hazard> Hazards(FittedMachine fitted) =>
        Cares(fitted).SelectMany(care => care.Hazards).Distinct().Order();

    /// <summary>Of one energy, what is kept on is said apart from what is locked.</summary>
    public static ImmutableArray<EnergyCare> Energies(FittedMachine fitted) =>
        [
            .. Cares(fitted)
                .SelectMany(care => care.Energies)
                .DistinctBy(care => (care.Energy, care.State, care.Why.ToString()))
                .OrderBy(care => care.Energy)
                .ThenBy(care => care.State),
        ];

    /// <summary>Gases and media that stay locked when everybody takes off their own lock.</summary>
    public static IEnumerable<Energy> LockedLonger(FittedMachine fitted) =>
        Energies(fitted)
            .Where(care => care is { State: EnergyState.Locked, Energy: Energy.Nitrogen or Energy.Peroxide })
            .Select(care => care.Energy)
            .Distinct();

    public static bool Has(FittedMachine fitted, Hazard hazard) => Hazards(fitted).Contains(hazard);

    /// <summary>Whether something is rinsed with water of 49 °C or hotter.</summary>
    public static bool RinsesHot(FittedMachine fitted) =>
        fitted.Machine.Sanitation is not null
        && fitted.Machine.Areas.Any(area => WashOf(fitted, area) is WashMethod.Foam or WashMethod.HotHighPressure);

    /// <summary>Agents that the machine is laid out for, as built.</summary>
    public static IEnumerable<Agent> Agents(FittedMachine fitted) =>
        fitted.Machine.Sanitation?.Agents.Where(agent => agent.When?.Holds(fitted.Configuration.QuantityOf) ?? true)
        ?? [];

    public static WashMethod WashOf(FittedMachine fitted, Area area) =>
        Washing.MethodIn(fitted.Machine, area, fitted.Configuration.QuantityOf);
}
