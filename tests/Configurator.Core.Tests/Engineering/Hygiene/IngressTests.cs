using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering.Hygiene;

// Source: IEC 60529 clauses 5 and 6, ISO 20653 for K, by tests/Data/reference.
public class IngressTests
{
    public static TheoryData<string, string, string> Markings { get; } = Rows("ip_check_vectors.csv", "marking", "requirement", "result");

    public static TheoryData<string, string, string> Solids { get; } = Rows("ip_solid_implication.csv", "marked_first", "required_first", "satisfied");

    public static TheoryData<string, string, string> Water { get; } = Rows("ip_water_implication.csv", "marked_second", "required_second", "satisfied");

    [Theory]
    [MemberData(nameof(Markings))]
    public void Any_one_code_of_a_marking_may_show_what_is_asked(string marking, string asked, string result) =>
        Assert.Equal(result, Word(IngressCode.Shows(IngressCode.Parse(marking)!, Assert.Single(IngressCode.Parse(asked)!))));

    [Theory]
    [MemberData(nameof(Solids))]
    public void A_numeral_against_solids_shows_the_lower_ones(string marked, string asked, string result) =>
        Assert.Equal(result, Word(IngressCode.OfSolids(marked, asked)));

    [Theory]
    [MemberData(nameof(Water))]
    public void A_numeral_against_water_shows_the_lower_ones_of_its_sort(string marked, string asked, string result) =>
        Assert.Equal(result, Word(IngressCode.OfWater(marked, asked)));

    [Theory]
    [InlineData("67")]
    [InlineData("IP")]
    [InlineData("IPA7")]
    public void What_is_no_marking_is_none(string text) => Assert.Null(IngressCode.Parse(text));

    private static string Word(Shown shown) => shown.ToString().ToLowerInvariant();

    private static TheoryData<string, string, string> Rows(string file, string marked, string asked, string result) =>
        new(CheckData.Rows($"reference/{file}").Select(row => (row[marked], row[asked], row[result])));
}
