using System.Collections.Immutable;
using Configurator.Core.Sources;

namespace Configurator.Core.Model;

/// <summary>Which document a section of Markdown notes appears in.</summary>
public enum NoteSubject
{
    Sales,
    Wiring,
    Service,
    Sanitation,
    Operation,
}

/// <summary>The steps of a wet clean, in the order in which they are done.</summary>
/// <remarks>Source: university food-safety text and public sanitation guides (reference table of cleaning
/// sequences).</remarks>
public enum CleaningStep
{
    DryCleanAndSecure,
    PreRinse,
    FoamAndScrub,
    Rinse,
    Inspect,
    Sanitize,
    DryAndRelease,
}

/// <summary>One section of notes: Markdown and the line it starts on.</summary>
/// <param name="Step">Only under sanitation, where a heading names the step.</param>
public sealed record NoteSection(
    NoteSubject Subject,
    CleaningStep? Step,
    string Language,
    string Markdown,
    SourceSpan Span
);

/// <summary>All sections of an option's or a device's notes, in all languages, in reading order.</summary>
public sealed record NoteSet(ImmutableArray<NoteSection> Sections)
{
    public static NoteSet Empty { get; } = new([]);

    /// <summary>The sections on a subject in that language; where the language has none on it, in the base
    /// language.</summary>
    public ImmutableArray<NoteSection> On(NoteSubject subject, string language)
    {
        ImmutableArray<NoteSection> found =
        [
            .. Sections.Where(note => note.Subject == subject && note.Language == language),
        ];
        return found.IsEmpty && language != Text.BaseLanguage ? On(subject, Text.BaseLanguage) : found;
    }
}
