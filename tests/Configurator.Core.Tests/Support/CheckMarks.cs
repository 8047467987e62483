using System.Collections.Immutable;
using System.Text;
using Configurator.Core.Sources;

namespace Configurator.Core.Tests.Support;

/// <summary>Text with the places taken out that a test marks: <c>[|...|]</c> a diagnostic's, <c>(|...|)</c> a note's.</summary>
/// <param name="Places">In the order of the text. A place that goes on over several lines ends with its first.</param>
internal sealed record CheckMarks(string Text, ImmutableArray<SourceSpan> Places, ImmutableArray<SourceSpan> NotePlaces)
{
    public static CheckMarks Read(string path, string marked)
    {
        var text = new StringBuilder();
        var found = new List<(bool IsNote, SourceSpan Span)>();
        var open = new Stack<int>();
        for (var i = 0; i < marked.Length; i++)
        {
            var two = marked.AsSpan(i, Math.Min(2, marked.Length - i));
            if (two is "[|" or "(|")
            {
                open.Push(text.Length);
                i++;
            }
            else if (two is "|]" or "|)" && open.Count > 0)
            {
                found.Add((two is "|)", SpanOf(path, text.ToString(), open.Pop())));
                i++;
            }
            else
            {
                text.Append(marked[i]);
            }
        }

        return new(
            text.ToString(),
            [.. found.Where(mark => !mark.IsNote).Select(mark => mark.Span).Order()],
            [.. found.Where(mark => mark.IsNote).Select(mark => mark.Span).Order()]);
    }

    /// <summary>From there to the end of the text so far.</summary>
    private static SourceSpan SpanOf(string path, string text, int start)
    {
        var before = text.AsSpan(0, start);
        var marked = text.AsSpan(start);
        var lineEnd = marked.IndexOf('\n');
        return new(
            path, 1 + before.Count('\n'), start - before.LastIndexOf('\n'), lineEnd < 0 ? marked.Length : lineEnd);
    }
}
