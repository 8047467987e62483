using System.Globalization;
using System.Text.Json;

namespace Configurator.Benchmarks.Examples;

/// <summary>Whether an example came out as expected, and what came out.</summary>
internal sealed record Judgement(string Id, bool IsPass, string Got)
{
    public override string ToString() => $"{Id}\t{(IsPass ? "pass" : "fail")}\t{Got}";

    public static Judgement Of(ExampleRow row, Func<string, CsvTable?> tables)
    {
        try
        {
            var given = new Given(ExampleRow.Fields(row.Inputs), tables);
            var tolerance = Tolerance.Parse(row.Tolerance);
            var results = ExampleRow.Fields(row.Expected).Select(expected => Part(row.Topic, given, expected.Key, expected.Value, tolerance)).ToList();
            return new(row.Id, results.Count > 0 && results.TrueForAll(result => result.IsPass), string.Join("; ", results.Select(result => result.Got)));
        }
        catch (Exception problem) when (problem is not OutOfMemoryException)
        {
            return new(row.Id, false, $"cannot be evaluated: {problem.GetType().Name}: {problem.Message.ReplaceLineEndings(" ")}");
        }
    }

    private static (bool IsPass, string Got) Part(string topic, Given given, string key, JsonElement expected, Tolerance tolerance)
    {
        if (expected.ValueKind == JsonValueKind.Object)
        {
            var inner = Narrowed(given, key);
            var parts = expected.EnumerateObject().Select(part => Part(topic, inner, part.Name, part.Value, tolerance)).ToList();
            return (parts.TrueForAll(part => part.IsPass), $"{key}: {{{string.Join("; ", parts.Select(part => part.Got))}}}");
        }

        var got = Evaluation.Find(topic, given, key, expected);
        return (got is not null && Agrees(key, expected, got, tolerance), $"{key}={(got is null ? "not found from these inputs" : Print(got))}");
    }

    /// <summary>The name of a group of results is an input too: a bit rate, a mounting, a type.</summary>
    private static Given Narrowed(Given given, string key)
    {
        var value = JsonSerializer.SerializeToElement(key);
        return given.With("com", value).With("mounting", value).With("case", value);
    }

    private static bool Agrees(string key, JsonElement expected, object got, Tolerance tolerance) =>
        (expected.ValueKind, got) switch
        {
            (JsonValueKind.Null, Missing) => true,
            (JsonValueKind.True, bool truth) => truth,
            (JsonValueKind.False, bool truth) => !truth,
            (JsonValueKind.Number, double number) => tolerance.Allows(key, expected.GetDouble(), number),
            (JsonValueKind.Number, IReadOnlyCollection<object> { Count: 1 } one) => Agrees(key, expected, one.First(), tolerance),
            (JsonValueKind.Array, IReadOnlyList<object> list) => list.Count == expected.GetArrayLength()
                && expected.EnumerateArray().Zip(list).All(pair => Agrees(key, pair.First, pair.Second, tolerance)),
            (JsonValueKind.String, double number) => Given.ValueOf(expected) is { } value && tolerance.Allows(key, value.ToDouble(), number),
            (JsonValueKind.True or JsonValueKind.False, string text) => expected.GetBoolean() == text is "yes" or "valid" or "true",
            (JsonValueKind.String, bool truth) => expected.GetString()!.ToLowerInvariant() is "yes" or "valid" or "true" or "ok" or "pass" == truth,
            (JsonValueKind.String, string text) => Same(expected.GetString()!, text),
            _ => false,
        };

    private static bool Same(string expected, string got) =>
        Bare(expected) == Bare(got)
        || (Given.ValueOf(expected) is { } number && Given.ValueOf(got) is { } value && number == value);

    private static string Bare(string text) => string.Concat(text.Where(character => !char.IsWhiteSpace(character))).ToUpperInvariant().Replace("0X", "", StringComparison.Ordinal);

    private static string Print(object got) =>
        got switch
        {
            double number => number.ToString("G10", CultureInfo.InvariantCulture),
            bool truth => truth ? "true" : "false",
            IEnumerable<object> list => $"[{string.Join(", ", list.Select(Print))}]",
            _ => got.ToString()!,
        };
}
