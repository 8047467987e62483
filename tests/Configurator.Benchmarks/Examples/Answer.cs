using System.Collections.Immutable;
using Configurator.Core.Model.Units;

namespace Configurator.Benchmarks.Examples;

/// <summary>What was computed: each result with the names it goes by, likeliest first.</summary>
internal sealed class Answer
{
    private readonly List<(ImmutableArray<string> Names, Kind Kind, ImmutableArray<Rational> Values, bool IsList)> _numbers = [];
    private readonly List<(ImmutableArray<string> Names, object Value)> _others = [];

    public void Add(Kind kind, Rational? value, params ReadOnlySpan<string> names)
    {
        if (value is { } known)
        {
            _numbers.Add(([.. names], kind, [known], false));
        }
    }

    public void Add(Kind kind, long value, params ReadOnlySpan<string> names) => Add(kind, (Rational?)value, names);

    public void Add(Kind kind, double value, params ReadOnlySpan<string> names)
    {
        if (double.IsFinite(value))
        {
            Add(kind, Rational.Of((decimal)value), names);
        }
    }

    public void Add(Kind kind, IEnumerable<Rational> values, params ReadOnlySpan<string> names) =>
        _numbers.Add(([.. names], kind, [.. values], true));

    /// <summary>A text, a truth, or a list of such.</summary>
    public void Say(object value, params ReadOnlySpan<string> names) => _others.Add(([.. names], value));

    /// <summary>By name, likeliest first; then by place in a list, as in <c>z_20</c>; then by its unit, where only one result has such
    /// a unit.</summary>
    /// <returns>Doubles, lists of doubles, texts, truths.</returns>
    public IEnumerable<object> FindAll(string key)
    {
        var lower = key.ToLowerInvariant();
        return
        [
            .. _others.Where(other => Names(other.Names, lower)).Select(other => other.Value),
            .. _numbers.Select(number => ByName(number, lower)).OfType<object>(),
            .. InList(lower) is { } item ? [item] : Array.Empty<object>(),
            .. ByUnit(lower) is { } other ? [other] : Array.Empty<object>(),
        ];
    }

    private static object? ByName((ImmutableArray<string> Names, Kind Kind, ImmutableArray<Rational> Values, bool IsList) number, string key)
    {
        var (stem, unit) = Units.Split(key, number.Kind);
        return Names(number.Names, key) || (unit is not null && Names(number.Names, stem)) ? Read(number, unit) : null;
    }

    /// <summary>Numbered from 1; <c>last</c>, <c>max</c> and <c>min</c> as well.</summary>
    private object? InList(string key)
    {
        var at = key.LastIndexOf('_');
        if (at <= 0 || _numbers.Where(number => number.IsList).Select(number => ByName(number, key[..at])).FirstOrDefault(found => found is not null) is not IReadOnlyList<object> { Count: > 0 } list)
        {
            return null;
        }

        return key[(at + 1)..] switch
        {
            "last" or "end" => list[^1],
            "max" => list.Max(),
            "min" => list.Min(),
            var text when int.TryParse(text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var place) && place >= 1 && place <= list.Count => list[place - 1],
            _ => null,
        };
    }

    private object? ByUnit(string key)
    {
        if (Units.KindOf(key) is not { } kind)
        {
            return null;
        }

        var such = _numbers.Where(number => number.Kind == kind).ToList();
        return such.Count == 1 ? Read(such[0], Units.Split(key, kind).Unit) : null;
    }

    private static object Read((ImmutableArray<string> Names, Kind Kind, ImmutableArray<Rational> Values, bool IsList) number, ExampleUnit? unit)
    {
        var values = number.Values.Select(value => (unit?.FromBase(value) ?? value).ToDouble()).ToList();
        return number.IsList ? values.ConvertAll(value => (object)value) : values[0];
    }

    private static bool Names(ImmutableArray<string> names, string key) => names.Contains(key, StringComparer.OrdinalIgnoreCase);
}
