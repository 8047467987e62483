using System.Collections.Immutable;
using System.Text;

namespace Configurator.Core.Review.Printing;

/// <summary>Changes of a kind as a Markdown list, with their details below.</summary>
internal static class ChangeList
{
    public static void Append(StringBuilder text, ImmutableArray<Change> changes)
    {
        foreach (var change in changes)
        {
            text.Append("- ").Append(MarkdownText.Of(change.Sentence, lengthMax: 800)).Append('\n');
            ChangeTable.AppendDetails(text, change, "  ");
        }
    }
}
