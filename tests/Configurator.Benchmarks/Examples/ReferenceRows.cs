using System.Collections.Immutable;

namespace Configurator.Benchmarks.Examples;

/// <summary>What is no formula but a row of the published values, such as the signal on a pin: found where every input is in a cell
/// of the row.</summary>
internal static class ReferenceRows
{
    private static readonly ImmutableArray<string> Tables =
    [
        "iolink_port_pinout.csv", "m12_pinouts.csv", "iolink_bit_rates.csv", "iolink_msequence_types.csv", "iolink_msequence_capability_map.csv",
        "supply_voltage_limits.csv", "iolink_electrical_limits.csv", "iolink_timing_limits.csv", "enclosure_k_values.csv", "conductor_resistance.csv",
        "awg_resistance.csv", "conductor_ampacity.csv", "voltage_drop_targets.csv", "copper_constants.csv", "pneumatic_constants.csv", "spc_constants.csv",
    ];

    public static object? Find(Given given, string key)
    {
        foreach (var table in Tables.Select(given.Table).OfType<CsvTable>())
        {
            var head = table.Heads.FirstOrDefault(one => Bare(one) == Bare(key));
            var matching = head is null ? [] : table.Rows.Where(row => given.Inputs.All(input => Has(table, row, input.Key, Given.ValueOf(input.Value)?.ToString() ?? given.Text(input.Key)!))).ToList();
            if (matching.Count > 0 && table.Cell(matching[0], head!) is { Length: > 0 } cell)
            {
                return Given.ValueOf(cell) is { } number ? number.ToDouble() : cell;
            }
        }

        return null;
    }

    private static bool Has(CsvTable table, ImmutableArray<string> row, string input, string value)
    {
        var head = table.Heads.FirstOrDefault(one => Bare(one) == Bare(input)) ?? table.Heads.FirstOrDefault(one => Bare(one).Contains(Bare(input), StringComparison.Ordinal));
        if (head is null)
        {
            return false;
        }

        var cell = table.Cell(row, head);
        return cell.Equals(value, StringComparison.OrdinalIgnoreCase)
            || (Given.ValueOf(cell) is { } left && Given.ValueOf(value) is { } right && left == right);
    }

    private static string Bare(string name) => name.Replace("_", "", StringComparison.Ordinal).ToLowerInvariant();
}
