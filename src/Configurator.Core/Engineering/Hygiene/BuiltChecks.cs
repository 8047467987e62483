using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>How the machine is built to be rinsed all round: stand-off, fall, floor clearance, caps, cables.</summary>
internal static class BuiltChecks
{
    private const int StandOffMillimetresMin = 25;
    private const int FallDegreesMin = 3;
    private const int FloorMillimetresMin = 300;

    public static IEnumerable<Finding> Compute(FittedMachine fitted)
    {
        var sanitation = fitted.Machine.Sanitation!;
        var (floor, span) = (sanitation.Floor, sanitation.Span);
        yield return AtLeast("floor", "clear height below the machine", floor, FloorMillimetresMin, span);
        yield return AtLeast("slope", "fall of level surfaces", sanitation.Slope, FallDegreesMin, sanitation.Span);
        foreach (var area in fitted.Machine.Areas.Where(area => IsWet(fitted, area)))
        {
            var build = sanitation.BuildOf(area.Id.Value);
            yield return AtLeast(
                $"stand-off/{area.Id.Value}",
                $"stand-off of cables and boxes in area `{area.Id.Value}`",
                build?.StandOff,
                StandOffMillimetresMin,
                build?.Span ?? sanitation.Span
            );
        }

        foreach (var master in fitted.Masters)
        {
            yield return Caps(fitted, sanitation, master.Name.Value, master.Ports, master.Station.Area);
        }

        foreach (var hub in fitted.Fitted)
        {
            if (FittedMachine.AsCarrier(hub) is { } carrier)
            {
                yield return Caps(fitted, sanitation, carrier, hub.Device.Ports!, hub.Station.Area);
            }
        }

        foreach (var build in sanitation.Areas.Where(build => build.CablesMax is not null))
        {
            yield return Cables(fitted, build);
        }
    }

    /// <summary>Stock cables and others that end in an area; a cable with both ends there counts once.</summary>
    public static int CablesIn(FittedMachine fitted, AreaId area) =>
        fitted.Cabled.Count(pair => CableSums.EndsIn(fitted.Machine, pair.Instance, pair.Home, area))
        + fitted.Cabled.Count(pair => CableSums.HasNetworkIn(fitted.Machine, pair.Instance, area))
        + fitted.Masters.Count(master => master.Station.Area.Id.Value == area) * CableSums.TrunkCablesAMaster;

    private static bool IsWet(FittedMachine fitted, Area area) =>
        Washing.MethodIn(fitted.Machine, area, fitted.Configuration.QuantityOf) != WashMethod.Dry;

    private static Finding AtLeast(string about, string what, Quantity? stated, int least, SourceSpan span)
    {
        var unit = stated?.Unit.Dimension == Dimension.Angle || about == "slope" ? "deg" : "mm";
        return stated is null
            ? new(HygieneRules.Built, about, $"the {what} is not stated", Verdict.Unstated, span)
            {
                Limit = new(least, unit),
                Fix = "state it in `sanitation`",
            }
            : Finding.AtLeast(
                HygieneRules.Built,
                about,
                $"the {what} is {stated}",
                new(stated.InBase, unit),
                new(least, unit),
                span
            ) with
            {
                Fix = FormattableString.Invariant($"build it with at least {least} {unit}"),
            };
    }

    private static Finding Caps(
        FittedMachine fitted,
        Sanitation sanitation,
        MasterName carrier,
        PortSet ports,
        Area area
    )
    {
        var used = fitted.PluggedInto(carrier).Select(pair => pair.Home.Port).Distinct().Count();
        var open = ports.Numbers.Count() - used;
        var isDry = !IsWet(fitted, area);
        return Finding.That(
            HygieneRules.Caps,
            carrier.Value,
            FormattableString.Invariant($"{open} sockets of `{carrier}` in area `{area.Id.Value}` have no cable")
                + (
                    open == 0 ? ""
                    : sanitation.Cap is { } cap ? $" and get `{cap.Id.Value}`"
                    : isDry ? ", and the area is cleaned dry"
                    : ", and the machine names no cap"
                ),
            open == 0 || isDry || sanitation.Cap is not null,
            sanitation.Span
        ) with
        {
            Fix = "name a `cap` in `sanitation`",
        };
    }

    private static Finding Cables(FittedMachine fitted, AreaBuild build) =>
        Finding.AtMost(
            HygieneRules.Cables,
            build.Area.Value,
            $"cables that end in area `{build.Area}`",
            Measure.Count(CablesIn(fitted, build.Area)),
            Measure.Count(build.CablesMax!.Value),
            build.Span
        ) with
        {
            Fix = "make room for more cables in the area, or move homes of the port plan out of it",
        };
}
