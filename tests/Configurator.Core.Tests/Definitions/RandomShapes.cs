using System.Globalization;
using Configurator.Core.Binding.Kinds;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Tests.Definitions;

/// <summary>Text that is nearly what a shape asks for, in flow style: now and then a key, a form or a value is wrong.</summary>
internal static class RandomShapes
{
    private const int WrongPercent = 4;
    private const int DepthMax = 7;

    /// <summary>A definition of that kind: one key a line.</summary>
    public static string Definition(Dice dice, Kind kind, string id)
    {
        var lines = kind.Shape.Fields
            .Where(field => field.Key == kind.Name || (field.IsRequired ? !dice.Chance(WrongPercent) : dice.Chance(45)))
            .Select(field => $"{Key(dice, field.Key)}: {(field.Key == kind.Name ? id : Value(dice, field.Shape, 1))}\n");
        return string.Concat(lines);
    }

    public static string Value(Dice dice, Shape shape, int depth) =>
        dice.Chance(WrongPercent) || depth > DepthMax ? Scalar(dice) : shape switch
        {
            RecordShape record => Map(record.Fields
                .Where(field => field.IsRequired ? !dice.Chance(WrongPercent) : dice.Chance(30))
                .Select(field => $"{Key(dice, field.Key)}: {Value(dice, field.Shape, depth + 1)}")),
            ListShape list => $"[{Some(dice, 4, () => Value(dice, list.Item, depth + 1))}]",
            TableShape table => Map(Enumerable.Range(0, dice.Below(4)).Select(_ => $"{Value(dice, table.Key, DepthMax + 1)}: {Value(dice, table.Value, depth + 1)}")),
            ConditionShape or RequirementShape or LinkShape => Condition(dice, depth),
            TextShape when dice.Chance(15) => $"{{en: {Scalar(dice)}, es: {Scalar(dice)}}}",
            WordShape words => dice.Pick([.. words.Words.Keys]),
            QuantityShape quantity => Quantity(dice, quantity.Dimension),
            CountShape count => Number(dice, count.From, count.To),
            FlagShape => dice.Chance(50) ? "true" : "false",
            DateShape => $"20{Number(dice, 10, 40)}-0{Number(dice, 1, 9)}-1{Number(dice, 0, 9)}",
            PatternShape pattern => Matching(dice, pattern),
            SettingShape when dice.Chance(50) => Quantity(dice, dice.Pick(Enum.GetValues<Dimension>())),
            _ => dice.Pick(Corpus.Words),
        };

    /// <summary>Some value or other, mostly one that YAML reads.</summary>
    public static string Scalar(Dice dice) => dice.Below(6) switch
    {
        0 => dice.Pick(Corpus.Snippets),
        1 => Quantity(dice, dice.Pick(Enum.GetValues<Dimension>())),
        2 => Number(dice, -3, 70_000),
        3 => $"\"{dice.Pick(Corpus.Words)} {dice.Pick(Corpus.Snippets).Replace("\"", "", StringComparison.Ordinal)}\"",
        4 => $"{dice.Pick(Corpus.Words)} {dice.Pick(Corpus.Words)}",
        _ => dice.Pick(Corpus.Words),
    };

    private static string Key(Dice dice, string key) => dice.Chance(WrongPercent) ? dice.Pick(Corpus.Words) : key;

    private static string Map(IEnumerable<string> entries) => $"{{{string.Join(", ", entries)}}}";

    private static string Some(Dice dice, int most, Func<string> item) =>
        string.Join(", ", Enumerable.Range(0, dice.Below(most)).Select(_ => item()));

    private static string Condition(Dice dice, int depth) => dice.Below(depth > DepthMax ? 1 : 6) switch
    {
        0 or 1 => dice.Pick(Corpus.Words),
        2 => $"{{all: [{Some(dice, 4, () => Condition(dice, depth + 1))}]}}",
        3 => $"{{any: [{Some(dice, 4, () => Condition(dice, depth + 1))}], none: [{Some(dice, 3, () => Condition(dice, depth + 1))}]}}",
        4 => $"{{option: {dice.Pick(Corpus.Words)}, {dice.Pick(["at-least", "at-most", "exactly", "because"])}: {Number(dice, 0, 4)}}}",
        _ => $"{{option: {dice.Pick(Corpus.Words)}, because: {dice.Pick(Corpus.Words)}}}",
    };

    private static string Quantity(Dice dice, Dimension dimension)
    {
        var units = UnitTable.Of(dice.Chance(90) ? dimension : dice.Pick(Enum.GetValues<Dimension>())).ToList();
        var number = dice.Below(5) switch
        {
            0 => "0",
            1 => Number(dice, -50, 50),
            2 => $"{Number(dice, 0, 5000)}.{Number(dice, 0, 999)}",
            3 => Number(dice, 0, int.MaxValue),
            _ => Number(dice, 1, 100),
        };
        return units.Count == 0 ? number : $"{number} {dice.Pick(units)}";
    }

    private static string Number(Dice dice, int from, int to) =>
        (from + (long)dice.Below((int)Math.Min(int.MaxValue, (long)to - from + 1))).ToString(CultureInfo.InvariantCulture);

    /// <summary>A word that has the form asked for, where there is one.</summary>
    private static string Matching(Dice dice, PatternShape pattern)
    {
        var fitting = Corpus.Words.Where(word => pattern.IsMatch(word)).ToList();
        return fitting.Count == 0 ? dice.Pick(Corpus.Words) : dice.Pick(fitting);
    }
}
