using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Binding.Shapes;

/// <summary>What may stand at a key. One description serves the binder and whatever else describes the
/// format.</summary>
/// <param name="Wanted">What a writer should put there, with an example: completes "expected ...".</param>
internal abstract record Shape(string Wanted);

/// <summary>Words for readers: a string, or a map of languages.</summary>
internal sealed record TextShape()
    : Shape("a text, or a map of languages such as `{en: Lid sensor, es: Sensor de tapa}`");

/// <summary>A single line that is not translated.</summary>
internal sealed record LineShape(string Wanted) : Shape(Wanted);

/// <summary>A single line that must have a certain form.</summary>
internal sealed record PatternShape(string Wanted, string Pattern) : Shape(Wanted)
{
    private readonly Regex _form = new(Pattern, RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture);

    /// <summary>A single line of that form.</summary>
    public bool IsMatch(string text) => !text.Contains('\n', StringComparison.Ordinal) && _form.IsMatch(text);
}

/// <param name="MayBeReserved">It names nothing that lies on disk or stands for a definition.</param>
internal sealed record IdShape(string Wanted, bool MayBeReserved = false) : Shape(Wanted);

/// <summary>One word out of a closed list, each read as a value of an enumeration.</summary>
internal sealed record WordShape(ImmutableSortedDictionary<string, object> Words)
    : Shape("one of " + string.Join(", ", Words.Keys.Select(word => $"`{word}`")))
{
    /// <summary>The members of an enumeration in kebab-case.</summary>
    public static WordShape Of<TEnum>()
        where TEnum : struct, Enum =>
        new(
            Enum.GetValues<TEnum>()
                .ToImmutableSortedDictionary(
                    value => Kebab.FromPascal(value.ToString()),
                    value => (object)value,
                    StringComparer.Ordinal
                )
        );
}

internal sealed record QuantityShape(Dimension Dimension, string Example)
    : Shape($"a quantity with its unit, such as `{Example}`")
{
    public bool MayBeNegative { get; init; }
}

internal sealed record CountShape(int From, int To)
    : Shape(FormattableString.Invariant($"a whole number from {From} to {To}"));

internal sealed record FlagShape() : Shape("`true` or `false`");

internal sealed record DateShape() : Shape("a date such as `2026-10-02`");

/// <summary>A value for a device's parameter: a number, a quantity or a word.</summary>
internal sealed record SettingShape() : Shape("a number, a quantity such as `42 percent`, or a word");

/// <summary>What must hold of an order; as a rule it may carry a <c>because</c>.</summary>
internal sealed record ConditionShape()
    : Shape("an option, or `{all: [...]}`, `{any: [...]}`, `{none: [...]}`, `{option: ..., at-least: 2}`");

/// <summary>A condition with an optional <c>because</c>.</summary>
internal sealed record RequirementShape() : Shape("an option, or a condition with `because`");

/// <summary>Another option, plain or as <c>{option, because}</c>.</summary>
internal sealed record LinkShape() : Shape("an option, or `{option: ..., because: ...}`");

internal sealed record ListShape(Shape Item) : Shape($"a list; each item {Item.Wanted}");

/// <summary>A map whose keys the writer chooses.</summary>
internal sealed record TableShape(Shape Key, Shape Value) : Shape("a map");

/// <summary>A map with known keys, in the order in which they are usually written.</summary>
internal sealed record RecordShape(string Name, ImmutableArray<Field> Fields)
    : Shape($"{ArticleOf(Name)} {Name}: a map with the keys {Keys(Fields)}")
{
    /// <summary>By the letter it starts with: none of our words is spoken otherwise.</summary>
    public static string ArticleOf(string noun) => "aeiou".Contains(noun[0], StringComparison.Ordinal) ? "an" : "a";

    public Field? Find(string key) => Fields.FirstOrDefault(field => field.Key == key);

    private static string Keys(ImmutableArray<Field> fields) =>
        string.Join(", ", fields.Take(4).Select(field => $"`{field.Key}`")) + (fields.Length > 4 ? ", ..." : "");
}

/// <param name="Doc">What it means, for editors and for the reader of the format.</param>
internal sealed record Field(string Key, Shape Shape, string Doc)
{
    public bool IsRequired { get; init; }
}
