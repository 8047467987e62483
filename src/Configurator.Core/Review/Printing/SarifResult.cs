using System.Security.Cryptography;
using System.Text;
using Configurator.Core.Diagnostics;
using Configurator.Core.Diagnostics.Printing;
using Configurator.Core.Sources;

namespace Configurator.Core.Review.Printing;

/// <summary>One result of a SARIF log.</summary>
/// <param name="Identity">What makes it the same result in the next run: neither lines nor values.</param>
internal sealed record SarifResult(string RuleId, Severity Level, string Message, SourceSpan Span, string Identity)
{
    public bool IsNew { get; init; } = true;

    /// <summary>Counts results of one identity from the first.</summary>
    public int Ordinal { get; init; }

    public string Fingerprint =>
        Convert.ToHexStringLower(
            SHA256.HashData(Encoding.UTF8.GetBytes(FormattableString.Invariant($"{RuleId}\n{Identity}\n{Ordinal}")))
        )[..32];

    /// <summary>Faults of the definitions, then changes that have a place and that no fault tells already.</summary>
    public static IEnumerable<SarifResult> Of(ReviewReport report) =>
        report
            .Faults.Select(Of)
            .Concat(report.Changes.Where(change => change is { Line: not null, Kind.IsDiagnosed: false }).Select(Of))
            .GroupBy(result => (result.RuleId, result.Identity))
            .SelectMany(alike => alike.Select((result, i) => result with { Ordinal = i }));

    private static SarifResult Of(ReviewFault fault)
    {
        var diagnostic = fault.Diagnostic;
        return new(
            diagnostic.Rule.Code,
            diagnostic.Rule.Severity,
            Printable.Of(diagnostic.Message)
                + (diagnostic.Fix is { } fix ? $"; to fix: {Printable.Of(fix.Message)}" : ""),
            diagnostic.Span,
            $"{diagnostic.Span.Path}\n{WithoutNumbers(diagnostic.Message)}"
        )
        {
            IsNew = fault.IsNew,
        };
    }

    private static SarifResult Of(Change change) =>
        new(
            change.Kind.Id,
            change.Level,
            string.Join("\n", change.Details.Prepend(change.Sentence).Select(Printable.Of)),
            change.Line!.Value,
            $"{change.Machine}\n{change.Subject}"
        );

    /// <summary>A finding whose value moves a little is still the same.</summary>
    private static string WithoutNumbers(string message) =>
        string.Concat(message.Where(c => !char.IsAsciiDigit(c) && c is not ('.' or ',')));
}
