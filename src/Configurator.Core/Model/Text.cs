using System.Collections.Immutable;

namespace Configurator.Core.Model;

/// <summary>Words for readers: one for all languages, or one a language.</summary>
public sealed class Text
{
    /// <summary>The language that stands in where a translation is missing.</summary>
    public const string BaseLanguage = "en";

    private readonly ImmutableSortedDictionary<string, string> _byLanguage;

    private Text(ImmutableSortedDictionary<string, string> byLanguage) => _byLanguage = byLanguage;

    public static Text Empty { get; } = Of("");

    public IEnumerable<string> Languages => _byLanguage.Keys;

    public static Text Of(string text) =>
        new(ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal).Add(BaseLanguage, text));

    public static Text Of(IEnumerable<KeyValuePair<string, string>> byLanguage) =>
        new(byLanguage.ToImmutableSortedDictionary(StringComparer.Ordinal));

    public bool IsIn(string language) => _byLanguage.ContainsKey(language);

    /// <summary>In that language, else in the base language, else in the first one given.</summary>
    public string In(string language) =>
        _byLanguage.TryGetValue(language, out var text) ? text
        : _byLanguage.TryGetValue(BaseLanguage, out text) ? text
        : _byLanguage.Values.FirstOrDefault() ?? "";

    public override string ToString() => In(BaseLanguage);
}
