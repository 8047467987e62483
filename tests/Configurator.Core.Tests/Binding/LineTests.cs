using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

/// <summary>What stands on one line of a page is written on one line.</summary>
public class LineTests
{
    private static readonly string Cord = SmallCatalogue.Device("cord-4");
    private static readonly string Film = SmallCatalogue.Option("film");

    [Fact]
    public void A_text_over_several_lines_is_reported() => Check.Small
        .Changing(Film, "title: Lid film\n", "title: [||\n|]  Lid\n  film\n")
        .Says("CFG2006 this goes on over several lines\nto fix: write a text, or a map of languages such as `{en: Lid sensor, es: Sensor de tapa}` on one line");

    [Fact]
    public void A_value_that_is_not_translated_is_one_line_too() => Check.Small
        .Changing(Cord, "jacket: TPE", "jacket: [|\"TPE\\nPVC\"|]")
        .Says("CFG2006 this goes on over several lines");

    [Theory]
    [InlineData("title: >-\n  Lid\n  film\n")]
    [InlineData("title: |\n  Lid film\n")]
    [InlineData("title: >\n  Lid\n  film\n")]
    public void A_block_that_comes_to_one_line_is_taken_without_its_end(string title) => Assert.Equal(
        "Lid film", Check.Small.Changing(Film, "title: Lid film\n", title).Catalogue.Options[new("film")].Title.ToString());
}
