using System.Text;
using Configurator.Site.Inspecting;
using Configurator.Site.Markup;

namespace Configurator.Site.Tests.Rendering;

/// <summary>Note, template and inspection in a row, as a publish runs them.</summary>
public class WholeSiteTests
{
    private const string Layout = """
        @model Crate
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <title>@Model.Title</title>
        <link rel="stylesheet" href="assets/site.css">
        </head>
        <body>
        <main id="main">
        <h1>@Model.Title</h1>
        @RenderBody()
        </main>
        </body>
        </html>
        """;

    private const string Page = """
        @model Crate
        @{ Layout = "_Layout.cshtml"; }
        <h2 id="slots">Slots</h2>
        <table>
          <caption>Slots</caption>
          <thead><tr><th scope="col">Slot</th><th scope="col">Inside</th></tr></thead>
          <tbody>
            @foreach (var slot in Model.Slots)
            {
              <tr><th scope="row">@slot.Name</th><td>@slot.Inner.Length</td></tr>
            }
          </tbody>
        </table>
        <h2 id="notes">Notes</h2>
        @Model.Notes
        """;

    private const string Note = """
        # Packing

        See the [slots](#slots) of the [other crate](b.html#slots).

        | slot | holds |
        |------|------:|
        | X1   | 3     |

        ## By hand

        1. open
        2. pack

        > keep dry
        """;

    [Fact]
    public void A_site_of_sound_parts_is_sound()
    {
        var site = Publish(Note, Page);
        Assert.Empty(site.Diagnostics.Select(it => $"{it.Span} {it.Message}"));
        Assert.Equal(["a.html", "assets/site.css", "b.html"], site.Value.Files.Keys);
    }

    [Fact]
    public void A_broken_link_of_a_note_is_found_on_every_page_that_shows_it() => Assert.Equal(
        ["_site/a.html: there is no file `c.html`", "_site/b.html: there is no file `c.html`"],
        Publish("See [c](c.html).", Page).Diagnostics.Select(it => $"{it.Span.Path}: {it.Message}"));

    [Fact]
    public void A_mistake_of_the_template_is_found_on_the_finished_page() => Assert.Equal(
        ["CFG6005", "CFG6005"],
        Publish(Note, Page.Replace("<td>@slot.Inner.Length</td>", "", StringComparison.Ordinal))
            .Diagnostics.Where(it => it.Span.Path == "_site/a.html").Select(it => it.Rule.Code));

    // The same input gives the same bytes, in whatever order and on whatever thread the pages are made.
    [Fact]
    public void Publishing_again_gives_the_same_bytes()
    {
        var first = Publish(Note, Page).Value.Files;
        var second = Publish(Note, Page).Value.Files;
        Assert.All(first, file => Assert.True(file.Value.Span.SequenceEqual(second[file.Key].Span), file.Key));
    }

    private static Core.Diagnostics.Outcome<SiteFiles> Publish(string note, string page)
    {
        var notes = MarkdownRenderer.Render(note, "options/crate.md", firstLine: 1, belowLevel: 2);
        Assert.Empty(notes.Diagnostics);
        var crate = Pages.Crate with { Notes = notes.Value };
        return Pages.Renderer(("Page.cshtml", page), ("_Layout.cshtml", Layout))
            .RenderAll(
            [
                new("a.html", "Page.cshtml", crate),
                new("b.html", "Page.cshtml", crate with { Title = "Film <sensor>" }),
            ])
            .Then(site => new Core.Diagnostics.Outcome<SiteFiles>(site.With(
                [new("assets/site.css", Encoding.UTF8.GetBytes("main { max-width: 60em }\n"))])))
            .Then(Inspector.Inspect);
    }
}
