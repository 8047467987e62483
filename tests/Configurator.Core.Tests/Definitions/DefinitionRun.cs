using System.Collections.Immutable;
using System.Diagnostics;
using System.Text;
using Configurator.Core.Binding;
using Configurator.Core.Diagnostics;
using Configurator.Core.Diagnostics.Printing;
using Configurator.Core.Documents;
using Configurator.Core.Engineering;
using Configurator.Core.Logic;
using Configurator.Core.Sources;

namespace Configurator.Core.Tests.Definitions;

/// <summary>Runs all stages of this assembly on a catalogue, as <c>check</c> does, and of some as <c>publish</c>
/// does.</summary>
internal static class DefinitionRun
{
    public static readonly TimeSpan Most = TimeSpan.FromSeconds(2);
    private const int Attempts = 3;

    /// <summary>Documents of a whole catalogue take longer than all stages before: they are made of one case in so
    /// many.</summary>
    private const int Composed = 16;

    /// <summary>Null where all is as it should be, else what is not.</summary>
    public static string? Fault(RandomCatalogue catalogue)
    {
        try
        {
            return OutOfBounds(catalogue, catalogue.Number % Composed == 0 ? All(catalogue) : Checked(catalogue));
        }
#pragma warning disable CA1031 // Whatever is thrown is the fault looked for.
        catch (Exception thrown)
#pragma warning restore CA1031
        {
            return thrown.ToString();
        }
    }

    /// <summary>A busy machine makes any case slow once: the best of some attempts counts, and of the clock and the
    /// processor's time whichever is less.</summary>
    public static bool IsSlow(RandomCatalogue catalogue) => Enumerable.Range(0, Attempts).All(_ =>
    {
        var clock = Stopwatch.StartNew();
        var before = Environment.CpuUsage.TotalTime;
        Checked(catalogue);
        return clock.Elapsed > Most && Environment.CpuUsage.TotalTime - before > Most;
    });

    /// <summary>What <c>check</c> does.</summary>
    private static ImmutableArray<Diagnostic> Checked(RandomCatalogue catalogue) => Printed(catalogue, Engineered(catalogue).Diagnostics);

    private static ImmutableArray<Diagnostic> All(RandomCatalogue catalogue)
    {
        var engineered = Engineered(catalogue);
        return Printed(
            catalogue, engineered.HasErrors ? engineered.Diagnostics : engineered.Then(it => Documenter.Compose(it, "")).Diagnostics);
    }

    private static Outcome<EngineeredCatalogue> Engineered(RandomCatalogue catalogue) =>
        Engineer.Compute(catalogue.Load().Then(Binder.Bind).Then(Prover.Prove));

    private static ImmutableArray<Diagnostic> Printed(RandomCatalogue catalogue, ImmutableArray<Diagnostic> all)
    {
        var texts = TextsOf(catalogue, all);
        Assert.NotNull(DiagnosticText.Of(all, texts));
        Assert.NotNull(DiagnosticAnnotations.Of(all));
        Assert.NotNull(DiagnosticJson.Of(all, []));
        return all;
    }

    /// <summary>Texts of all files that something is said about.</summary>
    private static Dictionary<string, SourceText> TextsOf(RandomCatalogue catalogue, ImmutableArray<Diagnostic> all) => all
        .SelectMany(it => it.Notes.Select(note => note.Span).Prepend(it.Span).Append(it.Fix?.Span ?? default))
        .Select(span => span.Path ?? "")
        .Distinct(StringComparer.Ordinal)
        .Where(catalogue.Files.ContainsKey)
        .Select(path => SourceText.Decode(new(path, Encoding.UTF8.GetBytes(catalogue.Files[path]))))
        .OfType<SourceText>()
        .ToDictionary(text => text.Path, StringComparer.Ordinal);

    private static string? OutOfBounds(RandomCatalogue catalogue, ImmutableArray<Diagnostic> all)
    {
        var texts = TextsOf(catalogue, all);
        foreach (var diagnostic in all)
        {
            var fix = diagnostic.Fix is { Replacement: not null } replacing ? [replacing.Span] : Array.Empty<SourceSpan>();
            var spans = fix.Concat(diagnostic.Notes.Select(note => note.Span)).Prepend(diagnostic.Span);
            if (spans.Where(span => !IsWithin(span, catalogue, texts)).Select(span => (SourceSpan?)span).FirstOrDefault() is { } outside)
            {
                return $"{outside} + {outside.Length} lies outside: {diagnostic.Rule.Code} {diagnostic.Message}";
            }
        }

        return null;
    }

    /// <summary>The line is there, and the span begins and ends on it. The start of a file is always there.</summary>
    private static bool IsWithin(SourceSpan span, RandomCatalogue catalogue, Dictionary<string, SourceText> texts)
    {
        if (!catalogue.Files.ContainsKey(span.Path ?? ""))
        {
            return false;
        }

        return span == SourceSpan.FileStart(span.Path!)
            || (texts.TryGetValue(span.Path!, out var text)
                && span.Line >= 1
                && span.Line <= text.LineCount
                && span.Column >= 1
                && span.Length >= 0
                && span.Column - 1 + span.Length <= text.Line(span.Line).Length);
    }
}
