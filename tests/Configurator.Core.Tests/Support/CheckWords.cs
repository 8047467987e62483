using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;

namespace Configurator.Core.Tests.Support;

/// <summary>Compares what was said with what a test expects: code and message on the first line, then where the test
/// cares <c>to fix: ...</c> and <c>note: ...</c>.</summary>
internal static class CheckWords
{
    private const string ToFix = "to fix: ";
    private const string NoteIs = "note: ";

    /// <summary>Exactly these diagnostics at exactly these places, in the order in which they are printed.</summary>
    public static void Same(
        IReadOnlyList<string> expected, IReadOnlyList<SourceSpan> places, IReadOnlyList<SourceSpan> notePlaces, IEnumerable<Diagnostic> said)
    {
        ImmutableArray<Diagnostic> all = [.. Diagnostic.InOrder(said)];
        var wanted = expected.Select((text, i) => $"{text} {(i < places.Count ? At(places[i]) : "(no place is marked)")}")
            .Concat(places.Skip(expected.Count).Select(place => $"a place is marked, but nothing is expected {At(place)}"));
        var found = all.Select((diagnostic, i) => $"{Say(diagnostic, i < expected.Count ? expected[i] : null)} {At(diagnostic.Span)}");
        Assert.Equal(string.Join('\n', wanted), string.Join('\n', found));
        if (notePlaces.Count > 0)
        {
            Assert.Equal(notePlaces, all.SelectMany(diagnostic => diagnostic.Notes).Select(note => note.Span).Distinct().Order());
        }
    }

    /// <summary>As much of a diagnostic as the test speaks of; all of it where the test does not expect it.</summary>
    private static string Say(Diagnostic diagnostic, string? expected)
    {
        var lines = new List<string> { $"{diagnostic.Rule.Code} {diagnostic.Message}" };
        var asked = expected?.Split('\n').Skip(1).ToList();
        if (asked is null || asked.Any(line => line.StartsWith(NoteIs, StringComparison.Ordinal)))
        {
            lines.AddRange(diagnostic.Notes.Select(note => NoteIs + note.Message));
        }

        if (asked is null || asked.Any(line => line.StartsWith(ToFix, StringComparison.Ordinal)))
        {
            lines.Add(ToFix + (diagnostic.Fix?.Message ?? "nothing is offered"));
        }

        return string.Join('\n', lines);
    }

    private static string At(SourceSpan span) => FormattableString.Invariant($"@ {span}+{span.Length}");
}
