using System.Collections.Immutable;
using System.Text.Json;

namespace Configurator.Benchmarks.Examples;

/// <summary>One example: what is given, what is expected, and how near it must come.</summary>
internal sealed record ExampleRow(string Id, string Topic, string Inputs, string Expected, string Tolerance)
{
    public static ImmutableArray<ExampleRow> Read(string text)
    {
        var table = CsvTable.Parse(text);
        return
        [
            .. table.Rows.Select(row => new ExampleRow(
                table.Cell(row, "id"),
                table.Cell(row, "topic"),
                table.Cell(row, "inputs_json"),
                table.Cell(row, "expected_json"),
                table.Cell(row, "tolerance"))),
        ];
    }

    /// <exception cref="JsonException">A cell is no JSON object.</exception>
    public static ImmutableSortedDictionary<string, JsonElement> Fields(string json) =>
        JsonSerializer.Deserialize<Dictionary<string, JsonElement>>(json)!.ToImmutableSortedDictionary(StringComparer.Ordinal);
}
