using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Pages;

/// <summary>How findings stand in tables.</summary>
internal static class FindingCells
{
    /// <summary>Verdict, statement, value, limit and margin.</summary>
    public static ImmutableArray<Cell> Of(DocumentContext context, Finding finding) =>
        [
            Verdict(context, finding),
            finding.Statement.Replace("`", "", StringComparison.Ordinal),
            Print(finding.Value),
            Print(finding.Limit),
            Print(finding.Margin),
        ];

    public static ImmutableArray<Column> Columns(SiteWords words) =>
        [
            new(words.Verdict),
            new(words.Found),
            new(words.Value, IsNumber: true),
            new(words.Limit, IsNumber: true),
            new(words.Margin, IsNumber: true),
        ];

    /// <summary>For the style sheet; passes need none.</summary>
    public static string Status(Finding finding) =>
        finding.IsOpen ? "fail"
        : finding.Verdict == Engineering.Verdict.Pass ? ""
        : WordLists.Plain(finding.Verdict);

    private static string Verdict(DocumentContext context, Finding finding) =>
        finding.Verdict switch
        {
            Engineering.Verdict.Pass => context.Words.Pass,
            Engineering.Verdict.Fail => context.Words.Fail,
            Engineering.Verdict.Unstated => context.Words.VerdictUnstated,
            Engineering.Verdict.Review => context.Words.VerdictReview,
            _ => Acceptance(context, finding),
        };

    /// <summary>Who accepts a failed finding, why and until when.</summary>
    public static string Acceptance(DocumentContext context, Finding finding) =>
        $"{context.Words.Accepted}: {context.In(finding.Accepted!.Because)} ({context.In(finding.Accepted.By)}, {context.Words.AcceptedUntil} {DocumentContext.Print(finding.Accepted.Until)})";

    private static string Print(Measure? measure) => measure?.ToString() ?? "";
}
