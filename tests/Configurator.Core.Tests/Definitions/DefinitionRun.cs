using System.Collections.Immutable;
using System.Diagnostics;
using Configurator.Core.Binding;
using Configurator.Core.Diagnostics;
using Configurator.Core.Diagnostics.Printing;
using Configurator.Core.Documents;
using Configurator.Core.Engineering;
using Configurator.Core.Loading;
using Configurator.Core.Logic;
using Configurator.Core.Sources;

namespace Configurator.Core.Tests.Definitions;

/// <summary>Runs all stages of this assembly on a catalogue, as <c>check</c> and <c>publish</c> do.</summary>
internal static class DefinitionRun
{
    public static readonly TimeSpan Most = TimeSpan.FromSeconds(2);
    private const int Attempts = 3;

    /// <summary>Null where all is as it should be, else what is not.</summary>
    public static string? Fault(SourceSet sources)
    {
        try
        {
            return OutOfBounds(sources, All(sources));
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
    public static bool IsSlow(SourceSet sources) => Enumerable.Range(0, Attempts).All(_ =>
    {
        var clock = Stopwatch.StartNew();
        var before = Environment.CpuUsage.TotalTime;
        All(sources);
        return clock.Elapsed > Most && Environment.CpuUsage.TotalTime - before > Most;
    });

    private static ImmutableArray<Diagnostic> All(SourceSet sources)
    {
        var engineered = Loader.Load(sources).Then(Binder.Bind).Then(Prover.Prove).Then(Engineer.Compute);
        var all = engineered.HasErrors ? engineered.Diagnostics : engineered.Then(it => Documenter.Compose(it, "")).Diagnostics;
        var texts = sources.Files.Select(SourceText.Decode).OfType<SourceText>().ToDictionary(text => text.Path, StringComparer.Ordinal);
        Assert.NotNull(DiagnosticText.Of(all, texts));
        Assert.NotNull(DiagnosticAnnotations.Of(all));
        Assert.NotNull(DiagnosticJson.Of(all, []));
        return all;
    }

    private static string? OutOfBounds(SourceSet sources, ImmutableArray<Diagnostic> all)
    {
        var texts = sources.Files.ToDictionary(file => file.Path, SourceText.Decode, StringComparer.Ordinal);
        foreach (var diagnostic in all)
        {
            var fix = diagnostic.Fix is { Replacement: not null } replacing ? [replacing.Span] : Array.Empty<SourceSpan>();
            var spans = fix.Concat(diagnostic.Notes.Select(note => note.Span)).Prepend(diagnostic.Span);
            if (spans.Where(span => !IsWithin(span, texts)).Select(span => (SourceSpan?)span).FirstOrDefault() is { } outside)
            {
                return $"{outside} + {outside.Length} lies outside: {diagnostic.Rule.Code} {diagnostic.Message}";
            }
        }

        return null;
    }

    /// <summary>The line is there, and the span begins and ends on it. The start of a file is always there.</summary>
    private static bool IsWithin(SourceSpan span, Dictionary<string, SourceText?> texts)
    {
        if (!texts.TryGetValue(span.Path ?? "", out var text))
        {
            return false;
        }

        return span == SourceSpan.FileStart(span.Path!)
            || (text is not null
                && span.Line >= 1
                && span.Line <= text.LineCount
                && span.Column >= 1
                && span.Length >= 0
                && span.Column - 1 + span.Length <= text.Line(span.Line).Length);
    }
}
