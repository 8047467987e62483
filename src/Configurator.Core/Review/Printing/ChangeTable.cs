using System.Collections.Immutable;
using System.Text;

namespace Configurator.Core.Review.Printing;

/// <summary>Changes of a kind as a Markdown table; columns that would be empty are left out.</summary>
internal static class ChangeTable
{
    private const int DetailsMax = 12;

    private static readonly (string Title, Func<Change, string> Of)[] Columns =
    [
        ("Machine", change => change.Machine is { } machine && change.Subject != $"`{machine}`" ? $"`{machine}`" : ""),
        ("What", change => change.Subject),
        ("Before", change => change.Before),
        ("Now", change => change.After),
        ("In", change => change.Where),
        ("Remark", change => change.Remark),
    ];

    public static void Append(StringBuilder text, ImmutableArray<Change> changes)
    {
        var columns = Columns.Where(column => changes.Any(change => column.Of(change).Length > 0)).ToList();
        text.Append("| ")
            .AppendJoin(" | ", columns.Select(column => Title(column.Title, changes[0].Kind)))
            .Append(" |\n");
        text.Append("| ").AppendJoin(" | ", columns.Select(_ => "---")).Append(" |\n");
        foreach (var change in changes)
        {
            text.Append("| ").AppendJoin(" | ", columns.Select(column => Cell(column.Of(change)))).Append(" |\n");
        }

        foreach (var change in changes.Where(change => !change.Details.IsEmpty))
        {
            text.Append('\n').Append(MarkdownText.Of(change.Subject)).Append(":\n\n");
            AppendDetails(text, change, "");
        }
    }

    private static string Title(string title, ChangeKind kind) =>
        kind.Compared.Length == 0 || title is not ("Before" or "Now")
            ? title
            : $"{kind.Compared} {title.ToLowerInvariant()}";

    public static void AppendDetails(StringBuilder text, Change change, string indent)
    {
        foreach (var detail in change.Details.Take(DetailsMax))
        {
            text.Append(indent).Append("- ").Append(MarkdownText.Of(detail, lengthMax: 800)).Append('\n');
        }
    }

    private static string Cell(string text) => text.Length == 0 ? "–" : MarkdownText.Of(text);
}
