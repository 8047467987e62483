using Markdig.Syntax;

namespace Configurator.Site.Markup;

/// <summary>Gives the headings of a note the levels that they have in the page around it.</summary>
internal static class HeadingNesting
{
    private const int LevelMax = 6;

    /// <summary>The outermost headings come one below the given level, and none skips one.</summary>
    public static void Apply(MarkdownDocument document, int belowLevel)
    {
        var open = new Stack<int>();
        foreach (var heading in document.Descendants<HeadingBlock>())
        {
            while (open.TryPeek(out var above) && above >= heading.Level)
            {
                open.Pop();
            }

            open.Push(heading.Level);
            heading.Level = Math.Min(belowLevel + open.Count, LevelMax);
        }
    }
}
