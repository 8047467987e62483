using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Model.Units;
using static Configurator.Core.Binding.Schemas.SchemaParts;

namespace Configurator.Core.Binding.Schemas;

/// <summary>Describes single values as an editor sees them: <c>12</c> is a number to it, <c>true</c> no text.</summary>
/// <remarks>Patterns judge strings and limits judge numbers, so one schema can say both.</remarks>
internal static class ScalarSchemas
{
    private const string Awg = "AWG";
    private const string OneLine = "^[^\\n]*\\S[^\\n]*\\n?$(?!\\n)";
    private const string Digits = "[0-9]+(\\.[0-9]+)?";

    public static JsonObject Of(Shape shape) =>
        shape switch
        {
            TextShape => Text(),
            LineShape or SettingShape => Line(),
            IdShape => new()
            {
                ["type"] = "string",
                ["pattern"] = Ids.Pattern,
                ["maxLength"] = Ids.LengthMax,
            },
            PatternShape pattern => Pattern(pattern.Pattern),
            WordShape words => new() { ["type"] = "string", ["enum"] = Words(words.Words.Keys) },
            QuantityShape quantity => Quantity(quantity),
            CountShape count => new()
            {
                ["type"] = "integer",
                ["minimum"] = count.From,
                ["maximum"] = count.To,
            },
            FlagShape => new() { ["type"] = "boolean" },
            DateShape => new()
            {
                ["type"] = "string",
                ["pattern"] = "^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$",
            },
            _ => throw new InvalidOperationException($"no schema for {shape.GetType().Name}"),
        };

    /// <summary>The value must be written in a certain way, which a description should show.</summary>
    public static bool HasForm(Shape shape) =>
        shape
            is PatternShape
                or QuantityShape
                or DateShape
                or SettingShape
                or ConditionShape
                or RequirementShape
                or LinkShape;

    /// <summary>The name of a quantity's definition: its dimension.</summary>
    public static string NameOf(QuantityShape shape) =>
        (shape.MayBeNegative ? "signed-" : "") + Kebab.FromPascal(shape.Dimension.ToString());

    private static JsonObject Line() =>
        new() { ["type"] = Words(["string", "number", "boolean"]), ["pattern"] = OneLine };

    /// <summary>A string, or a map of languages.</summary>
    private static JsonObject Text() =>
        new()
        {
            ["type"] = Words(["string", "number", "boolean", "object"]),
            ["pattern"] = OneLine,
            ["minProperties"] = 1,
            ["propertyNames"] = new JsonObject { ["pattern"] = "^[a-z]{2}$" },
            ["additionalProperties"] = Described("The text in that language.", Line()),
        };

    private static JsonObject Pattern(string pattern)
    {
        var schema = new JsonObject { ["type"] = "string", ["pattern"] = pattern };
        if (LargestNumber(pattern) is not { } largest)
        {
            return schema;
        }

        schema["type"] = Words(["string", "integer"]);
        schema["minimum"] = 0;
        schema["maximum"] = largest;
        return schema;
    }

    /// <summary>The largest whole number whose digits have that form; null where digits alone do not.</summary>
    private static long? LargestNumber(string pattern) =>
        Enumerable
            .Range(1, 9)
            .Select(digits => new string('9', digits))
            .Where(number => Regex.IsMatch(number, pattern, RegexOptions.NonBacktracking))
            .Select(number => (long?)long.Parse(number, CultureInfo.InvariantCulture))
            .LastOrDefault();

    private static JsonObject Quantity(QuantityShape shape)
    {
        var sign = shape.MayBeNegative || shape.Dimension == Dimension.Temperature ? "-?" : "";
        var units = UnitTable.Of(shape.Dimension).Select(unit => unit.Symbol).Where(symbol => symbol != Awg);
        var measured = $"{sign}{Digits} ({string.Join('|', units)})";
        var isCrossSection = shape.Dimension == Dimension.CrossSection;
        return new()
        {
            ["type"] = "string",
            ["pattern"] = isCrossSection ? $"^({measured}|({WireSizes()}) {Awg})$" : $"^{measured}$",
            ["examples"] = Words([shape.Example]),
        };
    }

    /// <summary>AWG numbers are names of sizes: only those that the table has.</summary>
    private static string WireSizes() =>
        string.Join(
            '|',
            Enumerable
                .Range(0, 100)
                .Where(size => UnitTable.InBase(size, UnitTable.Find(Awg)!) is not null)
                .Select(size => size.ToString(CultureInfo.InvariantCulture))
        );
}
