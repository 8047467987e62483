namespace Configurator.Cli.Tests.Browser.Picking;

/// <summary>An order travels in the address of the page.</summary>
[Collection(OneBrowser.Name)]
public sealed class AddressTests(Chromium chromium)
{
    [Fact]
    public async Task An_order_is_kept_in_the_address_and_read_from_it()
    {
        var desk = await Desk.OpenAsync(chromium);
        await desk.TakeAsync("printed-lid-film", "overcaps");
        await desk.Row("remote-access").GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Without" }).ClickAsync();

        Assert.Equal("#v=1&at=E&was=open&with=overcaps,printed-lid-film&without=remote-access", desk.Fragment);
        var other = await Desk.OpenAsync(chromium, desk.Fragment);
        Assert.Equal(await desk.TakenAsync(), await other.TakenAsync());
        Assert.Contains("left out", await other.Row("remote-access").InnerTextAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("with=speed-package", "“speed-package” is now called Line-speed package.")]
    [InlineData("with=wormhole", "“wormhole” is not offered here and was left out.")]
    [InlineData("with=doser-heads:9", "Separate dosing heads cannot be taken 9 times, only 1 to 4.")]
    [InlineData("with=%3Cb%3Ebold%3C/b%3E", "“<b>bold</b>” is not offered here and was left out.")]
    [InlineData("with=%E0%A4%A", "“%E0%A4%A” is not offered here and was left out.")]
    public async Task What_is_not_as_it_was_is_said(string picks, string notice)
    {
        var desk = await Desk.OpenAsync(chromium, "#v=1&" + picks);

        Assert.Equal(notice, await desk.Page.Locator(".notice").InnerTextAsync());
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task A_link_of_a_later_form_starts_an_empty_order_and_says_so()
    {
        var desk = await Desk.OpenAsync(chromium, "#v=7&with=overcaps");

        Assert.StartsWith("This link has the form 7", await desk.Page.Locator(".notice").InnerTextAsync(), StringComparison.Ordinal);
        Assert.Empty(await desk.TakenAsync());
    }

    [Fact]
    public async Task An_order_that_no_longer_works_says_what_changed_and_how_to_mend_it()
    {
        var desk = await Desk.OpenAsync(chromium, "#v=1&at=B&was=released&with=hot-fill,line-speed-package");

        Assert.Equal(
            "This order was: Released, at machine revision B. With the rules of revision E it no longer works as it is.",
            await desk.Page.Locator(".notice").InnerTextAsync());
        Assert.Equal(2, await desk.Page.Locator(".repairs button").CountAsync());
    }

    // Links within the page move the reader; the order stays in the address.
    [Fact]
    public async Task A_jump_within_the_page_keeps_the_order()
    {
        var desk = await Desk.OpenAsync(chromium, "#v=1&with=overcaps");

        await desk.Page.Locator(".contents a[href='#beside']").ClickAsync();

        await Assertions.EventuallyAsync(() => desk.Fragment.Contains("with=overcaps", StringComparison.Ordinal));
        Assert.True(await desk.Control("overcaps").IsCheckedAsync());
    }

    [Fact]
    public async Task Orders_put_aside_and_published_ones_stand_side_by_side_and_in_the_address()
    {
        var desk = await Desk.OpenAsync(chromium, "#v=1&with=printed-lid-film,piston-doser,doser-heads:2,market-european");
        await desk.Page.Locator(".tools").GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Put this order aside to compare" }).ClickAsync();
        await desk.Page.GetByLabel("Published configuration").SelectOptionAsync("classic-yoghurt");
        await desk.PressAsync("Compare with it");
        await desk.TakeAsync("overcaps");
        var all = await desk.Page.Locator(".beside tbody tr").CountAsync();
        await desk.Page.GetByLabel("Differences only").CheckAsync();

        Assert.Equal(4, await desk.Page.Locator(".beside thead th, .beside thead td").CountAsync());
        Assert.True(await desk.Page.Locator(".beside tbody tr").CountAsync() < all);
        Assert.Contains("Overcaps", await desk.Page.Locator(".beside").InnerTextAsync(), StringComparison.Ordinal);
        var other = await Desk.OpenAsync(chromium, desk.Fragment);
        Assert.Equal(all, await other.Page.Locator(".beside tbody tr").CountAsync());
    }
}
