using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Configurator.Core.Diagnostics;

namespace Configurator.Core.Review.Printing;

/// <summary>A review as Markdown for the summary of a workflow step: verdict first, then the most expensive changes,
/// and never more than such a summary can hold.</summary>
/// <remarks>Source: step summaries of GitHub Actions hold 1 MiB; beyond it nothing is shown at all.</remarks>
public static class ReviewMarkdown
{
    /// <summary>In bytes; leaves room for what the workflow itself says there.</summary>
    public const int BytesMax = 900 << 10;

    private const int OfKindMax = 25;
    private const int FoldedMax = 150;
    private const int OpenMax = 12;

    public static string Of(ReviewReport report, ReviewVerdict verdict, int bytesMax = BytesMax)
    {
        var text = new StringBuilder();
        var said = MarkdownText.Of(verdict.Say(report));
        text.Append(CultureInfo.InvariantCulture, $"## Review: {said}\n\n")
            .Append(
                CultureInfo.InvariantCulture,
                $"From {MarkdownText.Of($"`{report.Before}`")} to {MarkdownText.Of($"`{report.After}`")}.\n"
            );
        List(text, ReviewHeadlines.Of(report));
        if (!report.Limits.IsEmpty)
        {
            text.Append("\nNot compared:\n");
            List(text, report.Limits);
        }

        foreach (var topic in report.Changes.GroupBy(change => change.Kind.Topic))
        {
            text.Append(CultureInfo.InvariantCulture, $"\n### {TopicTitles.Of(topic.Key)}\n");
            foreach (var kind in topic.GroupBy(change => change.Kind))
            {
                Append(text, kind.Key, [.. kind]);
            }
        }

        var unchanged = ReviewHeadlines.Unchanged(report);
        text.Append(unchanged.Length > 0 && !report.Changes.IsEmpty ? $"\n{MarkdownText.Of(unchanged)}.\n" : "");
        return Bounded(text.ToString(), bytesMax);
    }

    private static void List(StringBuilder text, ImmutableArray<string> lines)
    {
        text.Append(lines.IsEmpty ? "" : "\n");
        foreach (var line in lines)
        {
            text.Append(CultureInfo.InvariantCulture, $"- {MarkdownText.Of(line)}\n");
        }
    }

    /// <summary>Notes are folded where they are many; of what weighs more, the worst stand open.</summary>
    private static void Append(StringBuilder text, ChangeKind kind, ImmutableArray<Change> changes)
    {
        var level = changes.Max(change => change.Level);
        var title = string.Create(CultureInfo.InvariantCulture, $"{kind.Title} ({changes.Length})");
        changes = PageGroups.Of(changes);
        var open =
            changes.Length <= OpenMax ? changes.Length
            : level == Severity.Note ? 0
            : OfKindMax;
        var folded = changes.Skip(open).Take(FoldedMax).ToImmutableArray();
        var left = changes.Length - open - folded.Length;
        if (open > 0)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n**{title}** {Mark(level)}: {Lower(kind.Meaning)}.\n\n");
            AppendAll(text, [.. changes.Take(open)]);
        }

        if (!folded.IsEmpty)
        {
            var summary = open > 0 ? Count(folded.Length, " more") : $"<b>{title}</b>: {Lower(kind.Meaning)}";
            text.Append(CultureInfo.InvariantCulture, $"\n<details><summary>{summary}</summary>\n\n");
            AppendAll(text, folded);
            text.Append("\n</details>\n");
        }

        text.Append(left > 0 ? $"\n… and {Count(left, " more")}; `--out review.json` has them all.\n" : "");
    }

    private static string Count(int count, string of) => string.Create(CultureInfo.InvariantCulture, $"{count}{of}");

    private static void AppendAll(StringBuilder text, ImmutableArray<Change> changes)
    {
        if (changes.Any(change => change.Before.Length > 0 || change.After.Length > 0))
        {
            ChangeTable.Append(text, changes);
        }
        else
        {
            ChangeList.Append(text, changes);
        }
    }

    private static string Lower(string sentence) => char.ToLowerInvariant(sentence[0]) + sentence[1..];

    private static string Mark(Severity level) =>
        level switch
        {
            Severity.Error => "— error",
            Severity.Warning => "— warning",
            _ => "— note",
        };

    /// <summary>Cut at the end of a line, with the number of lines left out.</summary>
    private static string Bounded(string text, int bytesMax)
    {
        if (Encoding.UTF8.GetByteCount(text) <= bytesMax)
        {
            return text;
        }

        var lines = text.Split('\n');
        var (kept, bytes) = (0, 200);
        while (bytes + Encoding.UTF8.GetByteCount(lines[kept]) + 1 <= bytesMax)
        {
            bytes += Encoding.UTF8.GetByteCount(lines[kept]) + 1;
            kept++;
        }

        return string.Join('\n', lines[..kept])
            + string.Create(
                CultureInfo.InvariantCulture,
                $"\n\n**{lines.Length - kept} lines were left out**: more than a summary can hold.\n"
            );
    }
}
