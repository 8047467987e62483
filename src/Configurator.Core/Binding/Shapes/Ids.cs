using System.Collections.Frozen;

namespace Configurator.Core.Binding.Shapes;

/// <summary>What an id may look like: a file name on every system, and readable in a link.</summary>
internal static class Ids
{
    public const string Pattern = "^[a-z][a-z0-9]*(-[a-z0-9]+)*$";

    public const int LengthMax = 64;

    /// <summary>Names that some file systems keep for devices, words that definitions use for something else, and
    /// words that YAML readers take for a truth value or nothing (YAML 1.1, bool and null).</summary>
    private static readonly FrozenSet<string> Reserved = Enumerable
        .Range(1, 9)
        .SelectMany(n => new[] { FormattableString.Invariant($"com{n}"), FormattableString.Invariant($"lpt{n}") })
        .Concat(["con", "prn", "aux", "nul", "standard", "direct"])
        .Concat(["true", "false", "null", "yes", "no", "on", "off", "y", "n"])
        .ToFrozenSet(StringComparer.Ordinal);

    /// <summary>What is wrong with it; null where nothing is.</summary>
    public static string? Fault(string id, bool mayBeReserved = false)
    {
        if (!mayBeReserved && Reserved.Contains(id))
        {
            return "is a reserved name";
        }

        if (id.Length > LengthMax)
        {
            return FormattableString.Invariant($"has {id.Length} characters; {LengthMax} is the limit");
        }

        return HasForm(id) ? null : "is not made of lower-case words and digits joined by hyphens";
    }

    private static bool HasForm(string id) =>
        id.Length > 0
        && char.IsAsciiLetterLower(id[0])
        && id.Split('-')
            .All(word => word.Length > 0 && word.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c)));

    /// <summary>The nearest well-formed id, to offer as a fix; null where nothing remains.</summary>
    public static string? Mended(string text)
    {
        var words = new string([
            .. text.ToLowerInvariant().Select(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) ? c : '-'),
        ]).Split('-', StringSplitOptions.RemoveEmptyEntries);
        var id = string.Join('-', words);
        return Fault(id) is null ? id : null;
    }
}
