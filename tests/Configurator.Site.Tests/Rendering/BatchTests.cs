using System.Collections.Immutable;
using System.Text;
using Configurator.Site.Rendering;

namespace Configurator.Site.Tests.Rendering;

public class BatchTests
{
    private static readonly (string Key, string Text)[] Templates =
    [
        ("Page.cshtml", """
            @model Crate
            @{ Layout = "_Layout.cshtml"; }
            <h1>@Model.Title</h1>
            @foreach (var slot in Model.Slots) { await IncludeAsync("_Slot.cshtml", slot); }
            @section Foot { <small>@Model.Grams g</small> }
            """),
        ("_Layout.cshtml", "@model Crate\n<title>@Model.Title</title>@RenderBody()@RenderSection(\"Foot\")"),
        ("_Slot.cshtml", "@model Slot\n<i>@Model.Name</i>"),
    ];

    private static readonly ImmutableArray<PageJob> Jobs =
    [
        .. Enumerable.Range(0, 400).Select(i => new PageJob(
            $"crates/{i}.html",
            "Page.cshtml",
            new Crate(
                $"Crate <{i}>", i, [.. Enumerable.Range(0, i % 7).Select(slot => new Slot($"X{i}.{slot}"))], null))),
    ];

    // Law: how the work is shared out must not show in the result.
    [Fact]
    public void Pages_made_in_parallel_equal_pages_made_one_by_one()
    {
        var renderer = Pages.Renderer(Templates);
        var alone = Jobs.ToDictionary(job => job.Path, job => renderer.Render(job.TemplateKey, job.Model).Value.Html);
        for (var round = 0; round < 5; round++)
        {
            var together = renderer.RenderAll(Jobs);
            Assert.Empty(together.Diagnostics);
            Assert.All(
                together.Value.Files, file => Assert.Equal(alone[file.Key], Encoding.UTF8.GetString(file.Value.Span)));
            Assert.Equal(Jobs.Length, together.Value.Files.Count);
        }
    }

    [Fact]
    public void The_order_of_the_jobs_does_not_show_in_the_result()
    {
        var renderer = Pages.Renderer(Templates);
        var forwards = renderer.RenderAll(Jobs).Value.Files;
        var backwards = renderer.RenderAll([.. Jobs.Reverse()]).Value.Files;
        Assert.Equal(forwards.Keys, backwards.Keys);
        Assert.All(forwards, file => Assert.True(file.Value.Span.SequenceEqual(backwards[file.Key].Span)));
    }

    [Fact]
    public void Files_are_in_ordinal_order_of_their_paths()
    {
        var site = Pages.Renderer(Templates).RenderAll([Job("b.html"), Job("a/z.html"), Job("a-b.html")]).Value;
        Assert.Equal(["a-b.html", "a/z.html", "b.html"], site.Files.Keys);
    }

    [Fact]
    public void Two_pages_of_one_path_are_our_mistake_and_throw() => Assert.Throws<ArgumentException>(
        () => Pages.Renderer(Templates).RenderAll([Job("a.html"), Job("a.html")]));

    [Fact]
    public void Pages_have_no_mark_at_their_start_and_no_carriage_returns()
    {
        var windows = Templates.Select(it => (it.Key, it.Text.ReplaceLineEndings("\r\n")));
        var bytes = Pages.Renderer(windows).RenderAll([Job("a.html")]).Value.Files["a.html"];
        Assert.Equal((byte)'<', bytes.Span[0]);
        Assert.DoesNotContain((byte)'\r', bytes.ToArray());
    }

    private static PageJob Job(string path) => new(path, "Page.cshtml", Pages.Crate);
}
