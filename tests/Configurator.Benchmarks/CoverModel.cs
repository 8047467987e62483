using System.Collections.Immutable;
using System.Globalization;

namespace Configurator.Benchmarks;

/// <summary>A literal of a clause: a value is taken, or is not.</summary>
/// <param name="Value">Numbered over all parameters.</param>
internal readonly record struct ValueLiteral(int Value, bool IsTaken);

/// <summary>Parameters and clauses in the open format of constrained covering-array inputs.</summary>
/// <remarks>
/// Model: strength, number of parameters, number of values of each. Constraints: number of clauses, then for each its
/// length and as many times a sign and a value number; values are numbered through all parameters.
/// </remarks>
internal sealed record CoverModel(ImmutableArray<int> Sizes, ImmutableArray<ImmutableArray<ValueLiteral>> Clauses)
{
    private const int ParametersMax = 100_000;
    private const int ValuesMax = 20_000;

    /// <exception cref="FormatException">A text is not in the format, or asks for more than pairs.</exception>
    public static CoverModel Read(string model, string constraints)
    {
        var words = new Words("model", model);
        var strength = words.Number("strength", 1, 6);
        if (strength != 2)
        {
            throw new FormatException(
                FormattableString.Invariant($"model: strength {strength} is not supported, only pairs (strength 2) are covered")
            );
        }

        var count = words.Number("number of parameters", 1, ParametersMax);
        ImmutableArray<int> sizes =
        [
            .. Enumerable.Range(0, count).Select(_ => words.Number("number of values", 1, ValuesMax)),
        ];
        words.End();
        if (sizes.Sum() > ValuesMax)
        {
            throw new FormatException(
                FormattableString.Invariant($"model: {sizes.Sum()} values are too many, {ValuesMax} are allowed")
            );
        }

        return new(sizes, ReadClauses(new("constraints", constraints), sizes.Sum()));
    }

    /// <summary>An empty text means no constraints.</summary>
    private static ImmutableArray<ImmutableArray<ValueLiteral>> ReadClauses(Words words, int values)
    {
        if (words.IsAtEnd)
        {
            return [];
        }

        var count = words.Number("number of constraints", 0, int.MaxValue);
        var clauses = ImmutableArray.CreateBuilder<ImmutableArray<ValueLiteral>>();
        for (var clause = 0; clause < count; clause++)
        {
            var length = words.Number("length of a constraint", 1, values);
            clauses.Add([
                .. Enumerable
                    .Range(0, length)
                    .Select(_ =>
                    {
                        var isTaken = words.IsPositive();
                        return new ValueLiteral(words.Number("value number", 0, values - 1), isTaken);
                    }),
            ]);
        }

        words.End();
        return clauses.ToImmutable();
    }

    /// <summary>Words of a text between blanks; a sign may stand by itself or at its number.</summary>
    private sealed class Words(string name, string text)
    {
        private readonly string[] _words = text.Replace("-", " - ", StringComparison.Ordinal)
            .Replace("+", " + ", StringComparison.Ordinal)
            .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

        private int _next;

        public bool IsAtEnd => _next == _words.Length;

        public int Number(string what, int least, int most)
        {
            var word = Next(what);
            return
                int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
                && number >= least
                && number <= most
                ? number
                : throw new FormatException(
                    FormattableString.Invariant($"{name}: {what} is `{word}`, not a number from {least} to {most}")
                );
        }

        public bool IsPositive() =>
            Next("sign of a value") switch
            {
                "-" => false,
                "+" => true,
                var word => throw new FormatException($"{name}: `{word}` stands where a sign (- or +) belongs"),
            };

        public void End()
        {
            if (!IsAtEnd)
            {
                throw new FormatException($"{name}: `{_words[_next]}` stands after the end");
            }
        }

        private string Next(string what) =>
            IsAtEnd ? throw new FormatException($"{name}: ends where the {what} belongs") : _words[_next++];
    }
}
