using Configurator.Cli.Tests.Disk;
using Configurator.Cli.Tests.Support;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Configurator.Cli.Tests.Browser.Picking;

/// <summary>The page serves every reader: without scripts, by keyboard, by ear, on a phone, and with titles made to do
/// harm.</summary>
[Collection(OneBrowser.Name)]
public sealed class ReaderTests(Chromium chromium)
{
    private const string Impossible = "#v=1&with=hot-fill,line-speed-package,precut-lids&beside=@classic-yoghurt";
    private const string Allowed = "#v=1&with=printed-lid-film,piston-doser,doser-heads:2,market-north-american,supply-480v-60hz,hot-wash-upgrade,uv-disinfection";

    [Fact]
    public async Task Without_scripts_the_page_lists_every_option_with_its_rules_and_every_published_configuration()
    {
        var desk = await Desk.OpenAsync(chromium, options: new() { JavaScriptEnabled = false });

        Assert.Equal(46, await desk.Page.Locator(".pick").CountAsync());
        Assert.Equal(0, await desk.Page.Locator("main input, main select, main button").CountAsync());
        Assert.Contains(
            "The ink coder is made for splashes",
            await desk.Row("hot-wash-upgrade").Locator("details").TextContentAsync(),
            StringComparison.Ordinal);
        Assert.Equal(4, await desk.Page.Locator("#configurations-table tbody tr").CountAsync());
        Assert.Empty(desk.Complaints);
    }

    // Source: WCAG 2.2 A and AA, and common practice, as the axe rules have them.
    [Theory]
    [InlineData(Impossible, ColorScheme.Light)]
    [InlineData(Allowed, ColorScheme.Dark)]
    public async Task Nothing_on_the_page_is_in_the_way_of_anybody(string fragment, ColorScheme scheme)
    {
        var desk = await Desk.OpenAsync(chromium, fragment, options: new() { ColorScheme = scheme });
        await desk.Page.Locator("details").EvaluateAllAsync<object>("all => all.forEach(one => { one.open = true; })");
        foreach (var why in await desk.Page.Locator(".why:visible").AllAsync())
        {
            await why.ClickAsync();
        }

        await CheckAsync(desk);
    }

    [Fact]
    public async Task Nothing_in_a_dialog_is_in_the_way_of_anybody()
    {
        var desk = await Desk.OpenAsync(chromium, Allowed);
        await desk.PressAsync("Save as configuration");

        await CheckAsync(desk);
    }

    [Fact]
    public async Task An_order_can_be_picked_by_keyboard_and_is_told_to_those_who_listen()
    {
        var desk = await Desk.OpenAsync(chromium);
        await desk.Control("precut-lids").FocusAsync();
        await desk.Page.Keyboard.PressAsync("ArrowDown");
        await desk.Page.Keyboard.PressAsync("ArrowDown");
        Assert.True(await desk.Control("printed-lid-film").IsCheckedAsync());
        Assert.Equal("take-printed-lid-film", await desk.Page.EvaluateAsync<string>("() => document.activeElement.id"));
        var told = await desk.Page.Locator("#told").TextContentAsync();
        Assert.StartsWith("Not complete yet. Also included: Lid print-mark sensor.", told, StringComparison.Ordinal);
        Assert.EndsWith("configurations left.", told, StringComparison.Ordinal);

        await desk.Control("hot-fill").FocusAsync();
        await desk.Page.Keyboard.PressAsync("Space");
        Assert.Contains("Hot-fill", await desk.TakenAsync(), StringComparison.Ordinal);
    }

    // The button that was pressed is gone with what it mended; a keyboard must not be lost with it.
    [Fact]
    public async Task After_a_repair_the_keyboard_is_at_the_order()
    {
        var desk = await Desk.OpenAsync(chromium, Impossible);
        await desk.Page.Locator(".repairs button").First.FocusAsync();
        await desk.Page.Keyboard.PressAsync("Enter");

        Assert.Equal("state", await desk.Page.EvaluateAsync<string>("() => document.activeElement.id"));
    }

    // Source: WCAG 2.2, 1.4.10 Reflow: 320 CSS pixels; data tables are exempt, so they sit in frames of their own.
    [Fact]
    public async Task On_a_phone_only_tables_scroll_sideways()
    {
        var desk = await Desk.OpenAsync(chromium, Impossible, options: new() { ViewportSize = new() { Width = 320, Height = 640 } });

        Assert.Equal(320, await desk.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
    }

    [Fact]
    public async Task What_is_not_released_for_the_market_of_the_order_is_shown_as_such()
    {
        var desk = await Desk.OpenAsync(chromium, Allowed);

        var taken = await desk.TakenAsync();
        Assert.Contains("Ultraviolet treatment (not released)", taken, StringComparison.Ordinal);
        Assert.Contains("Hot high-pressure wash upgrade (released for European market only)", taken, StringComparison.Ordinal);
        await desk.TakeAsync("market-european");
        await desk.TakeAsync("supply-400v-50hz");
        Assert.DoesNotContain("European market only", await desk.TakenAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_summary_states_the_order_and_a_question_goes_with_it()
    {
        var desk = await Desk.OpenAsync(chromium, Allowed);
        await desk.PressAsync("Ask engineering");
        await desk.Page.GetByLabel("Question").FillAsync("Can this go to Norway?");

        var text = await desk.Page.GetByLabel("Text").InputValueAsync();
        Assert.StartsWith("Pantry Four, machine revision E\n\nState of this order: Allowed.", text, StringComparison.Ordinal);
        Assert.Contains("- Ultraviolet treatment (not released)\n", text, StringComparison.Ordinal);
        Assert.Contains("\nQuestion: Can this go to Norway?\n", text, StringComparison.Ordinal);
        Assert.Contains("order.html#v=1&at=E&was=allowed&with=", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Titles_made_to_do_harm_show_as_text()
    {
        const string Title = "</script><script>window.harm=1</script><img src=x onerror='window.harm=1'>\" & ' \u200f\u05d0\u05d1\u200e `";
        using var folder = new TempFolder();
        Repository.Copy(Path.Combine(Repository.Cases, "base", "input"), folder.Root);
        var option = folder["options/lids/snap-lid.yaml"];
        var lines = (await File.ReadAllLinesAsync(option, TestContext.Current.CancellationToken))
            .Select(line => line.StartsWith("title:", StringComparison.Ordinal) ? $"title: {System.Text.Json.JsonSerializer.Serialize(Title)}" : line);
        await File.WriteAllLinesAsync(option, lines, TestContext.Current.CancellationToken);
        var ran = Tool.Run("publish", "--catalogue", folder.Root, "--to", folder["site"]);
        Assert.True(ran.ExitCode == ExitCodes.Fine, ran.Output + ran.Errors);

        var desk = await Desk.OpenAsync(chromium);
        await desk.Page.GotoAsync(new Uri(folder["site/machines/tray-one/order.html"]).AbsoluteUri + "#v=1&with=snap-lid&beside=@salad");

        Assert.Contains(Title, await desk.TakenAsync(), StringComparison.Ordinal);
        Assert.Contains(Title, await desk.Page.Locator(".beside").InnerTextAsync(), StringComparison.Ordinal);
        Assert.Equal(Title, await desk.Row("snap-lid").Locator("label").InnerTextAsync());
        Assert.Null(await desk.Page.EvaluateAsync<int?>("() => window.harm ?? null"));
        Assert.Empty(desk.Complaints);
    }

    private static async Task CheckAsync(Desk desk)
    {
        var found = await desk.Page.RunAxe();
        Assert.Equal("", string.Join("\n", found.Violations.Select(fault =>
            $"{fault.Id}: {fault.Help}: {string.Join(" | ", fault.Nodes.Take(3).Select(node => node.Html + " " + string.Join(' ', node.Any.Concat(node.All).Concat(node.None).Select(check => check.Message))))}")));
    }
}
