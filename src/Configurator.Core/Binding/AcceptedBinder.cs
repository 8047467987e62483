using System.Collections.Immutable;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Model;

namespace Configurator.Core.Binding;

/// <summary>Binds accepted deviations.</summary>
internal static class AcceptedBinder
{
    public static ImmutableArray<AcceptedDeviation> Bind(ImmutableArray<Fields> all) =>
        [.. all.Select(Read).OfType<AcceptedDeviation>()];

    private static AcceptedDeviation? Read(Fields f) =>
        f.One<string>("finding") is { } finding
        && f.Value<Text>("by") is { } by
        && f.Value<Text>("because") is { } because
        && f.One<DateOnly>("until") is { } until
            ? new(finding, by, because, until.Value)
            : null;
}
