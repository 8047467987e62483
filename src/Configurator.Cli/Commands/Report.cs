using System.Globalization;
using Configurator.Cli.Disk;
using Configurator.Core.Diagnostics;
using Configurator.Core.Diagnostics.Printing;
using Configurator.Core.Sources;

namespace Configurator.Cli.Commands;

/// <summary>Prints what a run found.</summary>
internal static class Report
{
    /// <param name="folder">The catalogue's, as <see cref="CatalogueFolder"/> says it for annotations.</param>
    public static void Print(
        IReadOnlyCollection<Diagnostic> diagnostics,
        SourceSet sources,
        OutputFormat format,
        IEnumerable<KeyValuePair<string, int>> counts,
        string done,
        TextWriter output,
        string folder = ""
    )
    {
        output.Write(
            format switch
            {
                OutputFormat.Json => DiagnosticJson.Of(diagnostics, counts),
                OutputFormat.Github => DiagnosticAnnotations.Of(diagnostics, folder)
                    + Summary(diagnostics, counts, done),
                _ => DiagnosticText.Of(diagnostics, Texts(sources, diagnostics)) + Summary(diagnostics, counts, done),
            }
        );
        output.Flush();
    }

    public static int Environment(DiskProblem problem, TextWriter errors)
    {
        errors.WriteLine($"configurator: {problem.Why}");
        errors.WriteLine($"  to fix: {problem.Fix}");
        return ExitCodes.Environment;
    }

    private static string Summary(
        IReadOnlyCollection<Diagnostic> diagnostics,
        IEnumerable<KeyValuePair<string, int>> counts,
        string done
    )
    {
        var things = string.Join(
            ", ",
            counts.Select(count => string.Create(CultureInfo.InvariantCulture, $"{count.Value} {count.Key}"))
        );
        var found = diagnostics
            .GroupBy(diagnostic => diagnostic.Rule.Severity)
            .ToDictionary(group => group.Key, group => group.Count());
        return $"{done} {things}: {Number(found.GetValueOrDefault(Severity.Error), "error")}, {Number(found.GetValueOrDefault(Severity.Warning), "warning")}\n";
    }

    private static string Number(int count, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");

    /// <summary>Texts of the files that something was found in.</summary>
    private static Dictionary<string, SourceText> Texts(SourceSet sources, IEnumerable<Diagnostic> diagnostics)
    {
        var paths = diagnostics.Select(diagnostic => diagnostic.Span.Path).ToHashSet(StringComparer.Ordinal);
        return sources
            .Files.Where(file => paths.Contains(file.Path))
            .Select(SourceText.Decode)
            .OfType<SourceText>()
            .ToDictionary(text => text.Path, StringComparer.Ordinal);
    }
}
