using System.Collections.Immutable;
using System.Text.Json;

namespace Configurator.Benchmarks.Examples;

/// <summary>Whole tables: how many of their rows come out as the table says.</summary>
internal static class TableExamples
{
    public static void Run(Given given, Answer answer)
    {
        if (given.Text("table", "file", "csv") is not { } name || given.Table(name) is not { } table)
        {
            return;
        }

        var agreeing = table.Rows.Count(row => Agrees(given, table, row));
        answer.Add(Kind.Plain, agreeing, "rows", "pass", "passed", "agree", "ok_rows");
        answer.Add(Kind.Plain, table.Rows.Length - agreeing, "fail", "failed", "mismatches");
        answer.Say(agreeing == table.Rows.Length, "ok", "all", "all_ok", "all_pass");
    }

    /// <summary>Every result column that some formula gives from the other columns must be as written.</summary>
    private static bool Agrees(Given given, CsvTable table, ImmutableArray<string> row)
    {
        var cells = table.Heads.Select(head => (Head: head, Text: table.Cell(row, head))).Where(cell => cell.Text.Length > 0).ToList();
        var (results, inputs) = Columns(table.Heads);
        var of = given with
        {
            Inputs = cells.Where(cell => inputs.Contains(cell.Head, StringComparer.Ordinal)).ToImmutableSortedDictionary(cell => cell.Head, cell => Cell(cell.Text), StringComparer.Ordinal),
        };
        return results.Length > 0 && cells.Where(cell => results.Contains(cell.Head, StringComparer.Ordinal)).All(cell => Matches(of, cell.Head, cell.Text));
    }

    private static (string[] Results, string[] Inputs) Columns(ImmutableArray<string> heads) =>
        Has(heads, "marking") ? (["result"], ["marking", "requirement"])
        : Has(heads, "marked_first") ? (["satisfied"], ["marked_first", "required_first"])
        : Has(heads, "marked_second") ? (["satisfied"], ["marked_second", "required_second"])
        : Has(heads, "direction") ? (["octet", "cycle_ms", "status"], ["input", "direction"])
        : Has(heads, "min_cycle_octet") ? (["m_master_octets", "tbits_max", "t_mseq_max_ms", "min_cycle_octet"], ["com", "pd_in_octets", "pd_out_octets", "od_octets", "m_sequence_type"])
        : Has(heads, "check_octet_result") ? (["check_octet_result"], ["octets_before_check_octet", "check_octet_flags"])
        : Has(heads, "parameter") ? (["status"], ["parameter", "octet"])
        : ([], []);

    private static bool Matches(Given given, string head, string text)
    {
        if (given.Text("direction") == "decode" && given.Text("input") is { } octet)
        {
            given = given with { Inputs = given.Inputs.Remove("input").SetItem("octet", Cell(octet)) };
            if (head == "octet")
            {
                return true;
            }
        }

        var expected = Cell(text);
        var key = head == "m_master_octets" ? "m" : head;
        return Evaluation.Find("io-link", given, key, expected) switch
        {
            double number => Given.ValueOf(text) is { } value && Math.Abs(value.ToDouble() - number) < 1e-4,
            string word => word.Equals(text, StringComparison.OrdinalIgnoreCase)
                || (head != "status" && Given.OctetsOf(Cell(word)) is { } left && Given.OctetsOf(expected) is { } right && left.SequenceEqual(right)),
            _ => false,
        };
    }

    private static bool Has(ImmutableArray<string> heads, string head) => heads.Contains(head, StringComparer.Ordinal);

    private static JsonElement Cell(string text) => JsonSerializer.SerializeToElement(text);
}
