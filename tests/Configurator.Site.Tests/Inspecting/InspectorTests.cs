using Configurator.Core.Diagnostics;
using Configurator.Site.Inspecting;
using static Configurator.Site.Tests.Inspecting.Finished;

namespace Configurator.Site.Tests.Inspecting;

public class InspectorTests
{
    private static readonly (string Path, string Text)[] Many =
    [
        .. Enumerable.Range(0, 60).Select(i => (
            $"p{i:D2}.html", Page(
                $"<a href=\"p{i + 1:D2}.html#x\">x</a><h3 id=\"x\">y</h3><img src=\"{i}.png\">", $"Page {i}"))),
    ];

    [Fact]
    public void The_site_is_handed_on_as_it_is()
    {
        var site = Files(("a.html", Page("")));
        Assert.Same(site, Inspector.Inspect(site).Value);
    }

    [Fact]
    public void An_empty_site_is_sound() => Assert.Empty(Inspector.Inspect(SiteFiles.Empty).Diagnostics);

    [Fact]
    public void Diagnostics_come_in_the_order_of_their_places()
    {
        var found = Inspect(Many);
        Assert.Equal(Diagnostic.InOrder(found), found);
    }

    // Law: how the pages are shared out among threads must not show.
    [Fact]
    public void Inspecting_again_says_the_same()
    {
        var first = Inspect(Many).Select(Line).ToArray();
        for (var round = 0; round < 5; round++)
        {
            Assert.Equal(first, Inspect(Many.Reverse()).Select(Line));
        }
    }

    [Fact]
    public void Every_mistake_of_every_page_is_reported_in_one_run() => Assert.Equal(
        ["CFG6001", "CFG6004", "CFG6009"],
        Inspect(Many).Select(it => it.Rule.Code).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));

    // A mistake in a layout stands on each of a thousand pages.
    [Fact]
    public void What_repeats_is_listed_some_times_and_then_counted()
    {
        var alike = Inspect(Many).Where(it => it.Rule.Code == "CFG6004").ToArray();
        Assert.Equal(Repeats.ListedMax, alike.Length);
        Assert.Equal("and in 40 further places", Assert.Single(alike[^1].Notes).Message);
        Assert.All(alike[..^1], it => Assert.Empty(it.Notes));
    }

    [Fact]
    public void Long_lines_and_characters_beyond_the_basic_plane_do_not_shift_places()
    {
        var filler = new string('x', 70_000);
        var found = Assert.Single(Inspect(("a.html", Page($"<p>😀{filler}</p><h3>y</h3>"))));
        Assert.Equal("<p>😀</p>".Length + filler.Length + 1, found.Span.Column);
    }

    private static string Line(Diagnostic diagnostic) =>
        $"{diagnostic.Span} {diagnostic.Rule.Code} {diagnostic.Message}";
}
