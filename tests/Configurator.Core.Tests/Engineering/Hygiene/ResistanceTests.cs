using Configurator.Core.Engineering;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Model;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering.Hygiene;

// Source: tests/Data/reference/chemical_compatibility.csv, whose rows name their own source and basis.
public class ResistanceTests
{
    private static readonly Dictionary<string, AgentKind> Kinds = new(StringComparer.Ordinal)
    {
        ["chlorinated alkaline foam"] = AgentKind.ChlorinatedAlkaline,
        ["caustic (no chlorine)"] = AgentKind.Caustic,
        ["acid (phosphoric/nitric, dilute)"] = AgentKind.Acid,
        ["QAC"] = AgentKind.Quat,
        ["peracetic acid"] = AgentKind.Peracetic,
        ["hypochlorite sanitizer"] = AgentKind.Hypochlorite,
        ["hot water 80 C"] = AgentKind.HotWater,
    };

    public static TheoryData<string, string, string, string> Cells { get; } =
        new(CheckData.Rows("reference/chemical_compatibility.csv").Select(row => (
            row["material"], row["cleaner"], row["rating_A_good_B_limited_C_avoid"], row["basis"])));

    [Theory]
    [MemberData(nameof(Cells))]
    public void A_material_bears_an_agent_as_the_published_row_says(
        string material, string cleaner, string rating, string basis)
    {
        var found = ResistanceTable.Of(material, Kinds[cleaner]);

        Assert.NotNull(found);
        Assert.Equal(rating, ((char)('A' + (int)found.Rating)).ToString());
        Assert.Equal(basis, Word(found.Basis));
    }

    [Fact]
    public void What_has_no_published_row_is_marked_as_from_memory()
    {
        var published = Cells.Select(cell => cell.Data.Item1).ToHashSet(StringComparer.Ordinal);

        var own = ResistanceTable.Materials.Where(material => !published.Contains(material));

        Assert.All(own, material => Assert.Equal(
            Basis.FromMemory, ResistanceTable.Of(material, AgentKind.Caustic)!.Basis));
    }

    [Fact]
    public void A_material_that_nobody_rates_has_no_rating() =>
        Assert.Null(ResistanceTable.Of("titanium", AgentKind.Caustic));

    private static string Word(Basis basis) => basis switch
    {
        Basis.Corroborated => "corroborated",
        Basis.CommonPractice => "common practice",
        _ => "from memory",
    };
}
