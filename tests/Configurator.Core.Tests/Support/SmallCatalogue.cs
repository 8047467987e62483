using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Tests.Support;

/// <summary>A machine with one of everything and nothing wrong: what <see cref="Check"/> lays marked text into.</summary>
internal static class SmallCatalogue
{
    public const string Machine = "machines/cup-one/machine.yaml";
    public const string PortPlan = "machines/cup-one/port-plan.yaml";
    public const string Plain = "machines/cup-one/configurations/plain.yaml";
    public const string Water = "machines/cup-one/recipes/water.yaml";
    public const string Delivered = "machines/cup-one/as-built/c1-0001.yaml";

    public static readonly MachineId MachineId = new("cup-one");

    /// <summary>Ways along the route: box to filler 3 m, filler to outfeed 5 m (3 m along, 4 m across).</summary>
    private const string MachineText = """
        machine: cup-one
        title: Cup filler with one lane
        summary: The smallest machine that has one of everything
        document: C1
        revision: A
        areas:
          - {area: wet, title: Filling zone, class: food, wash: foam}
        route:
          nodes:
            - {node: box-top, x: 0 mm, y: 0 mm, z: 2 m}
            - {node: middle, x: 3 m, y: 0 mm, z: 2 m}
            - {node: far-end, x: 6 m, y: 4 m, z: 2 m}
          edges:
            - {from: box-top, to: middle}
            - {from: middle, to: far-end}
        stations:
          - {station: cabinet, title: Control box, area: wet, node: box-top, drop: 500 mm}
          - {station: filler, title: Filler, area: wet, node: middle, drop: 800 mm}
          - {station: outfeed, title: Outfeed, area: wet, node: far-end, drop: 700 mm}
        control:
          box: {station: cabinet, entries: 6, direct-inputs: 2}
          spare-ports: 1
          slack: 200 mm
          cordsets: {io-link: cord-4, class-b: cord-5, direct: cord-open}
          trunk: {power: trunk-power, network: trunk-network}
          masters:
            - {master: front, device: master-4, station: filler}
            - {master: extra, device: master-4, station: outfeed, extension: true}
        choices:
          - choice: lid
            title: Lid
            take: exactly-one
            of: [film, precut]
            because: Every cup gets one lid
        rules:
          - rule: count-what-is-checked
            when: counter
            need: cup-check
            because: Only a cup that is seen can be counted
        standard:
          - {fit: guard, device: guard-switch, stations: [filler], purpose: Stops the filler, wiring: direct}

        """;

    private const string PortPlanText = """
        port-plan: cup-one
        homes:
          counter/count-eye/1: count-hub:1
          counter/count-hub/1: front:2
          cup-check/cup-eye/1: front:1
          heads/dose-valve/1: front:3
          heads/dose-valve/2: extra:3
          standard/guard/1: direct

        """;

    private const string PlainText = """
        configuration: plain
        machine: cup-one
        title: Film and a look at every cup
        document: C1-101
        options: [film, cup-check]
        recipes: [water]
        revision: A

        """;

    private const string WaterText = """
        recipe: water
        machine: cup-one
        title: Water in clear cups
        settings:
          cup-eye: {threshold: 42 percent}

        """;

    private const string DeliveredText = """
        as-built: c1-0001
        machine: cup-one
        title: The first one
        delivered: 2026-03-14
        options: [film, cup-check]
        homes:
          cup-check/cup-eye/1: front:1
          standard/guard/1: direct

        """;

    public static ImmutableSortedDictionary<string, string> Files { get; } =
        SmallDevices.All.Concat(SmallOptions.All).Append(MachineText).Append(PortPlanText).Append(PlainText).Append(WaterText).Append(DeliveredText)
            .ToImmutableSortedDictionary(PlaceOf, text => text, StringComparer.Ordinal);

    /// <summary>Another machine with the same layout on which nothing can be ordered, and without standard fits.</summary>
    public static string SecondMachine { get; } =
        MachineText[..MachineText.IndexOf("choices:", StringComparison.Ordinal)].Replace("cup-one", "cup-two", StringComparison.Ordinal);

    public static string Device(string id) => $"options/devices/{id}.yaml";

    public static string Option(string id) => $"options/small/{id}.yaml";

    /// <summary>Where a definition belongs after the kind and id on its first line.</summary>
    public static string PlaceOf(string definition)
    {
        var first = CheckMarks.Read("", definition).Text.Split('\n')[0].Split(": ");
        return (first[0], first[1]) switch
        {
            ("machine", var id) => $"machines/{id}/machine.yaml",
            ("port-plan", var id) => $"machines/{id}/port-plan.yaml",
            ("configuration", var id) => $"machines/{MachineId}/configurations/{id}.yaml",
            ("recipe", var id) => $"machines/{MachineId}/recipes/{id}.yaml",
            ("as-built", var id) => $"machines/{MachineId}/as-built/{id}.yaml",
            ("device", var id) => Device(id),
            ("option", var id) => Option(id),
            ("site", _) => "site-templates/site.yaml",
            var (kind, _) => throw new ArgumentException($"no place for a {kind}", nameof(definition)),
        };
    }
}
