using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Site.Inspecting;
using Configurator.Site.Markup;
using Configurator.Site.Rendering;

namespace Configurator.Site;

/// <summary>Every rule of every stage that reports.</summary>
public static class AllRules
{
    public static ImmutableArray<Rule> Rules { get; } =
    [
        .. RuleBook
            .Rules.Concat(MarkupDiagnostics.All)
            .Concat(RenderingDiagnostics.All)
            .Concat(InspectionDiagnostics.All)
            .OrderBy(rule => rule.Code, StringComparer.Ordinal),
    ];
}
