using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>The names of one sort that can be meant, and those whose definition is too faulty to use.</summary>
/// <param name="Noun">What they name, for messages.</param>
/// <param name="Faulty">Known names without a sound definition: to mention one is no fault of its own.</param>
internal sealed record Names<T>(
    string Noun,
    ImmutableSortedDictionary<string, T> Known,
    ImmutableHashSet<string> Faulty
)
    where T : class
{
    public static Names<T> Of(
        string noun,
        IEnumerable<T> all,
        Func<T, string> name,
        IEnumerable<string>? faulty = null
    ) =>
        new(
            noun,
            all.GroupBy(name, StringComparer.Ordinal)
                .ToImmutableSortedDictionary(group => group.Key, group => group.First(), StringComparer.Ordinal),
            [.. faulty ?? []]
        );

    /// <summary>What is meant; null, and reported, where there is no such thing.</summary>
    public T? Find(Located<string> name, ICollection<Diagnostic> report)
    {
        if (Known.TryGetValue(name.Value, out var found))
        {
            return found;
        }

        if (!Faulty.Contains(name.Value))
        {
            report.Add(BindingDiagnostics.NotFound(Noun, name, Known.Keys.Concat(Faulty)));
        }

        return null;
    }

    /// <summary>Those names are known from here on, but their definitions are not used.</summary>
    public Names<T> Without(IEnumerable<string> faulty)
    {
        ImmutableArray<string> all = [.. faulty];
        return this with { Known = Known.RemoveRange(all), Faulty = Faulty.Union(all) };
    }

    public bool Knows(string name) => Known.ContainsKey(name) || Faulty.Contains(name);
}
