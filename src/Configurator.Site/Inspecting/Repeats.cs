using System.Collections.Immutable;
using Configurator.Core.Diagnostics;

namespace Configurator.Site.Inspecting;

/// <summary>A mistake in a layout is on every page. After some places the rest are counted, not listed.</summary>
internal static class Repeats
{
    public const int ListedMax = 20;

    public static ImmutableArray<Diagnostic> Fold(IEnumerable<Diagnostic> inOrder) =>
        [.. Diagnostic.InOrder(inOrder.GroupBy(it => (it.Rule, it.Message)).SelectMany(Listed))];

    private static IEnumerable<Diagnostic> Listed(IEnumerable<Diagnostic> alike)
    {
        Diagnostic[] all = [.. alike];
        return all.Length <= ListedMax
            ? all
            : [.. all[..(ListedMax - 1)], WithCount(all[ListedMax - 1], all.Length - ListedMax)];
    }

    private static Diagnostic WithCount(Diagnostic last, int more)
    {
        var count = new Note(FormattableString.Invariant($"and in {more} further places"), last.Span);
        return last with { Notes = [.. last.Notes, count] };
    }
}
