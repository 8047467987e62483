using Configurator.Core.Sources;

namespace Configurator.Site.Tests.Rendering;

/// <summary>A text with <c>[|...|]</c> around the characters at which a diagnostic is expected.</summary>
internal sealed record Marked(string Text, SourceSpan? Span)
{
    public static Marked Read(string path, string marked, int firstLine = 1)
    {
        var start = marked.IndexOf("[|", StringComparison.Ordinal);
        if (start < 0)
        {
            return new(marked, null);
        }

        var before = marked[..start];
        var inside = marked[(start + 2)..marked.IndexOf("|]", StringComparison.Ordinal)];
        var line = firstLine + before.Count(character => character == '\n');
        var column = start - before.LastIndexOf('\n');
        var after = marked[(start + inside.Length + 4)..];
        return new(before + inside + after, new SourceSpan(path, line, column, inside.Length));
    }
}
