using Configurator.Cli.Tests.Disk;
using Configurator.Cli.Tests.Support;
using Microsoft.Playwright;

namespace Configurator.Cli.Tests.Browser.Picking;

/// <summary>An order is picked, mended, saved and accepted; opened from a folder.</summary>
[Collection(OneBrowser.Name)]
public sealed class OrderTests(Chromium chromium)
{
    [Fact]
    public async Task An_impossible_order_is_mended_saved_and_accepted_by_the_check()
    {
        var desk = await Desk.OpenAsync(chromium);
        await desk.TakeAsync("precut-lids", "hot-fill");
        Assert.Equal("Cannot be ordered", await desk.StateAsync());
        Assert.Contains("Pre-cut lids lift from a rim", await desk.Page.Locator(".problem").InnerTextAsync(), StringComparison.Ordinal);

        await desk.PressAsync("leave out Pre-cut lids");
        Assert.Equal("Not complete yet", await desk.StateAsync());
        await desk.TakeAsync("plain-lid-film", "piston-doser", "market-european");
        await desk.Control("doser-heads").SelectOptionAsync("2");
        Assert.Equal("Allowed", await desk.StateAsync());

        var file = await SaveAsync(desk, "hot-trial", "Hot pudding, \"trial\"");

        using var folder = new TempFolder();
        Repository.CopyDemo(folder.Root);
        folder.Write("machines/pantry-four/configurations/hot-trial.yaml", file);
        var ran = Tool.RunProgram("check", "--catalogue", folder.Root);
        Assert.True(ran.ExitCode == ExitCodes.Fine, file + ran.Output + ran.Errors);
        Assert.Contains("14 configurations", ran.Output, StringComparison.Ordinal);
        Assert.Empty(desk.Complaints);
    }

    // What comes with an option is not written: the definitions add it again.
    [Fact]
    public async Task The_file_names_what_was_ordered_and_not_what_comes_with_it()
    {
        var desk = await Desk.OpenAsync(chromium, "#v=1&with=printed-lid-film,piston-doser,doser-heads:2,supply-400v-50hz,market-european");

        var file = await SaveAsync(desk, "printed-trial", "Trial");

        Assert.Equal(
            """
            # yaml-language-server: $schema=../../../site-templates/schemas/configuration.v1.schema.json
            configuration: printed-trial
            machine: pantry-four
            title: "Trial"
            document: P4-201
            options:
              - market-european
              - piston-doser
              - printed-lid-film
              - supply-400v-50hz
            quantities:
              doser-heads: 2
            revision: A

            """,
            file);
        Assert.Contains("Lid print-mark sensor (included)", await desk.TakenAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_is_not_saved_under_a_name_that_is_taken()
    {
        var desk = await Desk.OpenAsync(chromium, "#v=1&with=printed-lid-film,piston-doser,doser-heads:2,market-european");
        await desk.PressAsync("Save as configuration");
        await desk.Page.GetByLabel("Id, also the name of the file").FillAsync("classic-yoghurt");
        await desk.PressAsync("Save file");

        Assert.Equal("There is a configuration classic-yoghurt already.", await desk.Page.GetByRole(AriaRole.Alert).InnerTextAsync());
    }

    [Fact]
    public async Task Allowed_checked_and_released_are_told_apart()
    {
        var desk = await Desk.OpenAsync(chromium);
        await desk.PressAsync("Start from it");
        Assert.Equal("Released", await desk.StateAsync());
        Assert.Equal(3, await desk.Page.Locator(".standing-words .is-so").CountAsync());

        await desk.TakeAsync("remote-access");
        Assert.Equal("Allowed", await desk.StateAsync());
        Assert.Equal(1, await desk.Page.Locator(".standing-words .is-so").CountAsync());
    }

    // The checked set is engineered, but nobody released it.
    [Fact]
    public async Task A_member_of_the_checked_set_is_checked_and_not_released()
    {
        var desk = await Desk.OpenAsync(chromium);
        var fragment = await desk.Page.EvaluateAsync<string>(
            """
            () => {
              const data = configuratorOrder, pairs = data.checked[0], all = [];
              for (let at = 0; at < pairs.length; at += 2) { all.push(data.options[pairs[at]].id + ":" + pairs[at + 1]); }
              return "#v=1&with=" + all.join(",");
            }
            """);
        await desk.GoAsync(fragment);

        Assert.Equal("Checked", await desk.StateAsync());
    }

    [Fact]
    public async Task What_is_ruled_out_says_why_and_is_one_click_away()
    {
        var desk = await Desk.OpenAsync(chromium, "#v=1&with=line-speed-package,remote-access");
        await desk.Row("hot-fill").GetByRole(AriaRole.Button, new() { Name = "Why not?" }).ClickAsync();
        Assert.Contains("slosh over the rim", await desk.Row("hot-fill").InnerTextAsync(), StringComparison.Ordinal);

        await desk.PressAsync("leave out Line-speed package, add Hot-fill");
        var taken = await desk.TakenAsync();
        Assert.Contains("Hot-fill", taken, StringComparison.Ordinal);
        Assert.Contains("Remote access", taken, StringComparison.Ordinal);
        Assert.DoesNotContain("Line-speed", taken, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_comes_with_an_option_says_with_which()
    {
        var desk = await Desk.OpenAsync(chromium, "#v=1&with=printed-lid-film");

        Assert.Contains("comes with Printed lid film", await desk.Row("film-unit").InnerTextAsync(), StringComparison.Ordinal);
        Assert.True(await desk.Control("film-unit").IsCheckedAsync());
    }

    [Fact]
    public async Task Back_in_the_browser_takes_back_the_last_click()
    {
        var desk = await Desk.OpenAsync(chromium);
        await desk.TakeAsync("remote-access", "overcaps");

        await desk.Page.GoBackAsync();

        Assert.False(await desk.Control("overcaps").IsCheckedAsync());
        Assert.True(await desk.Control("remote-access").IsCheckedAsync());
    }

    // Source of the limit: what a page may weigh on a slow stick, 200 KB a machine; common practice, no source.
    [Theory]
    [InlineData("pantry-four")]
    [InlineData("pantry-eight")]
    [InlineData("spout-two")]
    public void The_rules_of_a_machine_stay_small(string machine)
    {
        var script = File.ReadAllText(Path.Combine(chromium.Site, "machines", machine, "order-rules.js"));

        Assert.InRange(script.Length, 1, 200_000);
        Assert.All(script, letter => Assert.True(letter is '\n' or (>= ' ' and <= '~' and not '<'), $"{(int)letter}"));
    }

    private static async Task<string> SaveAsync(Desk desk, string id, string title)
    {
        await desk.PressAsync("Save as configuration");
        await desk.Page.GetByLabel("Id, also the name of the file").FillAsync(id);
        await desk.Page.GetByLabel("Title").FillAsync(title);
        var download = await desk.Page.RunAndWaitForDownloadAsync(() => desk.PressAsync("Save file"));
        Assert.Equal(id + ".yaml", download.SuggestedFilename);
        return (await File.ReadAllTextAsync(await download.PathAsync())).Replace("\r\n", "\n", StringComparison.Ordinal);
    }
}
