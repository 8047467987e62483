using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace Configurator.Core.Tests.Definitions;

/// <summary>Small changes to a text, such as slips, bad merges and hostile hands make.</summary>
internal static partial class Mutations
{
    private static readonly ImmutableArray<Func<Dice, string, string, string>> All =
    [
        (dice, text, _) => Cut(text, dice.Below(text.Length), 1 + dice.Below(dice.Chance(70) ? 3 : 200), ""),
        (dice, text, _) => Cut(text, dice.Below(text.Length + 1), 0, dice.Pick(Corpus.Snippets)),
        (dice, text, _) => Cut(text, dice.Below(text.Length), 1, dice.Pick(Corpus.Snippets)),
        (dice, text, _) => Lines(text, lines => lines.RemoveAt(dice.Below(lines.Count))),
        (dice, text, _) => Lines(text, lines => lines.Insert(dice.Below(lines.Count), dice.Pick(lines))),
        (dice, text, _) => Lines(text, lines => Swap(lines, dice.Below(lines.Count), dice.Below(lines.Count))),
        (dice, text, _) => Lines(text, lines => Indent(lines, dice.Below(lines.Count), 1 + dice.Below(4), dice.Below(5) - 2)),
        (dice, text, other) => Lines(text, lines => Splice(lines, other.Split('\n'), dice)),
        (dice, text, other) => string.Concat(text.AsSpan(0, dice.Below(text.Length + 1)), other.AsSpan(dice.Below(other.Length + 1))),
        Word,
        Word,
        Value,
        Value,
    ];

    /// <param name="other">Another text to take pieces from.</param>
    public static string Change(Dice dice, string text, string other) =>
        text.Length == 0 ? dice.Pick(Corpus.Snippets) : dice.Pick(All)(dice, text, other);

    /// <summary>One word becomes another that stands somewhere, or a snippet.</summary>
    private static string Word(Dice dice, string text, string other) =>
        WordIn().Matches(text) is { Count: > 0 } words && dice.Pick(words) is var word
            ? Cut(text, word.Index, word.Length, dice.Chance(75) ? dice.Pick(Corpus.Words) : dice.Pick(Corpus.Snippets))
            : text;

    /// <summary>What stands behind a key becomes something else.</summary>
    private static string Value(Dice dice, string text, string other) =>
        ValueIn().Matches(text) is { Count: > 0 } values && dice.Pick(values) is var value
            ? Cut(text, value.Index, value.Length, RandomShapes.Scalar(dice))
            : text;

    private static string Cut(string text, int from, int length, string by) =>
        string.Concat(text.AsSpan(0, from), by, text.AsSpan(Math.Min(text.Length, from + length)));

    private static string Lines(string text, Action<List<string>> change)
    {
        List<string> lines = [.. text.Split('\n')];
        change(lines);
        return string.Join('\n', lines);
    }

    private static void Swap(List<string> lines, int left, int right) => (lines[left], lines[right]) = (lines[right], lines[left]);

    private static void Indent(List<string> lines, int from, int count, int by)
    {
        for (var line = from; line < Math.Min(lines.Count, from + count); line++)
        {
            lines[line] = by >= 0 ? new string(' ', by) + lines[line] : lines[line].StartsWith("  ", StringComparison.Ordinal) ? lines[line][-by..] : lines[line];
        }
    }

    private static void Splice(List<string> lines, string[] others, Dice dice) =>
        lines.InsertRange(dice.Below(lines.Count), others.Skip(dice.Below(others.Length)).Take(1 + dice.Below(5)));

    [GeneratedRegex("[A-Za-z0-9.:/-]+", RegexOptions.NonBacktracking)]
    private static partial Regex WordIn();

    [GeneratedRegex("(?<=: )[^,}\\]\n]+", RegexOptions.None, matchTimeoutMilliseconds: 2000)]
    private static partial Regex ValueIn();
}
