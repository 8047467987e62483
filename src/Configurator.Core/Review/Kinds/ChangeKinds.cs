using System.Collections.Immutable;

namespace Configurator.Core.Review.Kinds;

/// <summary>Every sort of change that a review can tell.</summary>
public static class ChangeKinds
{
    /// <summary>In the order in which a review tells them.</summary>
    public static ImmutableArray<ChangeKind> All { get; } =
    [
        .. HomeKinds.All,
        .. OrderKinds.All,
        .. PublishedKinds.All,
        .. RecordKinds.All,
        .. HardwareKinds.All,
        .. SettingKinds.All,
        .. DefinitionKinds.All,
        .. SiteKinds.All,
    ];
}
