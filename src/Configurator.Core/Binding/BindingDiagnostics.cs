using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Loading;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>What can be wrong with the form of a value.</summary>
internal static partial class BindingDiagnostics
{
    private static readonly Rule UnknownKey = new("CFG2004", Severity.Error, "Unknown key");
    private static readonly Rule MissingKey = new("CFG2005", Severity.Error, "Missing key");
    private static readonly Rule WrongForm = new("CFG2006", Severity.Error, "Wrong form");
    private static readonly Rule MalformedId = new("CFG2007", Severity.Error, "Id not allowed");
    private static readonly Rule NoUnit = new("CFG2010", Severity.Error, "Quantity without its unit");
    private static readonly Rule WrongUnit = new("CFG2011", Severity.Error, "Unit unknown or of another kind");
    private static readonly Rule UnknownWord = new("CFG2012", Severity.Error, "Word not in the list");
    private static readonly Rule OutOfRange = new("CFG2013", Severity.Error, "Number out of range");
    private static readonly Rule UnknownLanguage = new("CFG2017", Severity.Error, "Not a language");

    /// <param name="nearest">The absent key that was probably meant.</param>
    public static Diagnostic KeyUnknown(ScalarSyntax key, RecordShape shape, string? nearest) =>
        new(UnknownKey, $"{RecordShape.ArticleOf(shape.Name)} {shape.Name} has no key `{key.Text}`", key.Span)
        {
            Fix = nearest is null
                ? new($"use one of {string.Join(", ", shape.Fields.Select(field => $"`{field.Key}`"))}")
                : new($"replace it with `{nearest}`", key.Span, nearest),
        };

    public static Diagnostic ConditionKeyUnknown(ScalarSyntax key, IEnumerable<string> known)
    {
        var nearest = Nearest.To(key.Text, known);
        return new(UnknownKey, $"a condition has no key `{key.Text}`", key.Span)
        {
            Fix = nearest is null
                ? new($"use one of {string.Join(", ", known.Select(word => $"`{word}`"))}")
                : new($"replace it with `{nearest}`", key.Span, nearest),
        };
    }

    public static Diagnostic KeyMissing(Field field, RecordShape shape, SourceSpan span) =>
        new(MissingKey, $"this {shape.Name} lacks `{field.Key}`", span)
        {
            Fix = new($"add `{field.Key}:` and {field.Shape.Wanted}"),
        };

    public static Diagnostic KeyMissingHere(string key, string why, SourceSpan span) =>
        new(MissingKey, $"`{key}` is missing: {why}", span) { Fix = new($"add `{key}:`") };

    public static Diagnostic BothGiven(string key, string other, SourceSpan span) =>
        new(WrongForm, $"`{key}` and `{other}` stand together; only one of them may", span)
        {
            Fix = new("keep one, and write a second entry for the other"),
        };

    public static Diagnostic ValueEmpty(SyntaxNode node, Shape shape) =>
        new(WrongForm, "there is no value", node.Span) { Fix = new($"write {shape.Wanted}, or remove the key") };

    public static Diagnostic FormWrong(SyntaxNode node, Shape shape) =>
        new(WrongForm, $"expected {shape.Wanted}", node.Span)
        {
            Fix = new($"this is {Describe(node)}; write it as said"),
        };

    public static Diagnostic ValueMalformed(ScalarSyntax scalar, Shape shape) =>
        new(WrongForm, $"`{scalar.Text}` is not {shape.Wanted}", scalar.Span) { Fix = new($"write {shape.Wanted}") };

    public static Diagnostic IdMalformed(ScalarSyntax scalar, string fault)
    {
        var mended = Ids.Mended(scalar.Text);
        return new(MalformedId, $"`{scalar.Text}` {fault}", scalar.Span)
        {
            Fix = mended is null
                ? new("choose words such as `lid-mark-sensor`")
                : new($"replace it with `{mended}`", scalar.Span, mended),
        };
    }

    public static Diagnostic QuantityMalformed(ScalarSyntax scalar, QuantityShape shape, QuantityText read) =>
        read.Fault switch
        {
            QuantityFault.NoNumber => new(NoUnit, $"`{scalar.Text}` does not start with a number", scalar.Span)
            {
                Fix = new($"write it with digits and a decimal point, such as `{shape.Example}`"),
            },
            QuantityFault.NoUnit => new(NoUnit, $"`{scalar.Text}` has no unit", scalar.Span)
            {
                Fix = new(
                    $"write the unit after the number, such as `{shape.Example}`; units here are {UnitsOf(shape)}"
                ),
            },
            QuantityFault.NoSpace => new(NoUnit, $"`{scalar.Text}` needs one space before its unit", scalar.Span)
            {
                Fix = new($"replace it with `{read.Number} {read.Unit}`", scalar.Span, $"{read.Number} {read.Unit}"),
            },
            QuantityFault.UnknownSize => new(
                WrongUnit,
                $"there is no size `{scalar.Text}` in the table of wire sizes",
                scalar.Span
            )
            {
                Fix = new("use an even AWG size from 10 to 24, or give it in mm2"),
            },
            QuantityFault.TooLarge => new(
                OutOfRange,
                $"`{Shortened(scalar.Text)}` is beyond anything that is built",
                scalar.Span
            )
            {
                Fix = new("check the number and its unit"),
            },
            _ => UnitUnknown(scalar, shape, read),
        };

    public static Diagnostic DimensionWrong(ScalarSyntax scalar, QuantityShape shape, Quantity quantity) =>
        new(WrongUnit, $"`{quantity.Unit}` is not a unit of {Noun(shape.Dimension)}", scalar.Span)
        {
            Fix = new($"use one of {UnitsOf(shape)}"),
        };

    public static Diagnostic QuantityNegative(ScalarSyntax scalar) =>
        new(OutOfRange, $"`{scalar.Text}` is below zero", scalar.Span) { Fix = new("write a value of zero or more") };

    public static Diagnostic ShareTooLarge(Located<Quantity> share) =>
        new(OutOfRange, $"`{share.Value}` is more than all of them", share.Span)
        {
            Fix = new("write a share from 0 to 100 percent"),
        };

    public static Diagnostic CountOutOfRange(ScalarSyntax scalar, CountShape shape) =>
        new(OutOfRange, $"`{scalar.Text}` is not {shape.Wanted}", scalar.Span) { Fix = new($"write {shape.Wanted}") };

    public static Diagnostic RangeReversed(Located<string> from, Located<string> to) =>
        new(OutOfRange, $"`from: {from.Value}` is above `to: {to.Value}`", from.Span)
        {
            Notes = [new("the largest value stands here", to.Span)],
            Fix = new("swap `from` and `to`"),
        };

    public static Diagnostic LinesSeveral(ScalarSyntax scalar, Shape shape) =>
        new(WrongForm, "this goes on over several lines", scalar.Span)
        {
            Fix = new($"write {shape.Wanted} on one line"),
        };

    public static Diagnostic WordUnknown(ScalarSyntax scalar, WordShape shape)
    {
        var nearest = Nearest.To(scalar.Text, shape.Words.Keys);
        return new(UnknownWord, $"`{scalar.Text}` is not {shape.Wanted}", scalar.Span)
        {
            Fix = nearest is null
                ? new($"use {shape.Wanted}")
                : new($"replace it with `{nearest}`", scalar.Span, nearest),
        };
    }

    public static Diagnostic LanguageUnknown(ScalarSyntax key) =>
        new(UnknownLanguage, $"`{key.Text}` is not a language code", key.Span)
        {
            Fix = new("use two letters, such as `en` or `es`"),
        };

    private static Diagnostic UnitUnknown(ScalarSyntax scalar, QuantityShape shape, QuantityText read)
    {
        var nearest = UnitTable
            .Of(shape.Dimension)
            .FirstOrDefault(unit => unit.Symbol.Equals(read.Unit, StringComparison.OrdinalIgnoreCase));
        var mended = $"{read.Number} {nearest}";
        return new(WrongUnit, $"there is no unit `{read.Unit}`", scalar.Span)
        {
            Fix = nearest is null
                ? new($"use one of {UnitsOf(shape)}")
                : new($"replace it with `{mended}`", scalar.Span, mended),
        };
    }

    private static string Shortened(string text) => text.Length <= 40 ? text : text[..40] + "...";

    private static string UnitsOf(QuantityShape shape) =>
        string.Join(", ", UnitTable.Of(shape.Dimension).Select(unit => $"`{unit}`"));

    private static string Noun(Dimension dimension) => Kebab.FromPascal(dimension.ToString()).Replace('-', ' ');

    private static string Describe(SyntaxNode node) =>
        node switch
        {
            MappingSyntax => "a map",
            SequenceSyntax => "a list",
            _ => "a single value",
        };
}
