using System.Globalization;
using System.Text;

namespace Configurator.Core.Diagnostics.Printing;

/// <summary>Prints diagnostics as workflow commands, so that a pull request shows them at the lines
/// concerned.</summary>
/// <remarks>Source: workflow commands of GitHub Actions; ten annotations of each level show, further ones are lost
/// there.</remarks>
public static class DiagnosticAnnotations
{
    private const int EachLevelMax = 10;
    private const int MessageLengthMax = 4096;

    public static string Of(IEnumerable<Diagnostic> diagnostics)
    {
        var text = new StringBuilder();
        foreach (
            var level in Diagnostic
                .InOrder(diagnostics)
                .GroupBy(diagnostic => diagnostic.Rule.Severity)
                .OrderByDescending(group => group.Key)
        )
        {
            foreach (var diagnostic in level.Take(EachLevelMax))
            {
                text.Append(Command(diagnostic)).Append('\n');
            }
        }

        return text.ToString();
    }

    private static string Command(Diagnostic diagnostic)
    {
        var level =
            diagnostic.Rule.Severity == Severity.Note ? "notice" : DiagnosticText.Word(diagnostic.Rule.Severity);
        var (path, line, column, length) = diagnostic.Span;
        var place = string.Create(
            CultureInfo.InvariantCulture,
            $"file={Property(path)},line={line},endLine={line},col={column},endColumn={column + Math.Max(0, length)}"
        );
        return $"::{level} {place},title={Property($"{diagnostic.Rule.Code}: {diagnostic.Rule.Title}")}::{Message(diagnostic)}";
    }

    private static string Message(Diagnostic diagnostic)
    {
        var lines = new[] { diagnostic.Message }
            .Concat(diagnostic.Notes.Select(note => $"{note.Span}: {note.Message}"))
            .Concat(diagnostic.Fix is { } fix ? [$"to fix: {fix.Message}"] : Array.Empty<string>())
            .Select(Printable.Line);
        var message = string.Join('\n', lines);
        return Data(message.Length <= MessageLengthMax ? message : message[..(MessageLengthMax - 4)] + " ...");
    }

    private static string Data(string text) =>
        text.Replace("%", "%25", StringComparison.Ordinal)
            .Replace("\r", "%0D", StringComparison.Ordinal)
            .Replace("\n", "%0A", StringComparison.Ordinal);

    private static string Property(string text) =>
        Data(Printable.Line(text))
            .Replace(":", "%3A", StringComparison.Ordinal)
            .Replace(",", "%2C", StringComparison.Ordinal);
}
