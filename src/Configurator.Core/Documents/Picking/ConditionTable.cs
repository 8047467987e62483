using System.Collections.Immutable;
using System.Text.Json;
using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Picking;

/// <summary>Conditions that several loads and parts share, each written once and then known by its number.</summary>
internal sealed class ConditionTable(Machine machine)
{
    private readonly Dictionary<string, int> _numbers = new(StringComparer.Ordinal);
    private readonly List<Condition> _conditions = [];
    private readonly ImmutableSortedDictionary<OptionId, int> _places = machine
        .Options.Keys.Select(KeyValuePair.Create)
        .ToImmutableSortedDictionary();

    public int Add(Condition condition)
    {
        var key = ConditionKey.Of(condition);
        if (!_numbers.TryGetValue(key, out var number))
        {
            number = _conditions.Count;
            _numbers.Add(key, number);
            _conditions.Add(condition);
        }

        return number;
    }

    /// <summary>An option alone is its place; else a list that starts with its sort: all, any, none, times.</summary>
    public void Write(Utf8JsonWriter json)
    {
        json.WriteStartArray("conditions");
        _conditions.ForEach(condition => Write(json, condition));
        json.WriteEndArray();
    }

    private void Write(Utf8JsonWriter json, Condition condition)
    {
        switch (condition)
        {
            case OptionCount count:
                Write(json, count);
                break;
            case AllOf all:
                Write(json, "all", all.Of);
                break;
            case AnyOf any:
                Write(json, "any", any.Of);
                break;
            case NoneOf none:
                Write(json, "none", none.Of);
                break;
            default:
                throw new InvalidOperationException($"no form for {condition.GetType().Name}");
        }
    }

    private void Write(Utf8JsonWriter json, string word, ImmutableArray<Condition> parts)
    {
        json.WriteStartArray();
        json.WriteStringValue(word);
        foreach (var part in parts)
        {
            Write(json, part);
        }

        json.WriteEndArray();
    }

    /// <summary>An option that is not offered is never taken.</summary>
    private void Write(Utf8JsonWriter json, OptionCount count)
    {
        if (!_places.TryGetValue(count.Option, out var place))
        {
            Write(json, count.Holds(_ => 0) ? "all" : "any", []);
        }
        else if (count is { AtLeast: 1, AtMost: null })
        {
            json.WriteNumberValue(place);
        }
        else
        {
            json.WriteStartArray();
            json.WriteStringValue("times");
            json.WriteNumberValue(place);
            json.WriteNumberValue(count.AtLeast);
            json.WriteNumberValue(count.AtMost ?? int.MaxValue);
            json.WriteEndArray();
        }
    }
}
