using Microsoft.Playwright;

namespace Configurator.Cli.Tests.Browser;

/// <summary>The published demonstration, opened as people open it: from a folder, in a browser.</summary>
[Collection(OneBrowser.Name)]
public sealed class SiteTests(Chromium chromium)
{
    private string Start => new Uri(Path.Combine(chromium.Site, "index.html")).AbsoluteUri;

    [Fact]
    public async Task Every_page_is_reached_by_links_from_the_first_without_a_complaint_or_an_outside_request()
    {
        var watched = await chromium.OpenAsync();
        var open = new Queue<string>([Start]);
        var seen = new HashSet<string>(open, StringComparer.Ordinal);
        while (open.TryDequeue(out var address))
        {
            await watched.Page.GotoAsync(address);
            var links = await watched.Page.EvalOnSelectorAllAsync<string[]>("a[href]:not([download])", "links => links.map(link => link.href.split('#')[0])");
            foreach (var link in links.Where(link => link.EndsWith(".html", StringComparison.Ordinal) && seen.Add(link)))
            {
                open.Enqueue(link);
            }
        }

        Assert.Empty(watched.Complaints);
        Assert.DoesNotContain(watched.Requests, request => !request.StartsWith(Folder, StringComparison.Ordinal));
        Assert.Equal(Pages().ToList(), seen.Order(StringComparer.Ordinal).ToList(), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("index.html")]
    [InlineData("machines/pantry-four/index.html")]
    [InlineData("machines/pantry-four/configurations/classic-yoghurt/wiring.html")]
    [InlineData("machines/pantry-four/configurations/classic-yoghurt/port-map.html")]
    [InlineData("machines/pantry-four/configurations/classic-yoghurt/sanitation.html")]
    [InlineData("options/hot-fill.html")]
    public async Task On_a_phone_only_tables_and_drawings_scroll_sideways(string path)
    {
        // Source: WCAG 2.2, 1.4.10 Reflow: 320 CSS pixels; data tables are exempt, so they sit in frames of their own.
        var watched = await chromium.OpenAsync(new() { ViewportSize = new() { Width = 320, Height = 640 } });

        await watched.Page.GotoAsync(Folder + path);

        Assert.Equal(320, await watched.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
    }

    [Fact]
    public async Task Without_scripts_every_page_still_says_all_it_has_to_say()
    {
        var watched = await chromium.OpenAsync(new() { JavaScriptEnabled = false });

        await watched.Page.GotoAsync(Folder + "machines/pantry-four/configurations/classic-yoghurt/wiring.html");

        Assert.True(await watched.Page.Locator("tbody tr").CountAsync() > 20);
        Assert.Equal(0, await watched.Page.Locator("tr[hidden]").CountAsync());
        Assert.Empty(watched.Complaints);
    }

    [Fact]
    public async Task A_long_table_can_be_filtered_and_says_how_many_rows_are_left()
    {
        var watched = await chromium.OpenAsync();
        await watched.Page.GotoAsync(Folder + "devices/index.html");

        await watched.Page.GetByLabel("Show rows with").FillAsync("contrast");

        Assert.Equal(1, await watched.Page.Locator("tbody tr:visible").CountAsync());
        Assert.StartsWith("1 of ", await watched.Page.GetByRole(AriaRole.Status).TextContentAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Served_from_a_sub_path_the_same_files_work()
    {
        using var server = new StaticServer(chromium.Site, "/plant/catalogue/");
        var watched = await chromium.OpenAsync();

        await watched.Page.GotoAsync(server.Address + "index.html");
        await watched.Page.Locator("main a[href*='pantry-four']").First.ClickAsync();

        Assert.Equal("Pantry Four", await watched.Page.Locator("h1").TextContentAsync());
        Assert.Empty(watched.Complaints);
        Assert.All(watched.Requests, request => Assert.StartsWith(server.Address, request, StringComparison.Ordinal));
    }

    private string Folder => new Uri(chromium.Site + Path.DirectorySeparatorChar).AbsoluteUri;

    private IEnumerable<string> Pages() => Directory.EnumerateFiles(chromium.Site, "*.html", SearchOption.AllDirectories)
        .Select(path => new Uri(path).AbsoluteUri)
        .Order(StringComparer.Ordinal);
}
