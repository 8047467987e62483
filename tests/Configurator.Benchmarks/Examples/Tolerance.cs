using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Configurator.Benchmarks.Examples;

/// <summary>How far a result may lie from what is expected, as in <c>0.005 on z, 0.001 on limits</c> or <c>0.5 %</c>.</summary>
internal sealed partial record Tolerance(ImmutableArray<Tolerance.Clause> Clauses)
{
    /// <summary>What floating-point arithmetic may do, in proportion.</summary>
    private const double Rounding = 1e-9;

    public static Tolerance Parse(string text) =>
        new([.. WithoutRemarks(text).Split([',', ';']).Select(One).OfType<Clause>()]);

    public bool Allows(string key, double expected, double got)
    {
        var clause = Clauses.FirstOrDefault(one => one.IsFor(key)) ?? Clauses.FirstOrDefault(one => one.On is null) ?? Clauses.FirstOrDefault();
        var allowed = clause is null ? 0 : clause.IsShare ? clause.Amount * Math.Abs(expected) : clause.Amount;
        return Math.Abs(got - expected) <= (allowed * (1 + Rounding)) + (Rounding * Math.Max(1e-3, Math.Abs(expected)));
    }

    private static Clause? One(string text)
    {
        var match = Numeral().Match(text);
        if (!match.Success || !double.TryParse(match.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var amount))
        {
            return null;
        }

        var rest = text[(match.Index + match.Length)..];
        var isPercent = rest.Contains('%', StringComparison.Ordinal) || rest.Contains("percent", StringComparison.OrdinalIgnoreCase);
        var isShare = isPercent || rest.Contains("rel", StringComparison.OrdinalIgnoreCase);
        var on = rest.IndexOf(" on ", StringComparison.OrdinalIgnoreCase);
        return new(isPercent ? amount / 100 : amount, isShare, on < 0 ? null : rest[(on + 4)..].Trim());
    }

    private static string WithoutRemarks(string text) => Remark().Replace(text, "");

    [GeneratedRegex(@"\([^)]*\)", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Remark();

    [GeneratedRegex(@"\d+(\.\d+)?([eE][-+]?\d+)?", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Numeral();

    /// <param name="On">What it is for; null for all else.</param>
    internal sealed record Clause(double Amount, bool IsShare, string? On)
    {
        private static readonly string[] Limits = ["ucl", "lcl", "limit", "min", "max"];

        public bool IsFor(string key) =>
            On is { } on
            && on.Split([' ', '/', '&'], StringSplitOptions.RemoveEmptyEntries).Any(word =>
                word is "limits" or "limit"
                    ? Array.Exists(Limits, limit => key.Contains(limit, StringComparison.OrdinalIgnoreCase))
                    : key.Equals(word, StringComparison.OrdinalIgnoreCase) || key.StartsWith(word + "_", StringComparison.OrdinalIgnoreCase));
    }
}
