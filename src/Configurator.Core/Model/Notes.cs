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

/// <summary>One section of notes: Markdown and the line it starts on.</summary>
/// <param name="Step">Under sanitation the one that its heading names; elsewhere none.</param>
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
