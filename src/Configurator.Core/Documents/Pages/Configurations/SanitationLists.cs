using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>What the crew ticks off around the steps: energies, covers, what is looked at, what is signed.</summary>
internal static class SanitationLists
{
    public static Table Energies(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "energies",
            words.EnergiesTitle,
            [new(words.EnergyWord), new(words.State), new(words.WhereAndWhy)],
            [
                .. SanitationFacts
                    .Energies(context.Fitted)
                    .Select(care =>
                        Row.Of(
                            words.OfEnergy(care.Energy),
                            words.OfState(care.State, care.Energy),
                            context.In(care.Why)
                        )
                    ),
            ]
        );
    }

    public static CheckLists Before(ConfigurationContext context)
    {
        var words = context.Words;
        return new([
            Listed(context, words.CoverTitle, care => care.Cover),
            Listed(context, words.NeverCoverTitle, care => care.NeverCover) with
            {
                HasBoxes = false,
            },
            Listed(context, words.RemoveTitle, care => care.Remove),
        ]);
    }

    public static IEnumerable<Block> After(ConfigurationContext context)
    {
        var words = context.Words;
        var inspect = Listed(context, words.InspectTitle, care => care.Inspect);
        yield return new CheckLists([
            inspect with
            {
                Items =
                [
                    .. inspect.Items,
                    words.CapsAndConnectors(context.Fitted.OpenPorts.Count(), context.Fitted.Cabled.Count()),
                ],
            },
            new(words.RestartTitle, [.. SanitationRestart.Lines(context)]),
        ]);
        yield return new FormFields([
            new(words.SwabLimit, words.SetByPlant),
            new(words.SwabResult),
            new(words.AllergenLimit, words.SetByPlant),
            new(words.DryingWait, words.SetByPlant),
            new(words.CrewField),
            new(words.NameField),
            new(words.TimeField),
            new(words.WashSignOff),
        ]);
    }

    private static CheckList Listed(
        ConfigurationContext context,
        string title,
        Func<WashCare, ImmutableArray<Text>> pick
    )
    {
        var items = Items(context, pick);
        return items.IsEmpty ? new(title, [context.Words.Nothing]) { HasBoxes = false } : new(title, items);
    }

    /// <summary>Of everything that cares, each text once.</summary>
    public static ImmutableArray<string> Items(
        ConfigurationContext context,
        Func<WashCare, ImmutableArray<Text>> pick
    ) =>
        [
            .. SanitationFacts
                .Cares(context.Fitted)
                .SelectMany(care => pick(care))
                .Select(text => context.In(text))
                .Distinct(StringComparer.Ordinal),
        ];
}
