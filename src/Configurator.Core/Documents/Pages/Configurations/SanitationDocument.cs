using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>What the sanitation crew needs: cautions, areas, and the steps in order with what each fitted option
/// adds.</summary>
internal static class SanitationDocument
{
    public static ConfigurationDocument Document { get; } =
        new("sanitation", "SN", words => words.Sanitation, words => words.SanitationLead, Sections);

    private static IEnumerable<Section> Sections(ConfigurationContext context)
    {
        var words = context.Words;
        yield return new(
            "before",
            words.BeforeYouStart,
            [new Caution(words.Cautions, Cautions.Sanitation(words)), Areas(context)]
        );
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
    }

    /// <summary>A step that nothing fitted adds to is still done.</summary>
    private static Step Step(ConfigurationContext context, CleaningStep step)
    {
        var additions = Additions(context, step);
        return new(
            $"step-{(int)step + 1}",
            WordLists.Of(step, context.Words),
            additions.IsEmpty ? [context.Words.AsProgrammeSays] : [],
            additions
        );
    }

    private static ImmutableArray<Addition> Additions(ConfigurationContext context, CleaningStep? step) =>
        [
            .. NotesByOption
                .Owners(context)
                .SelectMany(owner =>
                    owner
                        .Notes.On(NoteSubject.Sanitation, context.Documents.Language)
                        .Where(note => note.Step == step)
                        .Select(note => new Addition(owner.Link, new(note.Markdown, note.Span, BelowLevel: 4)))
                ),
        ];

    private static Table Areas(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "areas",
            words.Area,
            [new(words.Area), new(words.Class), new(words.Wash), new(words.Stations)],
            [
                .. context.Engineered.Machine.Areas.Select(area =>
                    Row.Of(
                        context.In(area.Title),
                        WordLists.Of(area.Class, words),
                        WordLists.Of(area.Wash, words),
                        string.Join(
                            ", ",
                            context
                                .Engineered.Machine.Stations.Where(station => station.Area.Id.Value == area.Id.Value)
                                .Select(station => context.In(station.Title))
                        )
                    )
                ),
            ]
        );
    }
}
