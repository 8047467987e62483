using System.Text;

namespace Configurator.Core.Diagnostics.Printing;

/// <summary>Prints diagnostics as workflow commands, so that a pull request shows them at the lines
/// concerned.</summary>
/// <remarks>Source: workflow commands of GitHub Actions; ten annotations of each level show, further ones are lost
/// there.</remarks>
public static class DiagnosticAnnotations
{
    /// <param name="folder">The catalogue's, from the repository's top; empty where it is the top.</param>
    public static string Of(IEnumerable<Diagnostic> diagnostics, string folder = "")
    {
        var text = new StringBuilder();
        foreach (
            var level in Diagnostic
                .InOrder(diagnostics)
                .GroupBy(diagnostic => diagnostic.Rule.Severity)
                .OrderByDescending(group => group.Key)
        )
        {
            foreach (var diagnostic in level.Take(WorkflowCommand.EachLevelMax))
            {
                text.Append(Command(diagnostic, folder)).Append('\n');
            }
        }

        return text.ToString();
    }

    private static string Command(Diagnostic diagnostic, string folder) =>
        WorkflowCommand.Of(
            diagnostic.Rule.Severity,
            diagnostic.Span.Below(folder),
            $"{diagnostic.Rule.Code}: {diagnostic.Rule.Title}",
            new[] { diagnostic.Message }
                .Concat(diagnostic.Notes.Select(note => $"{note.Span.Below(folder)}: {note.Message}"))
                .Concat(diagnostic.Fix is { } fix ? [$"to fix: {fix.Message}"] : Array.Empty<string>())
        );
}
