namespace Configurator.Benchmarks.Examples;

/// <summary>Voltages against what the standards allow at a place.</summary>
internal static class SupplyExamples
{
    public static void Run(Given given, Answer answer)
    {
        if (given.Text("item", "place", "at", "limits") is not { } place
            || given.Number(Kind.Volts, "u", "voltage", "v") is not { } volts
            || given.Table("supply_voltage_limits.csv") is not { } table)
        {
            return;
        }

        var row = table.Rows.FirstOrDefault(one => table.Cell(one, "item").Contains(place, StringComparison.OrdinalIgnoreCase));
        if (row.IsDefault)
        {
            return;
        }

        var (least, most) = (Given.ValueOf(table.Cell(row, "min_V")), Given.ValueOf(table.Cell(row, "max_V")));
        answer.Add(Kind.Volts, least, "min", "u_min");
        answer.Add(Kind.Volts, most, "max", "u_max");
        answer.Add(Kind.Volts, volts - least, "margin", "margin_min");
        answer.Say((least is not { } low || volts >= low) && (most is not { } high || volts <= high), "ok", "within");
    }
}
