using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>Are the sanitation notes of everything fitted there in every language of the site, step by step?</summary>
internal static class TranslationChecks
{
    public static IEnumerable<Finding> Compute(FittedMachine fitted, IEnumerable<string> languages) =>
        languages
            .Where(language => language != Text.BaseLanguage)
            .SelectMany(language => Owners(fitted).Select(owner => Of(owner, language)));

    /// <summary>Owners of notes that lack some step in that language.</summary>
    public static IEnumerable<string> MissingIn(FittedMachine fitted, string language) =>
        language == Text.BaseLanguage
            ? []
            : Owners(fitted).Where(owner => !Lacking(owner.Notes, language).IsEmpty).Select(owner => owner.Id);

    private static Finding Of((string Id, NoteSet Notes) owner, string language)
    {
        var lacking = Lacking(owner.Notes, language);
        return Finding.That(
            HygieneRules.Translation,
            $"{owner.Id}/{language}",
            $"the sanitation notes of `{owner.Id}` are {(lacking.IsEmpty ? "there" : "not whole")} in `{language}`"
                + (lacking.IsEmpty ? "" : $": {string.Join(", ", lacking)} is lacking"),
            lacking.IsEmpty,
            First(owner.Notes)
        ) with
        {
            Fix = $"write the same headings in the notes that end in `.{language}.md`",
        };
    }

    private static IEnumerable<(string Id, NoteSet Notes)> Owners(FittedMachine fitted) =>
        fitted
            .Configuration.Quantities.Keys.Select(id => (Id: id.Value, fitted.Machine.Options[id].Notes))
            .Concat(
                fitted
                    .Fitted.Select(instance => instance.Device)
                    .Concat(fitted.Masters.Select(master => master.Device))
                    .DistinctBy(device => device.Id.Value)
                    .Select(device => (device.Id.Value.Value, device.Notes))
            )
            .Where(owner => Sections(owner.Notes, Text.BaseLanguage).Any());

    private static ImmutableArray<string> Lacking(NoteSet notes, string language)
    {
        var there = Steps(notes, language).ToHashSet();
        return
        [
            .. Steps(notes, Text.BaseLanguage)
                .Where(step => !there.Contains(step))
                .Distinct()
                .Select(step => $"`{HygieneWords.Of(step)}`"),
        ];
    }

    private static IEnumerable<CleaningStep> Steps(NoteSet notes, string language) =>
        Sections(notes, language).Select(note => note.Step).OfType<CleaningStep>();

    private static IEnumerable<NoteSection> Sections(NoteSet notes, string language) =>
        notes.Sections.Where(note => note.Subject == NoteSubject.Sanitation && note.Language == language);

    private static SourceSpan First(NoteSet notes) => Sections(notes, Text.BaseLanguage).First().Span;
}
