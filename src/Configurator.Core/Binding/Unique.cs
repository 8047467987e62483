using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>Finds names that are given twice.</summary>
internal static class Unique
{
    /// <summary>The first of each name, ignoring case; each further one is reported.</summary>
    public static ImmutableArray<T> By<T>(
        string noun,
        IEnumerable<T> all,
        Func<T, Located<string>> name,
        ICollection<Diagnostic> report
    )
    {
        var first = new Dictionary<string, SourceSpan>(StringComparer.OrdinalIgnoreCase);
        var kept = ImmutableArray.CreateBuilder<T>();
        foreach (var item in all)
        {
            if (first.TryAdd(name(item).Value, name(item).Span))
            {
                kept.Add(item);
            }
            else
            {
                report.Add(BindingDiagnostics.Taken(noun, name(item), first[name(item).Value]));
            }
        }

        return kept.DrainToImmutable();
    }
}
