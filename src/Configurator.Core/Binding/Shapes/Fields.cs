using System.Collections.Immutable;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding.Shapes;

/// <summary>A record as read: each sound value under its key. What was missing or faulty is absent and
/// reported.</summary>
/// <param name="faulty">Keys whose values have a fault, in whole or in part.</param>
internal sealed class Fields(
    RecordShape shape,
    SourceSpan span,
    ImmutableDictionary<string, Located<object>> values,
    ImmutableHashSet<string> faulty
)
{
    public SourceSpan Span => span;

    /// <summary>Every key that was written is one of the record's: what is absent was never meant to be
    /// there.</summary>
    public required bool KeysAreKnown { get; init; }

    /// <summary>There is no fault anywhere in it.</summary>
    public required bool IsWhole { get; init; }

    /// <summary>There is no fault under these keys, none is lacking, and nothing may have been meant for one of
    /// them.</summary>
    public bool AreSound(params string[] keys) => KeysAreKnown && keys.All(IsSound);

    private bool IsSound(string key) => Has(key) ? !faulty.Contains(key) : !shape.Find(key)!.IsRequired;

    /// <summary>It was written, sound or not.</summary>
    public bool Has(string key) => values.ContainsKey(Known(key)) || faulty.Contains(key);

    public Located<T>? One<T>(string key)
        where T : notnull => values.TryGetValue(Known(key), out var value) ? new((T)value.Value, value.Span) : null;

    /// <summary>The value alone, or null.</summary>
    public T? Value<T>(string key)
        where T : class => One<T>(key)?.Value;

    public T Value<T>(string key, T otherwise)
        where T : struct => One<T>(key)?.Value ?? otherwise;

    public ImmutableArray<Located<T>> Many<T>(string key)
        where T : notnull =>
        One<ImmutableArray<Located<object>>>(key) is { } list
            ? [.. list.Value.Select(item => new Located<T>((T)item.Value, item.Span))]
            : [];

    public ImmutableArray<Fields> Records(string key) => [.. Many<Fields>(key).Select(item => item.Value)];

    public ImmutableArray<KeyValuePair<Located<string>, Located<T>>> Table<T>(string key)
        where T : notnull =>
        One<ImmutableArray<KeyValuePair<Located<string>, Located<object>>>>(key) is { } table
            ?
            [
                .. table.Value.Select(entry =>
                    KeyValuePair.Create(entry.Key, new Located<T>((T)entry.Value.Value, entry.Value.Span))
                ),
            ]
            : [];

    private string Known(string key) =>
        shape.Find(key) is null ? throw new InvalidOperationException($"{shape.Name} has no key {key}") : key;
}
