using Microsoft.Playwright;

namespace Configurator.Cli.Tests.Browser.Picking;

/// <summary>The page that picks an order, as its reader uses it.</summary>
internal sealed class Desk(Chromium chromium)
{
    private WatchedPage _watched = null!;

    public IPage Page => _watched.Page;

    public IList<string> Complaints => _watched.Complaints;

    /// <summary>What the page says of the order as a whole.</summary>
    public Task<string> StateAsync() => Page.Locator(".state b").InnerTextAsync();

    public ILocator Row(string option) => Page.Locator($"[data-option='{option}']");

    public ILocator Control(string option) => Page.Locator($"#take-{option}");

    public static async Task<Desk> OpenAsync(
        Chromium chromium,
        string fragment = "",
        string machine = "pantry-four",
        BrowserNewContextOptions? options = null)
    {
        var desk = new Desk(chromium);
        desk._watched = await chromium.OpenAsync(options);
        desk.Page.SetDefaultTimeout(5000);
        await desk.GoAsync(fragment, machine);
        return desk;
    }

    public Task GoAsync(string fragment, string machine = "pantry-four") =>
        Page.GotoAsync(new Uri(Path.Combine(chromium.Site, "machines", machine, "order.html")).AbsoluteUri + fragment);

    public async Task TakeAsync(params string[] options)
    {
        foreach (var option in options)
        {
            await Control(option).CheckAsync();
        }
    }

    public Task PressAsync(string name) => Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true }).ClickAsync();

    /// <summary>Titles of what is taken, in the words of the list.</summary>
    public async Task<string> TakenAsync() => string.Join("; ", await Page.Locator(".taken li").AllInnerTextsAsync());

    public string Fragment => new Uri(Page.Url).Fragment;
}
