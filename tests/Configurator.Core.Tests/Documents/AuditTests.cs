using System.Collections.Immutable;
using Configurator.Core.Documents;
using Configurator.Core.Documents.Audits;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Model;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Documents;

/// <summary>The audit of finished lists finds nothing in the demonstration, and everything that is taken out of
/// it.</summary>
public class AuditTests
{
    private static readonly Designations Names = new(DesignationStyle.Iec81346);

    [Fact]
    public void Nothing_is_wrong_with_the_documents_of_the_demonstration() =>
        Assert.Empty(DemoCatalogue.Documents.Sets.SelectMany(set => DocumentAudit.Check(Names, set)));

    [Theory]
    [InlineData("plug-list")]
    [InlineData("termination-list")]
    [InlineData("cable-schedule")]
    [InlineData("parts-list")]
    [InlineData("stock-cables")]
    [InlineData("direct")]
    public void A_row_that_is_missing_is_noticed_whichever_it_is(string table)
    {
        var set = DemoCatalogue.Documents.Sets[0];
        Assert.All(
            Enumerable.Range(0, set.Find(table)!.Rows.Length),
            row => Assert.NotEmpty(DocumentAudit.Check(Names, With(set, table, rows => rows.RemoveAt(row)))));
    }

    [Theory]
    [InlineData("plug-list")]
    [InlineData("termination-list")]
    [InlineData("cable-schedule")]
    [InlineData("parts-list")]
    public void A_row_that_stands_twice_is_noticed(string table)
    {
        var set = DemoCatalogue.Documents.Sets[0];
        Assert.NotEmpty(DocumentAudit.Check(Names, With(set, table, rows => rows.Add(rows[0]))));
    }

    [Fact]
    public void A_device_that_the_port_map_leaves_out_is_noticed()
    {
        var set = DemoCatalogue.Documents.Sets[0];
        var map = set.Tables.SelectMany(pair => pair.Tables).First(table => table.Id.StartsWith("ports-", StringComparison.Ordinal));
        Assert.NotEmpty(DocumentAudit.Check(Names, With(set, map.Id, rows => rows.RemoveAll(row => row.Status.Length == 0))));
    }

    [Fact]
    public void A_quantity_that_does_not_agree_with_what_it_counts_is_noticed()
    {
        var set = DemoCatalogue.Documents.Sets[0];
        var changed = With(set, "parts-list", rows => rows.SetItem(0, rows[0] with { Cells = rows[0].Cells.SetItem(1, "99") }));
        Assert.NotEmpty(DocumentAudit.Check(Names, changed));
    }

    [Theory]
    [InlineData("=CONTROLLER-KF1 plain output")]
    [InlineData("=TORQUEDROP-KF1:")]
    [InlineData("=BOXSWITCH-KF1:")]
    [InlineData("=SAFETYLOGIC-KF1:Q")]
    public void A_place_of_the_box_with_two_wires_is_noticed(string place)
    {
        var set = DemoCatalogue.Documents.Sets[0];
        var wire = set.Find("inside-box")!.Rows.First(row => row.Cells[0].Text.StartsWith(place, StringComparison.Ordinal));
        Assert.Contains(
            DocumentAudit.Check(Names, With(set, "inside-box", rows => rows.Add(wire))),
            fault => fault.Message.Contains($"two wires end at `{wire.Cells[0].Text}`", StringComparison.Ordinal));
    }

    [Fact]
    public void A_label_that_is_missing_is_noticed()
    {
        var set = DemoCatalogue.Documents.Sets[0];
        var changed = WithBlocks(set, block => block is LabelSheet sheet ? sheet with { Labels = sheet.Labels.RemoveAt(3) } : block);
        Assert.NotEmpty(DocumentAudit.Check(Names, changed));
    }

    private static DocumentSet With(DocumentSet set, string table, Func<ImmutableArray<Row>, ImmutableArray<Row>> change) =>
        WithBlocks(set, block => block is Table found && found.Id == table ? found with { Rows = change(found.Rows) } : block);

    private static DocumentSet WithBlocks(DocumentSet set, Func<Block, Block> change) => set with
    {
        Pages =
        [
            .. set.Pages.Select(page => page with
            {
                Sections = [.. page.Sections.Select(part => new Section(part.Id, part.Title, [.. part.Blocks.Select(change)]))],
            }),
        ],
    };
}
