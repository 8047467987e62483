using Configurator.Core.Sources;
using Markdig.Syntax;
using MarkdownSpan = Markdig.Syntax.SourceSpan;
using SourceSpan = Configurator.Core.Sources.SourceSpan;

namespace Configurator.Site.Markup;

/// <summary>A piece of Markdown and where in its file it starts.</summary>
internal sealed record Prose(SourceText Text, int FirstLine)
{
    public SourceSpan Start => new(Text.Path, FirstLine, 1, 0);

    public SourceSpan SpanOf(MarkdownObject part) => SpanOf(part.Span);

    /// <summary>The part's characters, as far as they stand on its first line.</summary>
    private SourceSpan SpanOf(MarkdownSpan part)
    {
        var text = Text.Text.AsSpan();
        var start = Math.Clamp(part.Start, 0, text.Length);
        var before = text[..start];
        var column = start - (before.LastIndexOf('\n') + 1) + 1;
        var rest = text[start..Math.Clamp(part.End + 1, start, text.Length)];
        var lineEnd = rest.IndexOf('\n');
        return new(Text.Path, FirstLine + before.Count('\n'), column, lineEnd < 0 ? rest.Length : lineEnd);
    }
}
