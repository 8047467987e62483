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

    /// <summary>By name; else by its unit, where only one result has such a unit.</summary>
    /// <returns>A double, a list of doubles, a text, a truth; null where nothing fits.</returns>
    public object? Find(string key)
    {
        var lower = key.ToLowerInvariant();
        if (_others.Find(other => Names(other.Names, lower)) is { Value: { } said })
        {
            return said;
        }

        foreach (var number in _numbers)
        {
            var (stem, unit) = Units.Split(lower, number.Kind);
            if (Names(number.Names, lower) || (unit is not null && Names(number.Names, stem)))
            {
                return Read(number, unit);
            }
        }

        return ByUnit(lower);
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
