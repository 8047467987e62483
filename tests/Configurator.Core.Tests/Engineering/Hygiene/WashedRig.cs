using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Tests.Definitions;

namespace Configurator.Core.Tests.Engineering.Hygiene;

/// <summary>A small random machine that is washed: areas, markings, materials, agents and what changes the washing are
/// drawn.</summary>
internal static class WashedRig
{
    private static readonly ImmutableArray<string> Markings =
        ["", "IP67", "IP66", "IP66/IP67", "IP66/IP67/IP69K", "IP66/IP67/IP69", "IP66K/IP67", "IP65"];

    private static readonly ImmutableArray<string> Materials =
        ["316L stainless", "FKM", "POM", "NBR", "polycarbonate", "PTFE", "EPDM", "titanium"];

    public static Machine Of(Machine machine, int options, Dice dice)
    {
        ImmutableArray<Area> areas =
        [
            new(new(new("one"), default), Text.Of("One"), AreaClass.Food, WashMethod.Rinse),
            new(new(new("two"), default), Text.Of("Two"), AreaClass.Splash, WashMethod.Foam),
        ];
        var stations = machine.Stations.ToDictionary(
            station => station.Id.Value, station => station with { Area = areas[dice.Below(2)] });
        return machine with
        {
            Areas = areas,
            Stations = [.. machine.Stations.Select(station => stations[station.Id.Value])],
            Instances = [.. machine.Instances.Select(instance => instance with
            {
                Device = Drawn(instance.Device, dice),
                Station = stations[instance.Station.Id.Value],
            })],
            Control = machine.Control with
            {
                Box = machine.Control.Box with { Station = stations[machine.Control.Box.Station.Id.Value] },
                Masters = [.. machine.Control.Masters.Select(master => master with
                {
                    Device = Drawn(master.Device, dice),
                    Station = stations[master.Station.Id.Value],
                })],
            },
            Sanitation = SanitationOf(areas, options, dice),
        };
    }

    private static Device Drawn(Device device, Dice dice) => device with
    {
        Ingress = dice.Pick(Markings) is { Length: > 0 } marking ? [.. marking.Split('/')] : [],
        Materials = dice.Chance(10) ? [] : [dice.Pick(Materials), "316L stainless"],
    };

    private static Sanitation SanitationOf(ImmutableArray<Area> areas, int options, Dice dice) => new(default(Configurator.Core.Sources.SourceSpan))
    {
        BoxIngress = ["IP66", "IP67"],
        BoxMaterials = ["316L stainless"],
        Changes = [.. Enumerable.Range(0, 2).Select(_ => new WashChange(
            Drawn(options, dice), dice.Pick(Enum.GetValues<WashMethod>()), [areas[dice.Below(2)].Id.Value]))],
        Agents = [.. Enumerable.Range(0, 5).Select(i => new Agent(
            new($"agent-{i}", default),
            Text.Of("Agent"),
            dice.Pick(Enum.GetValues<AgentKind>()),
            dice.Chance(50) ? CleaningStep.FoamAndScrub : CleaningStep.Sanitize,
            null,
            new Quantity(20, UnitTable.Find("degC")!, 20, "20 degC"),
            null,
            [areas[dice.Below(2)].Id.Value])
        {
            When = dice.Chance(60) ? Drawn(options, dice) : null,
        })],
        Areas = [.. areas.Select(area => new AreaBuild(area.Id.Value, null, 4, default))],
    };

    private static Condition Drawn(int options, Dice dice)
    {
        var option = new OptionCount(new($"o{dice.Below(options)}"), 1, null, default);
        return dice.Chance(30) ? new NoneOf([option], default) : option;
    }
}
