using System.Collections.Frozen;
using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>How materials bear cleaning agents at usual strength.</summary>
/// <remarks>
/// Source: general resistance charts (common practice); cells marked <c>+</c>: a public article on cable materials,
/// pages of seal makers and a case study on plastics, corroborated; PMMA: from memory. Grades differ: the maker's
/// sheet decides.
/// </remarks>
public static class ResistanceTable
{
    public const string Source =
        "general resistance charts, common practice; corroborated for cable jackets and seals; PMMA from memory; the maker's sheet decides";

    private const string Memory = "PMMA";

    /// <summary>In the order of <see cref="AgentKind"/>: chlorinated alkaline, caustic, acid, quat, peracetic,
    /// hypochlorite, water of 80 degC. A good, B limited, C avoid.</summary>
    private static readonly ImmutableArray<(string Material, string Cells)> Rows =
    [
        ("304 stainless", "B A A A A B A"),
        ("316L stainless", "A A A A A B A"),
        ("aluminium bare", "C C C B C C B"),
        ("aluminium anodised", "C C C B C C B"),
        ("PVC jacket", "A A A B B B C"),
        ("PUR polyether", "C+ B+ B B C C+ B"),
        ("PUR polyester", "C C C C C C C+"),
        ("TPE (olefinic)", "A A A A B B A"),
        ("NBR", "C+ B C B C C B"),
        ("EPDM", "A A+ A+ A A+ B A+"),
        ("FKM", "B C A A B A C"),
        ("silicone VMQ", "B B B A B B A"),
        ("polycarbonate", "C+ C B C B C B"),
        ("PP", "A A A A B B A"),
        ("PE-UHMW", "A A A A A B B"),
        ("POM", "C B C B C C B"),
        ("PA", "C B C B C C B"),
        ("PTFE", "A A A A A A A"),
        (Memory, "B B B B B B B"),
    ];

    private static readonly ImmutableArray<(string Material, AgentKind Agent, string Note)> Notes =
    [
        ("304 stainless", AgentKind.Hypochlorite, "at most 200 ppm, short contact, rinse; pitting risk in crevices"),
        ("316L stainless", AgentKind.Hypochlorite, "better than 304 but still rinse"),
        ("aluminium bare", AgentKind.Caustic, "rapid attack"),
        ("PVC jacket", AgentKind.HotWater, "softens; check 70, 80 or 105 degC grade"),
        (
            "PUR polyether",
            AgentKind.Caustic,
            "residue that dries on the jacket concentrates and breaks the polymer; rinse well"
        ),
        ("EPDM", AgentKind.Peracetic, "peroxide-cured compound; not for fats or mineral oil"),
        ("FKM", AgentKind.HotWater, "steam hydrolysis; grade dependent"),
        (Memory, AgentKind.HotWater, "short jets only; stressed parts craze"),
        ("polycarbonate", AgentKind.ChlorinatedAlkaline, "stress cracking of stressed parts"),
    ];

    private static readonly FrozenDictionary<string, ImmutableArray<Resistance>> ByMaterial = Rows.ToFrozenDictionary(
        row => row.Material,
        row =>
            row.Cells.Split(' ').Select((cell, agent) => Read(row.Material, (AgentKind)agent, cell)).ToImmutableArray(),
        StringComparer.Ordinal
    );

    public static IEnumerable<string> Materials => Rows.Select(row => row.Material).Order(StringComparer.Ordinal);

    /// <summary>Null for a material that is not in the table.</summary>
    public static Resistance? Of(string material, AgentKind agent) =>
        ByMaterial.TryGetValue(material, out var cells) ? cells[(int)agent] : null;

    private static Resistance Read(string material, AgentKind agent, string cell)
    {
        var basis =
            material == Memory ? Basis.FromMemory
            : cell.Length > 1 ? Basis.Corroborated
            : Basis.CommonPractice;
        var note = Notes.FirstOrDefault(note => note.Material == material && note.Agent == agent).Note;
        return new((Rating)(cell[0] - 'A'), basis, note ?? "");
    }
}
