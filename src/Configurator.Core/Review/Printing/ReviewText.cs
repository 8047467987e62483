using System.Globalization;
using System.Text;
using Configurator.Core.Diagnostics.Printing;

namespace Configurator.Core.Review.Printing;

/// <summary>A review for people at a terminal.</summary>
public static class ReviewText
{
    private const int OfKindMax = 25;

    public static string Of(ReviewReport report, ReviewVerdict verdict)
    {
        var text = new StringBuilder();
        Line(text, "", $"{report.Before} -> {report.After}");
        foreach (var limit in report.Limits)
        {
            Line(text, "", $"not compared: {limit}");
        }

        foreach (var kind in report.Changes.GroupBy(change => change.Kind))
        {
            text.Append('\n');
            Line(
                text,
                "",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{kind.Key.Title} ({kind.Count()}, {DiagnosticText.Word(kind.Max(change => change.Level))}, {kind.Key.Id})"
                )
            );
            foreach (var change in kind.Take(OfKindMax))
            {
                Line(text, "  ", change.Sentence);
                foreach (var detail in change.Details)
                {
                    Line(text, "    ", detail);
                }
            }

            if (kind.Count() > OfKindMax)
            {
                Line(text, "  ", string.Create(CultureInfo.InvariantCulture, $"and {kind.Count() - OfKindMax} more"));
            }
        }

        text.Append('\n');
        var unchanged = ReviewHeadlines.Unchanged(report);
        Line(text, "", unchanged.Length > 0 && !report.Changes.IsEmpty ? unchanged : "");
        return text.ToString().TrimEnd('\n') + "\n" + Verdict(report, verdict);
    }

    /// <summary>The last line: what the exit code says.</summary>
    public static string Verdict(ReviewReport report, ReviewVerdict verdict) =>
        Printable.Line($"reviewed {report.Changes.Length} changes: {verdict.Say(report)}") + "\n";

    private static void Line(StringBuilder text, string indent, string line) =>
        text.Append(indent).Append(Printable.Line(line)).Append('\n');
}
