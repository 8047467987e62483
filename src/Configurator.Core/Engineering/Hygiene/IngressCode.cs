namespace Configurator.Core.Engineering.Hygiene;

/// <summary>Whether a marking shows what is asked, from least to most.</summary>
public enum Shown
{
    No,

    /// <summary>The standard says nothing of it: ask for a second code.</summary>
    Unstated,

    /// <summary>A near test of another standard: compare the test data.</summary>
    Review,
    Yes,
}

/// <summary>One ingress code, such as IP67. Numerals of ISO 20653 keep their K.</summary>
/// <param name="Solids">0 to 6, 5K, 6K or X.</param>
/// <param name="Water">0 to 9, 4K, 6K, 9K or X.</param>
public sealed record IngressCode(string Solids, string Water)
{
    /// <summary>The codes of a marking such as <c>IP66/IP67</c>; null where it is none.</summary>
    public static IReadOnlyList<IngressCode>? Parse(string marking)
    {
        var codes = marking.Split('/').Select(part => One(part.Trim())).ToList();
        return codes.Contains(null) ? null : [.. codes.OfType<IngressCode>()];
    }

    /// <summary>What a code shows is the lesser of its two numerals. Source: IEC 60529 clauses 5 and 6, and ISO 20653
    /// for K (from memory).</summary>
    public Shown Shows(IngressCode asked)
    {
        var (solids, water) = (OfSolids(Solids, asked.Solids), OfWater(Water, asked.Water));
        return solids < water ? solids : water;
    }

    /// <summary>Any one code of a marking may show what is asked. Source: IEC 60529 clause 6, dual marking.</summary>
    public static Shown Shows(IEnumerable<IngressCode> marked, IngressCode asked) =>
        marked.Select(code => code.Shows(asked)).DefaultIfEmpty(Shown.No).Max();

    /// <summary>A higher numeral shows every lower one.</summary>
    public static Shown OfSolids(string marked, string asked) =>
        asked is "0" or "X" || (marked != "X" && marked[0] >= asked[0] && (asked.Length == 1 || marked == asked))
            ? Shown.Yes
            : Shown.No;

    /// <summary>Up to 6 a numeral shows the lower ones; 7 and above say nothing of jets, and 9 nothing of
    /// immersion.</summary>
    public static Shown OfWater(string marked, string asked)
    {
        if (asked is "0" or "X" || marked == asked)
        {
            return Shown.Yes;
        }

        return (marked, asked) switch
        {
            ("X", _) => Shown.No,
            ("4K" or "6K", _) or ("9", "9K") or ("9K", "9") => Shown.Review,
            (_, "4K" or "6K") => Shown.Review,
            (_, "9" or "9K") => Shown.No,
            ("7" or "8" or "9" or "9K", "1" or "2" or "3" or "4") => Shown.Unstated,
            ("9" or "9K", _) => Shown.No,
            ("8", "7") => Shown.Yes,
            ("7" or "8", _) => Shown.No,
            (_, "7" or "8") => Shown.No,
            _ => marked[0] >= asked[0] ? Shown.Yes : Shown.No,
        };
    }

    private static IngressCode? One(string text)
    {
        if (!text.StartsWith("IP", StringComparison.Ordinal))
        {
            return null;
        }

        var rest = text[2..];
        var solids = rest.Length > 1 && rest[1] == 'K' ? rest[..2] : rest[..Math.Min(1, rest.Length)];
        var water = rest[solids.Length..];
        water = water.Length > 1 && water[1] == 'K' ? water[..2] : water[..Math.Min(1, water.Length)];
        return IsOneOf(solids, "0123456X") && IsOneOf(water, "0123456789X") ? new(solids, water) : null;
    }

    private static bool IsOneOf(string numeral, string all) =>
        numeral.Length > 0 && all.Contains(numeral[0], StringComparison.Ordinal);
}
