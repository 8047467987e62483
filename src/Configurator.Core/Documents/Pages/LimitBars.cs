using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Pages;

/// <summary>A bar for each limit: how much of it is used, fullest first, with value, limit and margin in words.</summary>
internal static class LimitBars
{
    /// <summary>What a bar shows of a value beyond every limit, in percent.</summary>
    private const int Beyond = 200;

    /// <param name="name">What a finding is about, in the words of the page.</param>
    /// <returns>Null where no finding has a limit.</returns>
    public static Table? Of(string id, SiteWords words, IEnumerable<Finding> findings, Func<Finding, string> name)
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
                [
                    new(words.Check),
                    new(words.Share),
                    new(words.Value, IsNumber: true),
                    new(words.Limit, IsNumber: true),
                    new(words.Margin, IsNumber: true),
                ],
                [.. bars.Select(bar => RowOf(words, name(bar.Finding), bar.Finding, bar.Share))]
            )
            {
                IsCaptionShown = false,
            };
    }

    private static Row RowOf(SiteWords words, string name, Finding finding, Rational share) =>
        new(
            [
                name,
                Bar(share),
                finding.Value!.Value.ToString(),
                (IsAtMost(finding) ? words.AtMost : words.AtLeast) + " " + finding.Limit!.Value,
                finding.Margin!.Value.ToString(),
            ],
            FindingCells.Status(finding)
        );

    private static Cell Bar(Rational share)
    {
        var percent = (int)Math.Clamp(Math.Round(share.ToDouble() * 100), 0, Beyond);
        return new([new(string.Create(CultureInfo.InvariantCulture, $"{percent} %"))]) { Share = percent };
    }

    /// <summary>1 at the limit, more beyond; where the value has to be at least the limit, their ratio the other
    /// way.</summary>
    private static Rational ShareOf(Finding finding)
    {
        var (value, limit) = (finding.Value!.Value.Value, finding.Limit!.Value.Value);
        var (used, whole) = IsAtMost(finding) ? (value, limit) : (limit, value);
        return whole > 0 ? used / whole
            : used > 0 ? 2
            : 0;
    }

    private static bool IsAtMost(Finding finding) =>
        finding.Margin!.Value.Value == finding.Limit!.Value.Value - finding.Value!.Value.Value;
}
