using static Configurator.Site.Tests.Inspecting.Finished;

namespace Configurator.Site.Tests.Inspecting;

// Source: WCAG 2.2, 1.3.1; HTML Living Standard, 4.9.12.1, forming a table.
public class TableTests
{
    private const string Head =
        "<caption>Ports</caption><thead><tr><th scope=\"col\">a</th><th scope=\"col\">b</th></tr></thead>";

    [Theory]
    [InlineData("<tr><td>1</td><td>2</td></tr>")]
    [InlineData("<tr><th scope=\"row\">1</th><td>2</td></tr>")]
    [InlineData("<tr><td colspan=\"2\">1</td></tr>")]
    [InlineData("<tr><td rowspan=\"2\">1</td><td>2</td></tr><tr><td>3</td></tr>")]
    [InlineData("<tr><td>1</td><td rowspan=\"0\">2</td></tr><tr><td>3</td></tr><tr><td>4</td></tr>")]
    [InlineData("<tr><th scope=\"rowgroup\" colspan=\"2\">group</th></tr><tr><td>1</td><td>2</td></tr>")]
    [InlineData("")]
    public void Tables_with_equal_rows_are_fine(string rows) => Accept($"<table>{Head}<tbody>{rows}</tbody></table>");

    [Fact]
    public void A_table_of_facts_needs_no_head() =>
        Accept("<table><caption>Facts</caption><tr><th scope=\"row\">Voltage</th><td>24 V</td></tr></table>");

    [Theory]
    [InlineData("[|<table|]><tr><th scope=\"row\">a</th><td>b</td></tr></table>", "the table has no caption")]
    [InlineData("[|<table|]><caption> </caption><tr><th scope=\"row\">a</th></tr></table>", "the table has no caption")]
    [InlineData("[|<table|]><caption>x</caption><tr><td>a</td></tr></table>", "the table has no header cells")]
    [InlineData(
        "<table><caption>x</caption>[|<thead|]><tr><td>a</td></tr></thead><tr><th scope=\"row\">b</th></tr></table>",
        "the table's `thead` has no header cells")]
    [InlineData("<table><caption>x</caption><tr>[|<th|]>a</th></tr></table>", "the header cell has no `scope`")]
    [InlineData(
        "<table><caption>x</caption><tr>[|<th|] scope=\"column\">a</th></tr></table>",
        "the header cell has no `scope`")]
    public void A_table_says_what_it_is_and_what_its_cells_belong_to(string body, string message) =>
        Check(body, "CFG6005 " + message);

    [Theory]
    [InlineData("[|<tr|]><td>1</td></tr>", "the row is 1 cells wide, the first is 2")]
    [InlineData("[|<tr|]><td>1</td><td>2</td><td>3</td></tr>", "the row is 3 cells wide, the first is 2")]
    [InlineData("[|<tr|]><td colspan=\"3\">1</td></tr>", "the row is 3 cells wide, the first is 2")]
    [InlineData(
        "<tr><td rowspan=\"2\">1</td><td>2</td></tr>[|<tr|]><td>3</td><td>4</td></tr>",
        "the row is 3 cells wide, the first is 2")]
    [InlineData(
        "<tr><td>1</td><td rowspan=\"2\">2</td></tr>[|<tr|]><td colspan=\"2\">3</td></tr>",
        "the row's cells overlap a cell that spans rows from above")]
    public void Rows_are_as_wide_as_the_first_with_all_spans_counted(string rows, string message) =>
        Check($"<table>{Head}<tbody>{rows}</tbody></table>", "CFG6005 " + message);

    [Fact]
    public void A_span_of_rows_ends_with_its_section() => Accept($"""
        <table>{Head}
        <tbody><tr><td rowspan="9">1</td><td>2</td></tr></tbody>
        <tbody><tr><td>3</td><td>4</td></tr></tbody>
        </table>
        """);

    [Fact]
    public void A_table_in_a_cell_is_a_table_of_its_own() => Accept($"""
        <table>{Head}
        <tbody><tr><td>1</td><td><table><caption>x</caption><tr><th scope="row">y</th></tr></table></td></tr></tbody>
        </table>
        """);

    [Fact]
    public void Spans_beyond_all_measure_do_no_harm() => Assert.NotEmpty(Inspect(("a.html", Page($"""
        <table>{Head}
        <tr><td colspan="999999999" rowspan="999999999">x</td></tr>
        <tr><td colspan="-1">y</td></tr>
        </table>
        """))));
}
