using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>A cleaner, and what may follow it on the same day.</summary>
internal sealed record AgentDay(AgentKind Cleaner, ImmutableArray<AgentKind> Then, ImmutableArray<AgentKind> Never);

/// <summary>Which agents are never used on one day: what carries chlorine, with what is acid.</summary>
/// <remarks>Source: product labels and public poison-control guides: chlorine with acid gives chlorine gas; one day:
/// common practice, no source.</remarks>
internal static class AgentDays
{
    private static readonly ImmutableArray<AgentKind> Cleaners =
    [
        AgentKind.ChlorinatedAlkaline,
        AgentKind.Caustic,
        AgentKind.Acid,
    ];

    private static readonly ImmutableArray<AgentKind> Sanitizers =
    [
        AgentKind.Quat,
        AgentKind.Hypochlorite,
        AgentKind.Peracetic,
    ];

    /// <summary>Empty where nothing used carries chlorine, or nothing is acid.</summary>
    public static ImmutableArray<AgentDay> Of(IReadOnlyCollection<AgentKind> used) =>
        used.Any(HasChlorine) && used.Any(IsAcid)
            ? [.. Cleaners.Where(used.Contains).Select(cleaner => Day(cleaner, used))]
            : [];

    private static AgentDay Day(AgentKind cleaner, IReadOnlyCollection<AgentKind> used) =>
        new(
            cleaner,
            [.. Sanitizers.Where(used.Contains).Where(kind => !Clash(cleaner, kind))],
            [.. Cleaners.Concat(Sanitizers).Where(used.Contains).Where(kind => Clash(cleaner, kind))]
        );

    public static bool Clash(AgentKind one, AgentKind other) =>
        (HasChlorine(one) && IsAcid(other)) || (IsAcid(one) && HasChlorine(other));

    private static bool HasChlorine(AgentKind kind) => kind is AgentKind.ChlorinatedAlkaline or AgentKind.Hypochlorite;

    private static bool IsAcid(AgentKind kind) => kind is AgentKind.Acid or AgentKind.Peracetic;
}
