using System.Text.Json.Nodes;
using Configurator.Core.Documents;
using Configurator.Core.Documents.Monitoring;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Documents;

public class MonitoringTests
{
    private const string Page = "machines/cup-one/configurations/plain/monitoring.html";
    private const string File = "machines/cup-one/configurations/plain/monitoring.json";

    private static readonly Check Described = Check.Small
        .Machine("revision: A\n", "revision: A\nrate: 30 1/min\n")
        .Changing(SmallCatalogue.Device("eye"), "cycle: 2.3 ms}", "cycle: 2.3 ms, process-data: {inputs: ["
            + "{name: contrast, title: Contrast, type: UIntegerT, octet: 0, bit: 2, length: 14, from: 0 percent, to: 100 percent, step: 0.1 percent}, "
            + "{name: seen, title: Cup is seen, type: BooleanT, octet: 1}]}}");

    // Source: hand calculation. 30 cycles a minute are one in 2 s.
    [Fact]
    public void A_value_is_of_use_once_a_machine_cycle_and_a_signal_when_it_changes() => Assert.Equal(
        [
            "cup_eye_1_contrast | Contrast | Sees the cup | =CUPEYE-BX1 | =FRONT-KF1:1 | 0 | 2 | UIntegerT(14) | % | 0.1 | every 2 s | machine cycle",
            "cup_eye_1_seen | Cup is seen | Sees the cup | =CUPEYE-BX1 | =FRONT-KF1:1 | 1 | 0 | BooleanT |  |  | on change | switching signal",
        ],
        CheckTables.Lines(PageOf(Described), "process-values"));

    [Fact]
    public void A_device_slower_than_the_machine_is_read_as_fast_as_it_answers() => Assert.Contains(
        "| every 3 s | slow device",
        Described.Changing(SmallCatalogue.Device("eye"), "current: 40 mA", "current: 40 mA\nresponse: 3 s").Section(Page, "values"),
        StringComparison.Ordinal);

    // Source: indices of iolink_isdu_indices.csv (Table B.8) as in the comments; hand calculation of the reading time with
    // one octet a cycle of 2.3 ms: request of service, index, check 3, answer of service, data, check 1 + n + 1; status 6
    // cycles 13.8 ms, counter 7 cycles 16.1 ms, 16 octets with a longer length 3 + 19 = 22 cycles 50.6 ms.
    [Theory]
    [InlineData("status | DeviceStatus | 36 (0x0024) | 0 | UIntegerT(8) |  | 13.8 ms | every 60 s")]
    [InlineData("counter | ErrorCount | 32 (0x0020) | 0 | UIntegerT(16) |  | 16.1 ms | every 3600 s")]
    [InlineData("identity | SerialNumber | 21 (0x0015) | 0 | StringT |  | 50.6 ms | at start")]
    [InlineData("setting | Switching threshold | 60 (0x003C) | 0 | UIntegerT(16) | % | 16.1 ms | after a changeover")]
    [InlineData("setting | Output logic | 61 (0x003D) | 0 | UIntegerT(8) |  | 13.8 ms | after a changeover")]
    public void What_is_read_as_a_parameter_has_its_index(string row) =>
        Assert.Contains($"=CUPEYE-BX1 | =FRONT-KF1:1 | {row}", Described.Section(Page, "device-data"), StringComparison.Ordinal);

    [Fact]
    public void The_file_holds_the_points_of_the_page()
    {
        var points = JsonNode.Parse(TextOf(Described))!["points"]!.AsArray();
        var page = PageOf(Described);
        Assert.Equal(
            CheckTables.Of(page, "process-values").Rows.Length + CheckTables.Of(page, "device-data").Rows.Length, points.Count);
        Assert.Equal("cup_eye_1_contrast", (string?)points[0]!["name"]);
        Assert.Equal(2, (int)points[0]!["bit-offset"]!);
        Assert.Equal("0.1", points[0]!["step"]!.ToJsonString());
        Assert.Equal("2000", points[0]!["every-ms"]!.ToJsonString());
    }

    // Source: iolink_event_codes.csv, preferred device status of each code.
    [Fact]
    public void Event_codes_are_those_of_the_table()
    {
        var rows = CheckData.Rows("reference/iolink_event_codes.csv")
            .ToLookup(row => $"{row["origin"]} {row["code"]} {row["preferred_device_status"]}", StringComparer.Ordinal);
        Assert.All(EventCode.All, code => Assert.Single(rows[
            FormattableString.Invariant($"{(code.IsPort ? "Port" : "Device")} 0x{code.Code:X4} {code.Status}")]));
    }

    // Source: iolink_device_status.csv.
    [Fact]
    public void Meanings_of_the_status_are_those_of_the_table() => Assert.Equal(
        CheckData.Rows("reference/iolink_device_status.csv").Select(row => row["meaning"]),
        CheckTables.Column(PageOf(Described), "status-values", 1));

    // Source: iolink_isdu_indices.csv; the names stand on the page as the table writes them.
    [Fact]
    public void Indices_are_those_of_the_table()
    {
        var rows = CheckData.Rows("reference/iolink_isdu_indices.csv").ToLookup(row => row["name"], row => row["index"], StringComparer.Ordinal);
        var page = PageOf(Described);
        var standard = CheckTables.Of(page, "device-data").Rows
            .Where(row => row.Cells[2].Text != "setting")
            .Select(row => (Name: row.Cells[3].Text, Index: row.Cells[4].Text)).Distinct().ToList();
        Assert.Equal(5, standard.Count);
        Assert.All(standard, row => Assert.Contains(Assert.Single(rows[row.Name]), row.Index, StringComparison.Ordinal));
    }

    private static Page PageOf(Check check) =>
        Documenter.Compose(check.Engineered, "").Value.Pages.Single(page => page.Path == Page);

    private static string TextOf(Check check) =>
        Documenter.Compose(check.Engineered, "").Value.TextFiles.Single(file => file.Path == File).Text;
}
