using System.Collections.Immutable;
using Configurator.Core.Review.Lines;
using Configurator.Core.Tests.Logic.Compiling;
using CsCheck;

namespace Configurator.Core.Tests.Review;

public class LineTests
{
    private static readonly Gen<string[]> Texts = Gen.OneOf("a", "b", "c").Array[0, 7];

    // Law: what lies between the hunks is the same on both sides, and hunks follow each other.
    [Fact]
    public void All_but_the_hunks_is_the_same() => Check((before, after, hunks) =>
    {
        var (i, j) = (0, 0);
        foreach (var hunk in hunks.Append(new(before.Length, 0, after.Length, 0)))
        {
            Assert.Equal(before[i..hunk.BeforeStart], after[j..hunk.AfterStart]);
            (i, j) = (hunk.BeforeStart + hunk.BeforeCount, hunk.AfterStart + hunk.AfterCount);
        }
    });

    // Source: longest common subsequence by trying every choice of lines.
    [Fact]
    public void No_smaller_difference_exists() => Check((before, after, hunks) => Assert.Equal(
        Enumerable.Range(0, 1 << before.Length)
            .Select(kept => before.Where((_, i) => (kept >> i & 1) == 1).ToArray())
            .Where(kept => IsWithin(kept, after))
            .Max(kept => kept.Length),
        before.Length - hunks.Sum(hunk => hunk.BeforeCount)));

    [Fact]
    public void A_line_that_is_gone_is_shown_where_the_next_one_stands() => Assert.Equal(
        [new LineHunk(1, 1, 1, 0)], LineDifference.Of(["a", "b", "c"], ["a", "c"]));

    [Fact]
    public void Very_long_texts_count_as_replaced_between_their_differences() => Assert.Equal(
        [new LineHunk(1, 3000, 1, 3000)],
        LineDifference.Of(
            ["same", .. Enumerable.Range(0, 3000).Select(i => $"old {i}"), "end"],
            ["same", .. Enumerable.Range(0, 3000).Select(i => $"new {i}"), "end"]));

    private static void Check(Action<string[], string[], ImmutableArray<LineHunk>> check) => Cases.Check(
        Gen.Select(Texts, Texts),
        72,
        400,
        both => check(both.Item1, both.Item2, LineDifference.Of([.. both.Item1], [.. both.Item2])),
        both => $"{string.Concat(both.Item1)} {string.Concat(both.Item2)}");

    private static bool IsWithin(string[] kept, string[] text)
    {
        var found = 0;
        foreach (var line in text)
        {
            found += found < kept.Length && kept[found] == line ? 1 : 0;
        }

        return found == kept.Length;
    }
}
