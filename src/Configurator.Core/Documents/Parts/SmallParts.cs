using System.Collections.Immutable;
using Configurator.Core.Documents.Cables;
using Configurator.Core.Documents.Pages.Configurations;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Parts;

/// <summary>Something small, counted from the lists that it is used in.</summary>
/// <param name="Size">Thread or cross-section; empty where there is only one.</param>
internal sealed record SmallPart(string Title, string Size, int Quantity);

/// <summary>What wiring by hand uses up: terminals of the box, ferrules, glands, shield clamps, labels.</summary>
internal static class SmallParts
{
    private const int EndsOfCable = 2;

    public static ImmutableArray<SmallPart> Of(ConfigurationContext context)
    {
        var (words, cables) = (context.Words, CableList.Of(context));
        var cores = cables
            .Where(cable => cable.From.Plug is null || cable.To.Plug is null)
            .SelectMany(cable =>
                cable
                    .Cores.Where(core => core.IsUsed)
                    .Select(core =>
                        (Cable: cable, Size: core.Conductor ?? cable.Conductor, IsStraight: cable.IsStraight(core))
                    )
            )
            .OrderBy(core => core.Size?.InBase ?? 0)
            .ToList();
        return
        [
            .. Count(
                words.BoxTerminals,
                cores.Where(core => core.Cable.From.Plug is null && !core.IsStraight).Select(core => Printed(core.Size))
            ),
            .. Count(
                words.Ferrule,
                cores.SelectMany(core => Enumerable.Repeat(Ferrules.For(core.Size), EndsByHand(core.Cable)))
            ),
            .. Count(
                words.CableGland,
                cables.Where(cable => cable.From.Plug is null).OrderBy(Across).Select(cable => CableWords.Entry(cable))
            ),
            .. Count(words.ShieldClamps, cables.Where(cable => cable.Leads is { IsShielded: true }).Select(_ => "")),
            new(words.Labels, "", cables.Length * EndsOfCable),
        ];

        string Printed(Quantity? size) => context.Documents.Print(size);
    }

    private static Rational Across(CableEntry cable) => cable.Diameter?.InBase ?? 0;

    private static int EndsByHand(CableEntry cable) =>
        (cable.From.Plug is null ? 1 : 0) + (cable.To.Plug is null ? 1 : 0);

    /// <summary>How many of each size, in the order in which they come; a size that nobody knows stands as
    /// empty.</summary>
    private static IEnumerable<SmallPart> Count(string title, IEnumerable<string> sizes) =>
        sizes
            .GroupBy(size => size, StringComparer.Ordinal)
            .Select(size => new SmallPart(title, size.Key, size.Count()));
}
