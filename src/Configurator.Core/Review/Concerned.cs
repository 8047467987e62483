using System.Collections.Immutable;
using Configurator.Core.Engineering;
using Configurator.Core.Model;

namespace Configurator.Core.Review;

/// <summary>Which published configurations and delivered machines a change concerns.</summary>
internal static class Concerned
{
    public static ImmutableArray<string> PublishedWith(
        this ReviewContext context,
        Func<EngineeredConfiguration, bool> has
    ) => [.. context.Configurations.Where(pair => has(pair.After)).Select(pair => pair.Id.Value)];

    /// <summary>Names in backticks, of machines delivered before the change.</summary>
    public static ImmutableArray<string> DeliveredWith(this ReviewContext context, Func<AsBuilt, bool> has) =>
        [.. context.Before.Catalogue.AsBuilts.Where(has).Select(asBuilt => $"`{asBuilt.Id.Value}`")];

    public static string OnDelivered(ImmutableArray<string> names) => $"on delivered {string.Join(", ", names)}";
}
