using System.Collections.Immutable;
using Configurator.Core.Diagnostics;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>What is checked of parts that are washed.</summary>
internal static class HygieneRules
{
    public static readonly FindingRule Ingress = new(
        "hygiene.ingress",
        "Ingress marking for area and washing",
        new("CFG4501", Severity.Error, "Ingress marking does not cover the washing"),
        WashDemands.Source
    )
    {
        WhenUnstated = new("CFG4502", Severity.Warning, "Ingress marking not stated"),
        WhenReview = new("CFG4503", Severity.Warning, "Ingress marking to be compared"),
    };

    public static readonly FindingRule Materials = new(
        "hygiene.materials",
        "Materials against agents",
        new("CFG4504", Severity.Error, "Part that no agent of a step suits"),
        ResistanceTable.Source
    )
    {
        WhenUnstated = new("CFG4505", Severity.Warning, "Materials not stated or not in the table"),
    };

    public static readonly FindingRule Agents = new(
        "hygiene.agents",
        "Agents that suit everything fitted",
        new("CFG4506", Severity.Error, "No agent suits everything fitted"),
        ResistanceTable.Source
    );

    public static readonly FindingRule Strength = new(
        "hygiene.strength",
        "Agents as resistance ratings cover them",
        new("CFG4507", Severity.Warning, "Agent beyond what ratings cover"),
        AgentStrengths.Source
    );

    public static readonly FindingRule Surface = new(
        "hygiene.surface",
        "Surface roughness",
        new("CFG4508", Severity.Error, "Surface too rough for its area"),
        "food: Ra 0.8 um, EHEDG Doc. 8 and 3-A, corroborated; splash: Ra 3.2 um, EN 1672-2, common practice"
    )
    {
        WhenUnstated = new("CFG4509", Severity.Warning, "Finish not stated"),
    };

    public static readonly FindingRule Corners = new(
        "hygiene.corners",
        "Radius of inner corners",
        new("CFG4510", Severity.Error, "Corner too sharp for its area"),
        "food and splash: 3 mm at least, 6 mm preferred, EHEDG Doc. 8, from memory"
    );

    public static readonly FindingRule Threads = new(
        "hygiene.fasteners",
        "Fasteners",
        new("CFG4511", Severity.Error, "Fasteners not for their area"),
        "EN 1672-2 and ISO 14159, public extracts: none to be seen in food areas, dome or sealed heads in splash areas"
    );

    public static readonly FindingRule Caps = new(
        "hygiene.caps",
        "Sockets without a cable are capped",
        new("CFG4512", Severity.Error, "Open socket in a washed area"),
        "IP code applies only with mated or capped connectors; IEC 61076-2-101, common practice"
    );

    public static readonly FindingRule Built = new(
        "hygiene.built",
        "Stand-off, fall and floor clearance",
        new("CFG4513", Severity.Error, "Built too close or too level to be rinsed"),
        "stand-off 25 mm, common practice; fall 3 deg, EHEDG, corroborated; floor clearance 300 mm, common practice"
    )
    {
        WhenUnstated = new("CFG4514", Severity.Warning, "Stand-off, fall or floor clearance not stated"),
    };

    public static readonly FindingRule Cables = new(
        "hygiene.cables",
        "Cables in an area",
        new("CFG4515", Severity.Error, "More cables in an area than it has room for"),
        "number that the machine states for the area, so that every cable can be rinsed all round"
    );

    public static readonly FindingRule Translation = new(
        "hygiene.translation",
        "Sanitation notes in every language of the site",
        new("CFG4516", Severity.Note, "Sanitation notes not translated"),
        "a crew follows what it can read; common practice, no source"
    );

    public static ImmutableArray<FindingRule> All { get; } =
    [
        Ingress,
        Materials,
        Agents,
        Strength,
        Surface,
        Corners,
        Threads,
        Caps,
        Built,
        Cables,
        Translation,
    ];
}
