using System.Collections.Immutable;
using Configurator.Core.Binding.Shapes;

namespace Configurator.Core.Tests.Binding.Schemas;

/// <summary>A value that a schema, not seeing how it is written, judges differently from the reader.</summary>
internal sealed record Difference(string Value, Func<Shape, bool> Concerns, bool ReaderTakes, string Why)
{
    private const string SeesNoText = "an editor sees no text where it is not quoted";
    private const string SeesNothing = "an editor cannot tell it from a value that is left out";
    private const string IsReserved = "a schema says what form an id has, not which few words are reserved";
    private const string SeesTheNumber = "an editor sees the number, not that the reader wants it in plain digits";
    private const string WantsANumber = "a number is written as one, though the reader forgives quotes";
    private const string IsHuge = "a form does not know how large a number is";
    private const string IsRare = "nobody writes it so; a form without it is easier to read";

    public static ImmutableArray<Difference> All { get; } =
    [
        .. Reader(true, shape => shape is PatternShape, SeesNoText, "TRUE", "NULL"),
        .. Reader(true, IsText, SeesNothing, "null", "~"),
        .. Reader(false, IsId, IsReserved, "com3", "com4", "direct", "standard", "no", "on", "yes", "\"true\""),
        .. Reader(false, shape => shape is CountShape, SeesTheNumber, "1e5", "1.0", "0x10"),
        .. Reader(false, shape => shape is PatternShape, SeesTheNumber, "+5"),
        .. Reader(false, shape => shape is FlagShape, "an editor sees that it is true, not how it is spelt", "True"),
        .. Reader(false, shape => shape is DateShape, "a form does not know how long a month is", "2026-02-30"),
        .. Reader(true, shape => shape is CountShape, WantsANumber, "\"2026\"", "'1'"),
        .. Reader(true, shape => shape is QuantityShape, IsRare, "-0 mm", "18.0 AWG"),
        .. Reader(false, shape => shape is QuantityShape, IsHuge, "200000000000 mm"),
        .. Reader(true, shape => shape is LinkShape, IsRare, "{option: lid, at-least: 1}"),
    ];

    public static bool IsKnown(string value, Shape shape) =>
        All.Any(known => known.Value == value && known.Concerns(shape));

    private static IEnumerable<Difference> Reader(
        bool takes, Func<Shape, bool> concerns, string why, params string[] values) =>
        values.Select(value => new Difference(value, concerns, takes, why));

    private static bool IsId(Shape shape) => shape is IdShape or ConditionShape or RequirementShape or LinkShape;

    private static bool IsText(Shape shape) => shape is TextShape or LineShape or SettingShape;
}
