using Configurator.Core.Documents;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Documents;

/// <summary>What gives a stop, what it drops, and what goes on.</summary>
public class StopMatrixTests
{
    private static readonly DocumentSet Laser =
        DemoCatalogue.Documents.Sets.First(set => set.Engineered.Published.Options.Any(option => option.Value.Value == "laser-coding"));

    // By hand from the definitions: the laser stops with every stop, the drives with emergency stop and guards, heating
    // with none.
    [Theory]
    [InlineData("=CODERLASER-PG1", "off off off")]
    [InlineData("=TORQUEDROP-KF1", "off off stays")]
    [InlineData("actuators", "off off stays")]
    [InlineData("sensors", "stays stays stays")]
    [InlineData("=SEALSWITCH-QA1", "stays stays stays")]
    public void Each_stop_says_what_it_drops_and_what_goes_on(string dropped, string stops)
    {
        var matrix = Laser.Find("stop-matrix")!;
        Assert.Equal(["What is dropped", "emergency stop", "guards", "laser cover"], matrix.Columns.Select(column => column.Title));
        Assert.Equal(stops, string.Join(' ', Row(matrix, dropped).Cells.Skip(1).Select(cell => cell.Text)));
    }

    // Source: common practice, no source: every device that stops something is tried by itself.
    [Fact]
    public void Whatever_gives_a_stop_is_tried_with_all_that_it_drops()
    {
        var tests = Laser.Find("test-safety")!.Rows;
        Assert.All(Laser.Find("stop-givers")!.Rows, giver => Assert.Contains(
            tests, test => test.Cells[0].Text.EndsWith(giver.Cells[1].Text, StringComparison.Ordinal) && test.Cells[2].Text.StartsWith("off: ", StringComparison.Ordinal)));
        Assert.Equal(
            "off: =CODERLASER-PG1; reset refused; no start by release or reset alone",
            tests.Single(test => test.Cells[0].Text.EndsWith("=LASERLOCK-SF1", StringComparison.Ordinal) && test.Cells[2].Text.StartsWith("off", StringComparison.Ordinal)).Cells[2].Text);
    }

    // By hand: a lock is tried while the machine runs, and opened at rest; a switch is opened while it runs.
    [Theory]
    [InlineData("=LOCKFILLING-SF1", "machine running: try to open it (stays locked)")]
    [InlineData("=STOPINFEED-SF1", "machine running, nobody in reach: press or open it")]
    public void A_locked_guard_is_tried_otherwise_than_a_button(string giver, string measure) => Assert.Contains(
        DemoCatalogue.Documents.Sets.Where(set => set.Find("stop-givers")!.Rows.Any(row => row.Cells[1].Text == giver))
            .SelectMany(set => set.Find("test-safety")!.Rows),
        test => test.Cells[0].Text.EndsWith(giver, StringComparison.Ordinal) && test.Cells[1].Text.StartsWith(measure, StringComparison.Ordinal));

    [Fact]
    public void A_stop_function_that_the_machine_has_not_is_reported_where_it_is_named() => Check.Small
        .Machine("  spare-ports: 1", "  stops: [{stop: guards, title: Guards}]\n  spare-ports: 1")
        .Machine("purpose: Stops the filler,", "purpose: Stops the filler, stop: [|gards|],")
        .Says("CFG2003 there is no stop function on `cup-one` `gards`\nto fix: replace it with `guards`");

    // By hand: an acceptance limit is never tighter than what was computed: volts round down, amperes up.
    [Fact]
    public void Limits_of_the_sheet_are_never_tighter_than_computed()
    {
        var volts = Laser.Tables.SelectMany(pair => pair.Tables).Single(table => table.Id == "trunk-sensors").Rows;
        var tests = Laser.Find("test-power")!.Rows;
        Assert.All(volts, master => Assert.True(
            Number(tests.Single(test => test.Cells[0].Text.EndsWith($"{master.Cells[0].Text} sensors", StringComparison.Ordinal)).Cells[2].Text)
                <= Number(master.Cells[4].Text)));
    }

    private static decimal Number(string text) => decimal.Parse(
        text.Split(' ').First(part => char.IsAsciiDigit(part[0])), System.Globalization.CultureInfo.InvariantCulture);

    private static Row Row(Table table, string first) => table.Rows.Single(row => row.Cells[0].Text == first);
}
