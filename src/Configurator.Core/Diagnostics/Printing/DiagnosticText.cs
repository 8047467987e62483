using System.Text;
using Configurator.Core.Sources;

namespace Configurator.Core.Diagnostics.Printing;

/// <summary>Prints diagnostics for people at a terminal: what, where, why, how to fix.</summary>
public static class DiagnosticText
{
    private const int LineLengthMax = 160;

    /// <param name="sources">Texts by path, to show the line concerned.</param>
    public static string Of(IEnumerable<Diagnostic> diagnostics, IReadOnlyDictionary<string, SourceText> sources)
    {
        var text = new StringBuilder();
        foreach (var diagnostic in Diagnostic.InOrder(diagnostics))
        {
            Append(text, diagnostic, sources);
        }

        return text.ToString();
    }

    public static string Word(Severity severity) => severity.ToString().ToLowerInvariant();

    private static void Append(
        StringBuilder text,
        Diagnostic diagnostic,
        IReadOnlyDictionary<string, SourceText> sources
    )
    {
        text.Append(Printable.Line(diagnostic.Span.ToString()))
            .Append(": ")
            .Append(Word(diagnostic.Rule.Severity))
            .Append(' ')
            .Append(diagnostic.Rule.Code)
            .Append(": ")
            .Append(Open(Printable.Line(diagnostic.Message)))
            .Append('\n');
        AppendSource(text, diagnostic.Span, sources);
        foreach (var note in diagnostic.Notes)
        {
            text.Append("  ")
                .Append(Printable.Line(note.Span.ToString()))
                .Append(": ")
                .Append(Printable.Line(note.Message))
                .Append('\n');
        }

        if (diagnostic.Fix is { } fix)
        {
            text.Append("  to fix: ").Append(Printable.Line(fix.Message)).Append('\n');
        }

        text.Append("  read more: configurator about ").Append(diagnostic.Rule.Code).Append('\n');
    }

    /// <summary>Build logs take a line that ends in square brackets for a compiler's: a full stop after them prevents
    /// it.</summary>
    private static string Open(string message) => message.EndsWith(']') ? message + "." : message;

    private static void AppendSource(
        StringBuilder text,
        SourceSpan span,
        IReadOnlyDictionary<string, SourceText> sources
    )
    {
        if (span == SourceSpan.FileStart(span.Path) || !sources.TryGetValue(span.Path, out var source))
        {
            return;
        }

        var line = source.Line(span.Line);
        var start = Math.Max(0, span.Column - 1 - (LineLengthMax / 2));
        var shown = line.Substring(
            Math.Min(start, line.Length),
            Math.Min(LineLengthMax, Math.Max(0, line.Length - start))
        );
        var from = Math.Clamp(span.Column - 1 - start, 0, shown.Length);
        var indent = Printable.Line(shown[..from]).Length;
        var marked = Printable.Line(shown[..Math.Min(from + span.Length, shown.Length)]).Length - indent;
        text.Append("    ")
            .Append(Printable.Line(shown))
            .Append('\n')
            .Append("    ")
            .Append(' ', indent)
            .Append('~', Math.Max(1, marked))
            .Append('\n');
    }
}
