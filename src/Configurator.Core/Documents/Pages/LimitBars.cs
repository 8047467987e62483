using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Pages;

/// <summary>A bar for each limit: how much of it is used, and the line that it must not cross.</summary>
internal static class LimitBars
{
    private const int LabelWidth = 330;
    private const int BarWidth = 240;
    private const int BarMax = 300;
    private const int Width = 880;
    private const int RowHeight = 26;
    private const int BarHeight = 14;

    /// <param name="name">What a finding is about, in the words of the page.</param>
    /// <returns>Null where no finding has a limit.</returns>
    public static Drawing? Of(string id, SiteWords words, IEnumerable<Finding> findings, Func<Finding, string> name)
    {
        ImmutableArray<(Finding Finding, Rational Share)> bars =
        [
            .. findings
                .Where(finding => finding is { Value: not null, Limit: not null, Margin: not null })
                .Select(finding => (finding, Share: ShareOf(finding)))
                .OrderByDescending(bar => bar.Share)
                .ThenBy(bar => bar.finding.Id, StringComparer.Ordinal),
        ];
        return bars.IsEmpty
            ? null
            : new(
                id,
                words.ShareUsed,
                string.Join("; ", bars.Select(bar => $"{name(bar.Finding)}: {Text(words, bar.Finding)}")),
                Width,
                (RowHeight * bars.Length) + 12,
                [
                    .. bars.SelectMany((bar, row) => Bar(words, name(bar.Finding), bar.Finding, bar.Share, row)),
                    new Stroke(LabelWidth + BarWidth, 2, LabelWidth + BarWidth, (RowHeight * bars.Length) + 8, "drop"),
                ]
            );
    }

    /// <summary>1 at the limit, more beyond; where the value has to be at least the limit, their ratio the other
    /// way.</summary>
    private static Rational ShareOf(Finding finding)
    {
        var (value, limit) = (finding.Value!.Value.Value, finding.Limit!.Value.Value);
        var isAtMost = finding.Margin!.Value.Value == limit - value;
        var (used, whole) = isAtMost ? (value, limit) : (limit, value);
        return whole > 0 ? used / whole
            : used > 0 ? 2
            : 0;
    }

    private static IEnumerable<Shape> Bar(SiteWords words, string name, Finding finding, Rational share, int row)
    {
        var top = 6 + (RowHeight * row);
        var length = (int)Math.Clamp(Math.Round(share.ToDouble() * BarWidth), 0, BarMax);
        yield return new Label(LabelWidth - 10, top + 11, name, "end", "name");
        yield return new Box(LabelWidth, top, BarWidth, BarHeight, "housing");
        if (length > 0)
        {
            yield return new Box(LabelWidth, top, length, BarHeight, "plugged");
        }

        yield return new Label(LabelWidth + BarMax + 12, top + 11, Text(words, finding), "start", "place");
    }

    private static string Text(SiteWords words, Finding finding) =>
        $"{finding.Value} / {finding.Limit}, {words.Margin.ToLowerInvariant()} {finding.Margin}";
}
