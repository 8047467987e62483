using System.Collections.Immutable;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Dom.Events;
using AngleSharp.Html.Parser;
using Configurator.Core.Sources;

namespace Configurator.Site.Inspecting;

/// <summary>A page of the site as a browser reads it, each element with its place in the text.</summary>
internal sealed partial class HtmlPage
{
    private readonly ImmutableArray<int> _lineStarts;

    private HtmlPage(string path, SourceText text)
    {
        Path = path;
        Text = text;
        _lineStarts = [.. LineStarts(text.Text)];
        (Document, Errors) = Parse(text.Text);
        Elements = [.. Document.All];
    }

    /// <summary>From the root of the site.</summary>
    public string Path { get; }

    public SourceText Text { get; }

    public IHtmlDocument Document { get; }

    /// <summary>All of them, in the order of the text.</summary>
    public ImmutableArray<IElement> Elements { get; }

    /// <summary>What the HTML Living Standard calls parse errors.</summary>
    public ImmutableArray<(string Message, SourceSpan Span)> Errors { get; }

    public SourceSpan Start => SourceSpan.FileStart(Text.Path);

    /// <summary>Null where the bytes are not UTF-8.</summary>
    public static HtmlPage? Read(string path, ReadOnlyMemory<byte> bytes) =>
        SourceText.Decode(new(SitePath.Shown(path), bytes)) is { } text ? new(path, text) : null;

    /// <summary>
    /// The element's start tag up to its name; an element that nobody wrote has the place of the one around it.
    /// </summary>
    public SourceSpan SpanOf(IElement element)
    {
        for (var written = element; written is not null; written = written.ParentElement)
        {
            if (OffsetOf(written) is >= 0 and var offset)
            {
                return SpanAt(offset, written.LocalName.Length + 1);
            }
        }

        return Start;
    }

    private int OffsetOf(IElement element) =>
        element.SourceReference?.Position.Position is > 0 and var position ? position - 1
        : element.LocalName == "svg" ? OffsetOfDrawing(element)
        : -1;

    /// <summary>The parser keeps no place for the root of a drawing: as many drawings, as many start tags.</summary>
    private int OffsetOfDrawing(IElement drawing)
    {
        var drawings = Document.GetElementsByTagName("svg");
        var tags = Drawing().Matches(Text.Text);
        return tags.Count == drawings.Length ? tags[drawings.Index(drawing)].Index : -1;
    }

    [GeneratedRegex(@"<svg\b", RegexOptions.IgnoreCase | RegexOptions.NonBacktracking)]
    private static partial Regex Drawing();

    private static IEnumerable<int> LineStarts(string text)
    {
        yield return 0;
        for (var end = text.IndexOf('\n', StringComparison.Ordinal); end >= 0; end = text.IndexOf('\n', end + 1))
        {
            yield return end + 1;
        }
    }

    private SourceSpan SpanAt(int offset, int length)
    {
        var found = _lineStarts.BinarySearch(offset);
        var line = found >= 0 ? found : ~found - 1;
        return new(Text.Path, line + 1, offset - _lineStarts[line] + 1, length);
    }

    private (IHtmlDocument Document, ImmutableArray<(string Message, SourceSpan Span)> Errors) Parse(string text)
    {
        var errors = ImmutableArray.CreateBuilder<(string, SourceSpan)>();
        var parser = new HtmlParser(new HtmlParserOptions { IsKeepingSourceReferences = true });
        parser.Error += (_, what) =>
        {
            var error = (HtmlErrorEvent)what;
            errors.Add((error.Message, SpanAt(Math.Max(error.Position.Position - 1, 0), 0)));
        };
        return (parser.ParseDocument(text), errors.ToImmutable());
    }
}
