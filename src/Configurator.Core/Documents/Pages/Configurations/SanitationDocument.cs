using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>The sheet of the cleaning crew: what is made safe, covered and opened; the steps in order with what each
/// fitted option adds; what is looked at and signed afterwards.</summary>
internal static class SanitationDocument
{
    public static ConfigurationDocument Document { get; } =
        new("sanitation", "SN", words => words.Sanitation, words => words.SanitationLead, Sections)
        {
            IsTranslated = true,
            Standards = words => words.SanitationStandards,
        };

    private static IEnumerable<Section> Sections(ConfigurationContext context)
    {
        var words = context.Words;
        yield return new("before", words.BeforeYouStart, [.. Before(context)]);
        var general = Additions(context, step: null);
        if (!general.IsEmpty)
        {
            yield return new(
                "live",
                words.BeforeLockOut,
                [new Steps([new("before-lock-out", words.BeforeLockOut, [], general)])]
            );
        }

        yield return new(
            "steps",
            words.StepsTitle,
            [new Steps([.. Enum.GetValues<CleaningStep>().Select(step => Step(context, step))])]
        );
        if (context.Fitted.Machine.Sanitation is not null)
        {
            yield return new("after", words.AfterTitle, [.. After(context)]);
        }
    }

    private static IEnumerable<Block> Before(ConfigurationContext context)
    {
        var words = context.Words;
        if (TranslationChecks.MissingIn(context.Fitted, words.Language).Any())
        {
            yield return new Paragraph(words.NotTranslated);
        }

        yield return new Caution(words.Cautions, Cautions.Sanitation(words, context.Fitted));
        yield return AreaMap.Of(context);
        yield return new Paragraph(AreaMap.Legend(context));
        if (context.Fitted.Machine.Sanitation is not null)
        {
            yield return Energies(context);
            yield return new CheckLists(
                [
                    Listed(context, words.CoverTitle, care => care.Cover),
                    Listed(context, words.NeverCoverTitle, care => care.NeverCover),
                    Listed(context, words.RemoveTitle, care => care.Remove),
                ],
                HasBoxes: true
            );
        }
    }

    private static Table Energies(ConfigurationContext context)
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

    private static CheckList Listed(
        ConfigurationContext context,
        string title,
        Func<WashCare, ImmutableArray<Text>> pick
    )
    {
        ImmutableArray<string> items =
        [
            .. SanitationFacts
                .Cares(context.Fitted)
                .SelectMany(care => pick(care))
                .Select(text => context.In(text))
                .Distinct(StringComparer.Ordinal),
        ];
        return new(title, items.IsEmpty ? [context.Words.Nothing] : items);
    }

    /// <summary>Where the machine says nothing of its cleaning, a step that nothing adds to is left to the
    /// plant.</summary>
    private static Step Step(ConfigurationContext context, CleaningStep step)
    {
        var additions = Additions(context, step);
        return new(
            $"step-{(int)step + 1}",
            WordLists.Of(step, context.Words),
            context.Fitted.Machine.Sanitation is not null ? SanitationSteps.Lines(context, step)
                : additions.IsEmpty ? [context.Words.AsProgrammeSays]
                : [],
            additions
        );
    }

    private static ImmutableArray<Addition> Additions(ConfigurationContext context, CleaningStep? step) =>
        [
            .. NotesByOption
                .Owners(context)
                .SelectMany(owner =>
                    owner
                        .Notes.On(NoteSubject.Sanitation, context.Words.Language)
                        .Where(note => note.Step == step)
                        .Select(note => new Addition(
                            owner.Link,
                            new(note.Markdown, note.Span, BelowLevel: 4)
                            {
                                Language = note.Language == context.Words.Language ? null : note.Language,
                            }
                        ))
                ),
        ];

    private static IEnumerable<Block> After(ConfigurationContext context)
    {
        var words = context.Words;
        var inspect = Listed(context, words.InspectTitle, care => care.Inspect);
        var restart = Listed(context, words.RestartTitle, care => care.Restart);
        yield return new CheckLists(
            [
                inspect with
                {
                    Items =
                    [
                        .. inspect.Items,
                        words.CapsAndConnectors(context.Fitted.OpenPorts.Count(), context.Fitted.Cabled.Count()),
                    ],
                },
                restart with
                {
                    Items = [words.GuardsBack, words.UnlockLast, .. restart.Items, words.StartEmpty],
                },
            ],
            HasBoxes: true
        );
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
}
