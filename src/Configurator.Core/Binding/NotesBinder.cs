using System.Collections.Frozen;
using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Loading;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>All notes by the path of the definition they belong to, without its ending.</summary>
internal sealed record NoteLibrary(ImmutableDictionary<string, NoteSet> ByOwner)
{
    public NoteSet Of(string owner) => ByOwner.GetValueOrDefault(owner) ?? NoteSet.Empty;
}

/// <summary>Splits Markdown notes at their headings, so that each section reaches its document and no other.</summary>
internal static class NotesBinder
{
    private static readonly FrozenDictionary<string, NoteSubject> Subjects = Enum.GetValues<NoteSubject>()
        .ToFrozenDictionary(subject => subject.ToString(), StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, CleaningStep> Steps = new Dictionary<string, CleaningStep>(
        StringComparer.Ordinal
    )
    {
        ["Run out"] = CleaningStep.RunOut,
        ["Flush"] = CleaningStep.Flush,
        ["Park"] = CleaningStep.Park,
        ["Heat off"] = CleaningStep.HeatOff,
        ["Gas off"] = CleaningStep.GasOff,
        ["Selector"] = CleaningStep.Selector,
        ["Access"] = CleaningStep.Access,
        ["Dry clean and secure"] = CleaningStep.DryCleanAndSecure,
        ["Pre-rinse"] = CleaningStep.PreRinse,
        ["Foam and scrub"] = CleaningStep.FoamAndScrub,
        ["Rinse"] = CleaningStep.Rinse,
        ["Inspect"] = CleaningStep.Inspect,
        ["Sanitize"] = CleaningStep.Sanitize,
        ["Dry and release"] = CleaningStep.DryAndRelease,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    public static NoteLibrary Read(ImmutableArray<SourceText> notes, ICollection<Diagnostic> report) =>
        new(
            notes
                .Where(note => note.Path.StartsWith("options/", StringComparison.Ordinal))
                .GroupBy(note => OwnerOf(note.Path).Owner, StringComparer.Ordinal)
                .ToImmutableDictionary(
                    group => group.Key,
                    group => new NoteSet([
                        .. group.SelectMany(note => Sections(note, OwnerOf(note.Path).Language, report)),
                    ]),
                    StringComparer.Ordinal
                )
        );

    /// <summary>Reports notes that lie beside no definition.</summary>
    public static void CheckOwners(SyntaxSet syntax, ICollection<Diagnostic> report)
    {
        var definitions = syntax
            .Definitions.Select(file => file.Path)
            .Concat(syntax.Unread)
            .ToHashSet(StringComparer.Ordinal);
        foreach (var path in syntax.Notes.Select(note => note.Path))
        {
            var owner = OwnerOf(path).Owner;
            var (what, definition) = owner.Split('/') switch
            {
                ["options", "devices", _] => ("device", owner + ".yaml"),
                ["options", _, _] => ("option", owner + ".yaml"),
                ["machines", var machine, "about"] => ("machine", $"machines/{machine}/machine.yaml"),
                _ => ("definition", ""),
            };
            if (!definitions.Contains(definition))
            {
                report.Add(BindingDiagnostics.NotesWithoutOwner(path, what));
            }
        }
    }

    /// <summary><c>options/lids/foil.es.md</c> belongs to <c>options/lids/foil</c>, in Spanish.</summary>
    private static (string Owner, string Language) OwnerOf(string path)
    {
        var stem = path[..^".md".Length];
        var dot = stem.LastIndexOf('.');
        return dot > stem.LastIndexOf('/') && dot == stem.Length - 3 && stem[(dot + 1)..].All(char.IsAsciiLetterLower)
            ? (stem[..dot], stem[(dot + 1)..])
            : (stem, Text.BaseLanguage);
    }

    private static IEnumerable<NoteSection> Sections(SourceText note, string language, ICollection<Diagnostic> report)
    {
        var found = new List<NoteSection>();
        var state = new Section(null, null, 1, []);
        var fence = false;
        for (var line = 1; line <= note.LineCount; line++)
        {
            var text = note.Line(line);
            fence ^= text.StartsWith("```", StringComparison.Ordinal);
            if (fence || !StartsSection(text, state, out var heading))
            {
                state.Lines.Add(text);
                continue;
            }

            Close(note, language, state, found, report);
            state = Open(note, state, heading, line, report);
        }

        Close(note, language, state, found, report);
        return found;
    }

    private static bool StartsSection(string line, Section state, out string heading)
    {
        var isSubject = line.StartsWith("## ", StringComparison.Ordinal);
        var isStep = state.Subject == NoteSubject.Sanitation && line.StartsWith("### ", StringComparison.Ordinal);
        heading = isSubject || isStep ? line.TrimStart('#').Trim() : "";
        return isSubject || isStep;
    }

    private static Section Open(
        SourceText note,
        Section before,
        string heading,
        int line,
        ICollection<Diagnostic> report
    )
    {
        var isStep = note.Line(line).StartsWith("###", StringComparison.Ordinal);
        var place = new Located<string>(
            heading,
            new(note.Path, line, note.Line(line).Length - heading.Length + 1, heading.Length)
        );
        if (isStep && Steps.TryGetValue(heading, out var step))
        {
            return new(before.Subject, step, line + 1, []);
        }

        if (!isStep && Subjects.TryGetValue(heading, out var subject))
        {
            return new(subject, null, line + 1, []);
        }

        report.Add(
            BindingDiagnostics.NoteHeadingUnknown(
                place,
                isStep
                    ? Steps.OrderBy(pair => pair.Value).Select(pair => pair.Key)
                    : Subjects.Keys.Order(StringComparer.Ordinal)
            )
        );
        return new(isStep ? before.Subject : null, null, line + 1, []) { IsRefused = true };
    }

    private static void Close(
        SourceText note,
        string language,
        Section section,
        List<NoteSection> found,
        ICollection<Diagnostic> report
    )
    {
        var first = section.Lines.FindIndex(line => line.Trim().Length > 0);
        if (first < 0 || section.IsRefused)
        {
            return;
        }

        if (section.Subject is not { } subject)
        {
            report.Add(BindingDiagnostics.NoteTextWithoutHeading(note.Path, section.FirstLine + first));
            return;
        }

        if (subject == NoteSubject.Sanitation && section.Step is null)
        {
            report.Add(BindingDiagnostics.SanitationWithoutStep(note.Path, section.FirstLine + first));
            return;
        }

        var markdown = string.Join('\n', section.Lines.Skip(first)).TrimEnd() + "\n";
        found.Add(new(subject, section.Step, language, markdown, new(note.Path, section.FirstLine + first, 1, 0)));
    }

    private sealed record Section(NoteSubject? Subject, CleaningStep? Step, int FirstLine, List<string> Lines)
    {
        public bool IsRefused { get; init; }
    }
}
