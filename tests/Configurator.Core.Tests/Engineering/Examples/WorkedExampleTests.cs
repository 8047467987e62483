using Configurator.Benchmarks.Examples;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering.Examples;

/// <summary>Worked examples of the published values, and what the command makes of strange ones.</summary>
public class WorkedExampleTests
{
    public static TheoryData<string, string> Given { get; } =
        new(Rows("worked_examples.csv").Concat(Rows("more_examples.csv")).Select(row => (row.File, row.Row.Id)));

    // Source: column `source` of the row.
    [Theory]
    [MemberData(nameof(Given))]
    public void A_worked_example_comes_out_as_published(string file, string id)
    {
        var judgement = Judgement.Of(Rows(file).Single(row => row.Row.Id == id).Row, ExampleTables.Beside(PathOf(file)));
        Assert.True(judgement.IsPass, judgement.ToString());
    }

    [Theory]
    [InlineData("", "", "")]
    [InlineData("{}", "{}", "exact")]
    [InlineData("{\"a\": 1}", "{\"b\": 2}", "exact")]
    [InlineData("[1, 2]", "{\"b\": 2}", "0.1")]
    [InlineData("{\"u\": \"x\", \"loop_ohm\": null}", "{\"drop_V\": 1}", "none")]
    [InlineData("{\"us\": 0, \"loop_ohm\": 0, \"p_W\": 0}", "{\"u\": 1, \"i_A\": 1}", "1e-9")]
    [InlineData("{\"octets\": \"zz\", \"fields\": [[1]]}", "{\"values\": []}", "exact")]
    [InlineData("{\"table\": \"none.csv\"}", "{\"rows\": 1}", "exact")]
    public void An_example_that_cannot_be_evaluated_fails_with_a_reason(string inputs, string expected, string tolerance)
    {
        var judgement = Judgement.Of(new("X-1", "conductor", inputs, expected, tolerance), _ => null);
        Assert.False(judgement.IsPass);
        Assert.StartsWith("X-1\tfail\t", judgement.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0.005 on z, 0.001 on limits (rounded to 0.4201)", "z", 1, 1.004, true)]
    [InlineData("0.005 on z, 0.001 on limits (rounded to 0.4201)", "ucl", 1, 1.004, false)]
    [InlineData("1e-4 ms, octets exact", "t_ms", 1, 1.00009, true)]
    [InlineData("0.5 %", "scfm", 200, 201, true)]
    [InlineData("0.5 %", "scfm", 200, 202, false)]
    [InlineData("exact", "rows", 18, 18, true)]
    [InlineData("exact", "rows", 18, 17, false)]
    [InlineData("1", "usd", 48792, 48792.9, true)]
    public void A_tolerance_is_read_as_it_is_written(string text, string key, double expected, double got, bool allows) =>
        Assert.Equal(allows, Tolerance.Parse(text).Allows(key, expected, got));

    [Fact]
    public void A_cell_in_quotes_may_hold_commas_and_quotes()
    {
        var table = CsvTable.Parse("id,inputs_json\r\nA,\"{\"\"x\"\": [1, 2]}\"\r\n");
        Assert.Equal("{\"x\": [1, 2]}", table.Cell(Assert.Single(table.Rows), "inputs_json"));
    }

    private static IEnumerable<(string File, ExampleRow Row)> Rows(string file) =>
        ExampleRow.Read(File.ReadAllText(PathOf(file))).Select(row => (file, row));

    private static string PathOf(string file) => Path.Combine(Repository.Folder, "tests", "Data", "reference", file);
}
