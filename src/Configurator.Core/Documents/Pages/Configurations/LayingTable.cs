using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.Cables;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>How each cable is laid: its way along the cable path, how it enters the box, how far it may be
/// bent.</summary>
internal static class LayingTable
{
    public static Table Of(ConfigurationContext context, ImmutableArray<CableEntry> cables)
    {
        var words = context.Words;
        return new(
            "laying-list",
            words.LayingList,
            [
                new(words.Cable),
                new(words.From),
                new(words.To),
                new(words.WayPassed),
                new(words.KeepApart),
                new(words.Gland),
                new(words.BendRadius, IsNumber: true),
                new(words.Length, IsNumber: true),
            ],
            [
                .. cables.Select(cable =>
                    Row.Of(
                        new Link(cable.Name, "#" + cable.Anchor),
                        CableWords.End(context, cable.From),
                        CableWords.End(context, cable.To),
                        CableWords.Way(context, cable),
                        CableWords.Group(words, cable),
                        CableWords.Entry(cable),
                        context.Documents.Print(cable.BendRadius),
                        CableWords.Length(context, cable)
                    )
                ),
            ]
        );
    }
}
