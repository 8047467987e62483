using System.Globalization;
using Configurator.Core.Sources;

namespace Configurator.Core.Diagnostics.Printing;

/// <summary>One annotation as a workflow command.</summary>
/// <remarks>Source: workflow commands of GitHub Actions.</remarks>
internal static class WorkflowCommand
{
    /// <summary>Further ones of a level are lost there.</summary>
    public const int EachLevelMax = 10;

    private const int MessageLengthMax = 4096;

    public static string Of(Severity severity, SourceSpan span, string title, IEnumerable<string> lines)
    {
        var level = severity == Severity.Note ? "notice" : DiagnosticText.Word(severity);
        var (path, line, column, length) = span;
        var place = string.Create(
            CultureInfo.InvariantCulture,
            $"file={Property(path)},line={line},endLine={line},col={column},endColumn={column + Math.Max(0, length)}"
        );
        return $"::{level} {place},title={Property(title)}::{Message(lines)}";
    }

    private static string Message(IEnumerable<string> lines)
    {
        var message = string.Join('\n', lines.Select(Printable.Line));
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
