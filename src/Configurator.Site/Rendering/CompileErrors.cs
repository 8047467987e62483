using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Razor.Language;
using Microsoft.CodeAnalysis;
using RazorLight.Generation;
using Diagnostic = Configurator.Core.Diagnostics.Diagnostic;
using SourceSpan = Configurator.Core.Sources.SourceSpan;
using SourceText = Configurator.Core.Sources.SourceText;

namespace Configurator.Site.Rendering;

/// <summary>What the two compilers say, at the place in the template.</summary>
internal static class CompileErrors
{
    private const string ModelMark = "@model ";

    public static ImmutableArray<Diagnostic> Of(string key, IReadOnlyList<RazorDiagnostic> errors) =>
        InOrder(
            errors
                .Where(error => error.Severity == RazorDiagnosticSeverity.Error)
                .Select(error =>
                    RenderingDiagnostics.CompileError(
                        error.GetMessage(CultureInfo.InvariantCulture),
                        error.Id,
                        SpanOf(error.Span, TemplateKey.PathOf(key))
                    )
                )
        );

    public static ImmutableArray<Diagnostic> Of(
        IGeneratedRazorTemplate template,
        IEnumerable<Microsoft.CodeAnalysis.Diagnostic> errors,
        TemplateProject project
    ) =>
        InOrder(
            errors
                .Where(error => error.Severity == DiagnosticSeverity.Error)
                .Select(error =>
                    RenderingDiagnostics.CompileError(
                        error.GetMessage(CultureInfo.InvariantCulture),
                        error.Id,
                        SpanOf(error.Location, TemplateKey.PathOf(template.TemplateKey), project)
                    )
                )
        );

    private static ImmutableArray<Diagnostic> InOrder(IEnumerable<Diagnostic> diagnostics) =>
        [.. Diagnostic.InOrder(diagnostics).DistinctBy(it => (it.Span, it.Message))];

    private static SourceSpan SpanOf(Microsoft.AspNetCore.Razor.Language.SourceSpan span, string path) =>
        span.LineIndex < 0
            ? SourceSpan.FileStart(path)
            : new(span.FilePath ?? path, span.LineIndex + 1, span.CharacterIndex + 1, span.Length);

    private static SourceSpan SpanOf(Location location, string path, TemplateProject project)
    {
        var mapped = location.GetMappedLineSpan();
        if (!mapped.HasMappedPath)
        {
            return ModelLine(project.Text(path)!);
        }

        var line = mapped.StartLinePosition.Line + 1;
        var words = location.SourceTree!.GetText().ToString(location.SourceSpan).Split('\n')[0];
        var text = project.Text(mapped.Path)?.Line(line) ?? "";
        return new(mapped.Path, line, ColumnOf(words, text, mapped.StartLinePosition.Character), words.Length);
    }

    /// <summary>
    /// The mapping is a few characters off in attributes and usings: the same words nearest to where it points.
    /// </summary>
    /// <param name="words">What the compiler complains of.</param>
    /// <param name="line">The template's line.</param>
    /// <param name="mapped">Where the mapping points, from 0.</param>
    private static int ColumnOf(string words, string line, int mapped)
    {
        var nearest = mapped;
        var found = words.Length == 0 ? -1 : line.IndexOf(words, StringComparison.Ordinal);
        for (var distance = int.MaxValue; found >= 0; found = line.IndexOf(words, found + 1, StringComparison.Ordinal))
        {
            if (Math.Abs(found - mapped) < distance)
            {
                (nearest, distance) = (found, Math.Abs(found - mapped));
            }
        }

        return nearest + 1;
    }

    /// <summary>What has no place in the template, such as the base class, comes from its <c>@model</c> line.</summary>
    private static SourceSpan ModelLine(SourceText template)
    {
        var line = Enumerable
            .Range(1, template.LineCount)
            .FirstOrDefault(it => template.Line(it).TrimStart().StartsWith(ModelMark, StringComparison.Ordinal));
        if (line == 0)
        {
            return SourceSpan.FileStart(template.Path);
        }

        var text = template.Line(line).TrimEnd();
        var type = text.IndexOf(ModelMark, StringComparison.Ordinal) + ModelMark.Length;
        return new(template.Path, line, type + 1, text.Length - type);
    }
}
