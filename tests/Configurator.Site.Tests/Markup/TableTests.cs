namespace Configurator.Site.Tests.Markup;

// Source: WCAG 2.2, 1.3.1, techniques H39 (caption) and H63 (scope).
public class TableTests
{
    [Fact]
    public void A_table_takes_its_caption_from_the_line_before_it() => Assert.Equal(
        """
        <table><caption>Film and heat</caption>
        <thead>
        <tr>
        <th scope="col">film</th>
        <th scope="col">°C</th>
        </tr>
        </thead>
        <tbody>
        <tr>
        <td>foil</td>
        <td>180</td>
        </tr>
        </tbody>
        </table>

        """,
        Note.Html("Table: Film and heat\n\n| film | °C |\n|------|---:|\n| foil | 180 |\n").TrimStart('\n'));

    [Fact]
    public void Without_such_a_line_the_heading_above_is_the_caption() => Assert.Contains(
        "<caption>Sealing &amp; heat</caption>",
        Note.Html("# Start\n\n# Sealing & heat\n\ntext\n\n| a |\n|---|\n| b |\n"),
        StringComparison.Ordinal);

    [Fact]
    public void Without_a_heading_it_is_called_a_table() => Assert.Contains(
        "<caption>Table</caption>", Note.Html("| a |\n|---|\n| b |\n"), StringComparison.Ordinal);

    [Fact]
    public void Short_rows_are_filled_so_that_all_rows_are_equal() => Assert.Contains(
        "<td>1</td>\n<td></td>", Note.Html("| a | b |\n|---|---|\n| 1 |\n"), StringComparison.Ordinal);

    [Fact]
    public void A_bar_in_a_sentence_makes_no_table() => Assert.Equal("<p>a | b</p>\n", Note.Html("a | b\n"));
}
