using System.Text;
using Configurator.Site.Inspecting;

namespace Configurator.Site.Tests.Downloads;

/// <summary>Pages and downloads are held against each other; whatever is changed in one of them is noticed.</summary>
public class DownloadChecksTests
{
    [Fact]
    public void All_files_of_a_site_say_the_same() => Assert.Empty(DownloadChecks.Check(Published.Documents, Published.Site));

    [Fact]
    public void A_row_taken_out_of_a_csv_file_is_noticed() => Assert.Equal(
        "table `plug-list`: it has ",
        Fault("tables/wiring-plug-list.csv", text => text[..(text.TrimEnd('\n').LastIndexOf('\n') + 1)])[..26]);

    [Fact]
    public void A_row_taken_out_of_a_page_is_noticed() => Assert.Contains(
        "plug-list", Fault("wiring.html", text => Without(text, "<tr", "</tr>", "plug-list-table")), StringComparison.Ordinal);

    [Fact]
    public void A_cell_changed_in_the_json_file_is_noticed() => Assert.Equal(
        "table `trunk-socket`: row 5, column 1 says `=TRUNK-XD1:9` and not `=TRUNK-XD1:5`",
        Fault($"{Published.Set.Name}.json", text => text.Replace("\"=TRUNK-XD1:5\"", "\"=TRUNK-XD1:9\"", StringComparison.Ordinal)));

    [Fact]
    public void A_workbook_of_other_tables_is_noticed()
    {
        var fewer = Published.Set with { Pages = [.. Published.Set.Pages.Where(page => !page.Path.EndsWith("parts.html", StringComparison.Ordinal))] };
        var site = new SiteFiles(Published.Site.Files.SetItem(Published.Set.Workbook, Site.Downloads.Workbook.Of(fewer)));
        Assert.NotEmpty(DownloadChecks.Check(Published.Documents, site));
    }

    private static string Without(string text, string start, string end, string after)
    {
        var body = text.IndexOf("<tbody>", text.IndexOf($"id=\"{after}\"", StringComparison.Ordinal), StringComparison.Ordinal);
        var from = text.IndexOf(start, body, StringComparison.Ordinal);
        var to = text.IndexOf(end, from, StringComparison.Ordinal) + end.Length;
        return text[..from] + text[to..];
    }

    private static string Fault(string file, Func<string, string> change)
    {
        var path = Published.Set.Folder + file;
        var was = Encoding.UTF8.GetString(Published.File(path).Span);
        var now = change(was);
        Assert.NotEqual(was, now);
        var site = new SiteFiles(Published.Site.Files.SetItem(path, Encoding.UTF8.GetBytes(now)));
        return Assert.Single(DownloadChecks.Check(Published.Documents, site)).Message;
    }
}
