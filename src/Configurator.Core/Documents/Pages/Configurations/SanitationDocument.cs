using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>The sheet of the cleaning crew: what is made safe, covered and opened; what is done under power; the
/// steps in order with what each fitted option adds; what is looked at and signed afterwards.</summary>
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
        var live = CleaningSteps.UnderPower.Select(step => Live(context, step)).OfType<Step>();
        if (live.Any())
        {
            yield return new("live", words.BeforeLockOut, [new Steps([.. live])]);
        }

        yield return new(
            "steps",
            words.StepsTitle,
            [new Steps([.. CleaningSteps.Locked.Select((step, i) => Locked(context, step, i + 1))])]
        );
        if (context.Fitted.Machine.Sanitation is not null)
        {
            yield return new("after", words.AfterTitle, [.. SanitationLists.After(context)]);
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
            yield return SanitationLists.Energies(context);
            yield return SanitationLists.Before(context);
        }
    }

    /// <summary>Null where nothing is to be done.</summary>
    private static Step? Live(ConfigurationContext context, CleaningStep step)
    {
        var lines = Lines(context, step);
        var additions = Additions(context, step);
        return lines.IsEmpty && additions.IsEmpty
            ? null
            : new(
                $"before-{WordLists.Plain(step).Replace(' ', '-')}",
                WordLists.Of(step, context.Words),
                lines,
                additions
            );
    }

    /// <summary>Where the machine says nothing of its cleaning, a step that nothing adds to is left to the
    /// plant.</summary>
    private static Step Locked(ConfigurationContext context, CleaningStep step, int number)
    {
        var lines = Lines(context, step);
        var additions = Additions(context, step);
        return new(
            FormattableString.Invariant($"step-{number}"),
            WordLists.Of(step, context.Words),
            lines.IsEmpty && additions.IsEmpty ? [context.Words.AsProgrammeSays] : lines,
            additions
        );
    }

    private static ImmutableArray<string> Lines(ConfigurationContext context, CleaningStep step) =>
        context.Fitted.Machine.Sanitation is null ? [] : SanitationSteps.Lines(context, step);

    private static ImmutableArray<Addition> Additions(ConfigurationContext context, CleaningStep step) =>
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
}
