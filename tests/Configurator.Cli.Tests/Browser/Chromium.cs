using Configurator.Cli.Tests.Disk;
using Configurator.Cli.Tests.Support;
using Microsoft.Playwright;

namespace Configurator.Cli.Tests.Browser;

/// <summary>The published demonstration site and an installed Chromium, shared by all browser tests.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private static readonly string[] Places = OperatingSystem.IsWindows()
        ? [@"C:\Program Files\Google\Chrome\Application\chrome.exe", @"C:\Program Files (x86)\Microsoft\Edge\Application\msedge.exe"]
        : ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome", "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome"];

    private static readonly string[] Flags =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
    ];

    private readonly TempFolder _folder = new();
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public string Site => _folder["site"];

    public async ValueTask InitializeAsync()
    {
        var ran = Tool.Run("publish", "--to", Site);
        Assert.True(ran.ExitCode == ExitCodes.Fine, ran.Output + ran.Errors);
        if (Places.FirstOrDefault(File.Exists) is { } program)
        {
            _playwright = await Playwright.CreateAsync();
            _browser = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = program, Args = Flags });
        }
    }

    /// <summary>A new page of its own, watched. Without a browser the test is skipped, but fails in CI.</summary>
    public async Task<WatchedPage> OpenAsync(BrowserNewContextOptions? options = null)
    {
        Assert.True(_browser is not null || Environment.GetEnvironmentVariable("CI") is null, "no browser is installed");
        Assert.SkipWhen(_browser is null, "no Chromium is installed, so this was not tested");
        var context = await _browser!.NewContextAsync(options ?? new());
        return new(await context.NewPageAsync());
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
        _folder.Dispose();
    }
}

/// <summary>A page whose requests and complaints are kept.</summary>
public sealed class WatchedPage
{
    public WatchedPage(IPage page)
    {
        Page = page;
        page.Request += (_, request) => Requests.Add(request.Url);
        page.Console += (_, message) => AddIf(message.Type is "error" or "warning", message.Text);
        page.PageError += (_, error) => Complaints.Add(error);
        page.RequestFailed += (_, request) => Complaints.Add($"{request.Url}: {request.Failure}");
    }

    public IPage Page { get; }

    public IList<string> Requests { get; } = [];

    public IList<string> Complaints { get; } = [];

    private void AddIf(bool isComplaint, string text)
    {
        if (isComplaint)
        {
            Complaints.Add(text);
        }
    }
}
