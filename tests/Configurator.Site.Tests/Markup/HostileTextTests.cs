using System.Collections.Immutable;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Configurator.Site.Markup;
using Configurator.Site.Tests.Rendering;
using CsCheck;

namespace Configurator.Site.Tests.Markup;

/// <summary>Whatever is put together from hostile pieces, only what a note needs comes out.</summary>
public class HostileTextTests
{
    private static readonly ImmutableHashSet<string> Elements =
    [
        "p", "h3", "h4", "h5", "h6", "ul", "ol", "li", "table", "caption", "thead", "tbody", "tr", "th", "td", "code",
        "pre", "em", "strong", "a", "img", "br", "hr", "dl", "dt", "dd", "blockquote",
    ];

    private static readonly ImmutableHashSet<string> Attributes =
        ["href", "src", "alt", "title", "scope", "start", "colspan", "rowspan"];

    private static Gen<string> Notes { get; } = Pieces.Text(
        countMax: 30,
        "<script>alert(1)</script>", "<img src=x onerror=alert(1)>", "<b onclick='x'>", "</p>", "<!--", "-->", "<?php",
        "<![CDATA[", "[x](javascript:alert(1))", "[x](java&#10;script:a)", "[x](//e.org)", "![x](data:text/html,a)",
        "<javascript:a>", "[x](y.html)", "[r]", "\n[r]: vbscript:a\n", "{onclick=a}", "{#id .class}", "\"", "'", "`",
        "``",
        "*", "_", "# ", "## ", "> ", "- ", "1. ", "|", "\n", "\n\n", "| a | b |\n|---|---|\n", "&lt;",
        "&colon;", "&#0;",
        "\\", "\t", "    ", "```\n", ":   ", "text", "ü", "😀", "\u0001");

    [Fact]
    public void No_element_or_attribute_beyond_the_list_comes_out() => Notes.Sample(note =>
    {
        foreach (var element in ElementsIn(note))
        {
            Assert.Contains(element.LocalName, Elements);
            Assert.All(element.Attributes, attribute => Assert.Contains(attribute.Name, Attributes));
        }
    });

    [Fact]
    public void No_link_leads_elsewhere_than_allowed() => Notes.Sample(note =>
    {
        foreach (var element in ElementsIn(note))
        {
            foreach (var target in new[] { element.GetAttribute("href"), element.GetAttribute("src") }.OfType<string>())
            {
                Assert.Null(LinkPolicy.Refusal(target, element.LocalName == "img"));
            }
        }
    });

    // Law: sanitising what is clean changes nothing.
    [Fact]
    public void What_came_out_stays_as_it_is() => Notes.Sample(note =>
    {
        var html = Note.Read(note).Value.Html;
        Assert.Equal(html, Sanitiser.Clean(html).Html);
    });

    // Law: below a heading comes at most the next lower one.
    [Fact]
    public void Headings_never_skip_a_level() => Notes.Sample(note =>
    {
        var last = 2;
        foreach (var heading in ElementsIn(note).Where(element => element.LocalName is ['h', >= '1' and <= '6']))
        {
            var level = heading.LocalName[1] - '0';
            Assert.InRange(level, 3, last + 1);
            last = level;
        }
    });

    [Fact]
    public void Every_complaint_has_a_place_inside_the_note() => Notes.Sample(note =>
    {
        var lines = note.ReplaceLineEndings("\n").Split('\n');
        foreach (var diagnostic in Note.Read(note).Diagnostics)
        {
            Assert.InRange(diagnostic.Span.Line, 10, 9 + lines.Length);
            Assert.InRange(
                diagnostic.Span.Column + diagnostic.Span.Length, 1, lines[diagnostic.Span.Line - 10].Length + 1);
        }
    });

    private static IEnumerable<IElement> ElementsIn(string note) =>
        new HtmlParser().ParseDocument(
            "<!DOCTYPE html><body>" + Note.Read(note).Value.Html).Body!.QuerySelectorAll("*");
}
