using System.Collections.Immutable;

namespace Configurator.Core.Review.Topics;

/// <summary>What of the results of a released revision is not what it was.</summary>
/// <param name="Word">What it is about: homes, cables, findings.</param>
/// <param name="Gone">What was there and is not, in ordinal order.</param>
internal sealed record ReleasedDifference(string Word, ImmutableArray<string> Gone, ImmutableArray<string> Come)
{
    private const int NamedMax = 4;

    /// <summary>Null where both are the same.</summary>
    public static ReleasedDifference? Between(string word, IEnumerable<string> before, IEnumerable<string> after)
    {
        var (was, now) = (Counted(before), Counted(after));
        ImmutableArray<string> gone = [.. was.Where(entry => !now.Contains(entry)).Select(entry => entry.Text)];
        ImmutableArray<string> come = [.. now.Where(entry => !was.Contains(entry)).Select(entry => entry.Text)];
        return gone.IsEmpty && come.IsEmpty ? null : new(word, gone, come);
    }

    /// <summary>The first of them by name, the others by number.</summary>
    public string Say()
    {
        var parts = new[] { ("was", Gone), ("is", Come) }.Where(part => !part.Item2.IsEmpty);
        return $"{Word}: {string.Join("; ", parts.Select(part => $"{part.Item1} {Named(part.Item2)}"))}";
    }

    private static string Named(ImmutableArray<string> entries)
    {
        var more = entries.Length - NamedMax;
        return string.Join(
                " | ",
                entries.Take(NamedMax).Select(entry => $"`{entry.Replace("`", "", StringComparison.Ordinal)}`")
            ) + (more > 0 ? FormattableString.Invariant($" and {more} more") : "");
    }

    /// <summary>What is there twice differs from what is there once.</summary>
    private static ImmutableSortedSet<(string Text, int Ordinal)> Counted(IEnumerable<string> entries) =>
        [
            .. entries
                .GroupBy(entry => entry, StringComparer.Ordinal)
                .SelectMany(alike => alike.Select((text, i) => (text, i))),
        ];
}
