using System.Collections.Immutable;
using Configurator.Core.Sources;

namespace Configurator.Core.Review.Lines;

/// <summary>Finds for each change the line of the later side where a reviewer looks for its cause: a changed line, if
/// any of its places has one.</summary>
internal sealed class ChangedLines
{
    private readonly IReadOnlyDictionary<string, SourceFile> _before;
    private readonly IReadOnlyDictionary<string, SourceFile> _after;
    private readonly Dictionary<string, ImmutableArray<LineHunk>> _hunks = new(StringComparer.Ordinal);

    public ChangedLines(SourceSet before, SourceSet after) => (_before, _after) = (before.ByPath(), after.ByPath());

    /// <summary>Null where the later side has no file to show it in.</summary>
    public SourceSpan? Find(IEnumerable<ReviewPlace> places)
    {
        var known = places.Where(place => place.IsKnown && _after.ContainsKey(place.Span.Path)).ToList();
        return known.Select(Exact).FirstOrDefault(span => span is not null)
            ?? known.Select(Nearest).FirstOrDefault(span => span is not null)
            ?? known
                .Select(place => (SourceSpan?)(place.IsBefore ? SourceSpan.FileStart(place.Span.Path) : place.Span))
                .FirstOrDefault();
    }

    /// <summary>The place itself, where its line was changed; for a line that is gone, the one that took its
    /// place.</summary>
    private SourceSpan? Exact(ReviewPlace place)
    {
        var line = place.Span.Line - 1;
        return HunksOf(place.Span.Path).FirstOrDefault(hunk => Holds(hunk, line, place.IsBefore)) is not { } hunk ? null
            : place.IsBefore ? Line(place.Span.Path, hunk)
            : place.Span;
    }

    private static bool Holds(LineHunk hunk, int line, bool isBefore) =>
        isBefore
            ? line >= hunk.BeforeStart && line < hunk.BeforeStart + hunk.BeforeCount
            : line >= hunk.AfterStart && line < hunk.AfterStart + hunk.AfterCount;

    /// <summary>The changed line nearest to it in its file; null where nothing of that file changed.</summary>
    private SourceSpan? Nearest(ReviewPlace place)
    {
        var line = place.Span.Line - 1;
        return HunksOf(place.Span.Path)
            .OrderBy(hunk => Math.Abs((place.IsBefore ? hunk.BeforeStart : hunk.AfterStart) - line))
            .Select(hunk => (SourceSpan?)Line(place.Span.Path, hunk))
            .FirstOrDefault();
    }

    private SourceSpan Line(string path, LineHunk hunk)
    {
        var last = Math.Max(1, LinesOf(_after, path).Length);
        return new(path, Math.Min(hunk.AfterStart + 1, last), 1, 0);
    }

    private ImmutableArray<LineHunk> HunksOf(string path)
    {
        if (!_hunks.TryGetValue(path, out var hunks))
        {
            hunks = LineDifference.Of(LinesOf(_before, path), LinesOf(_after, path));
            _hunks.Add(path, hunks);
        }

        return hunks;
    }

    private static ImmutableArray<string> LinesOf(IReadOnlyDictionary<string, SourceFile> files, string path) =>
        files.TryGetValue(path, out var file) && SourceText.Decode(file) is { } text
            ? [.. text.Text.TrimEnd('\n').Split('\n')]
            : [];
}
