using System.Collections.Immutable;
using Configurator.Core.Documents;
using Configurator.Core.Model;
using Configurator.Core.Review.Kinds;
using Configurator.Core.Review.Lines;

namespace Configurator.Core.Review.Topics;

/// <summary>Notes of options and devices that a document will tell its reader, sanitation steps first.</summary>
internal static class NoteChanges
{
    /// <summary>Of what changed in a section, so many lines are shown and the others counted.</summary>
    private const int LinesMax = 6;

    public static IEnumerable<Change> Of(ReviewContext context) =>
        Options(context)
            .Concat(Devices(context))
            .OrderBy(change => change.Kind == SettingKinds.SanitationChanged ? 0 : 1);

    private static IEnumerable<Change> Options(ReviewContext context)
    {
        var before = context.Before.Catalogue.Options.Values.ToDictionary(option =>
            context.Renames.Of(option.Id.Value)
        );
        return context
            .After.Catalogue.Options.Values.Where(option => before.ContainsKey(option.Id.Value))
            .SelectMany(option =>
                Compare(
                    option.Id.Value.Value,
                    before[option.Id.Value].Notes,
                    option.Notes,
                    context.PublishedWith(built => built.Proved.Configuration.QuantityOf(option.Id.Value) > 0)
                )
            );
    }

    private static IEnumerable<Change> Devices(ReviewContext context)
    {
        var before = context.Before.Catalogue.Devices;
        return context
            .After.Catalogue.Devices.Values.Where(device => before.ContainsKey(device.Id.Value))
            .SelectMany(device =>
                Compare(
                    device.Id.Value.Value,
                    before[device.Id.Value].Notes,
                    device.Notes,
                    context.PublishedWith(built => built.Report.Fitted.Mounts(device.Id.Value))
                )
            );
    }

    private static IEnumerable<Change> Compare(
        string owner,
        NoteSet before,
        NoteSet after,
        ImmutableArray<string> configurations
    )
    {
        var was = before.Sections.ToLookup(note => (note.Subject, note.Step, note.Language));
        var now = after.Sections.ToLookup(note => (note.Subject, note.Step, note.Language));
        foreach (
            var about in was.Select(group => group.Key)
                .Union(now.Select(group => group.Key))
                .OrderBy(about => about.Subject)
                .ThenBy(about => about.Step)
                .ThenBy(about => about.Language, StringComparer.Ordinal)
        )
        {
            var (old, text) = (TextOf(was[about]), TextOf(now[about]));
            if (old != text)
            {
                yield return new(
                    about.Subject == NoteSubject.Sanitation
                        ? SettingKinds.SanitationChanged
                        : SettingKinds.NotesChanged,
                    $"`{owner}`, {Say(about.Subject, about.Step, about.Language)}",
                    [
                        .. Places(old, text, now[about], isBefore: false),
                        .. Places(text, old, was[about], isBefore: true),
                    ]
                )
                {
                    Remark =
                        old.Length == 0 ? "added"
                        : text.Length == 0 ? "removed"
                        : "reworded",
                    Details = Lines(old, text),
                    Configurations = configurations,
                };
            }
        }
    }

    private static string TextOf(IEnumerable<NoteSection> sections) =>
        string.Join("\n\n", sections.Select(section => section.Markdown.Trim()));

    private static string Say(NoteSubject subject, CleaningStep? step, string language) =>
        WordLists.Plain(subject)
        + (step is { } named ? $", step {WordLists.Plain(named)}" : "")
        + (language == Text.BaseLanguage ? "" : $" ({language})");

    /// <summary>The first line of the text that the other one lacks, in the section's file.</summary>
    private static IEnumerable<ReviewPlace> Places(
        string other,
        string text,
        IEnumerable<NoteSection> sections,
        bool isBefore
    )
    {
        var hunk = LineDifference.Of(Split(other), Split(text)).FirstOrDefault(one => one.AfterCount > 0);
        return sections
            .Take(1)
            .Select(section => new ReviewPlace(
                hunk is null ? section.Span : section.Span with { Line = section.Span.Line + hunk.AfterStart },
                isBefore
            ));
    }

    /// <summary>Sentences that differ, whole: a sentence cut short may lose the step that matters.</summary>
    private static ImmutableArray<string> Lines(string old, string now)
    {
        var (before, after) = (Steps(old), Steps(now));
        ImmutableArray<string> lines =
        [
            .. LineDifference
                .Of(before, after)
                .SelectMany(hunk =>
                    before[hunk.BeforeStart..(hunk.BeforeStart + hunk.BeforeCount)]
                        .Select(line => $"was: {line}")
                        .Concat(
                            after[hunk.AfterStart..(hunk.AfterStart + hunk.AfterCount)].Select(line => $"now: {line}")
                        )
                ),
        ];
        var more = lines.Length - LinesMax;
        return more <= 0 ? lines : [.. lines.Take(LinesMax), FormattableString.Invariant($"and {more} more lines")];
    }

    /// <summary>Sentences; a line that goes on below is one with what it goes on with.</summary>
    private static ImmutableArray<string> Steps(string text)
    {
        var steps = new List<string>();
        var isOpen = false;
        foreach (var line in Split(text))
        {
            var isNew = !isOpen || line.Length == 0 || line[0] is '-' or '*' || char.IsAsciiDigit(line[0]);
            if (isNew && line.Trim().Length > 0)
            {
                steps.Add(line.Trim());
            }
            else if (line.Trim().Length > 0)
            {
                steps[^1] += " " + line.Trim();
            }

            isOpen = line.Trim().Length > 0;
        }

        return [.. steps.SelectMany(Sentences)];
    }

    /// <summary>A full stop after a word ends one where a capital follows: numbers of steps do not.</summary>
    private static IEnumerable<string> Sentences(string step)
    {
        var start = 0;
        for (var i = 1; i + 2 < step.Length; i++)
        {
            if (step[i] == '.' && step[i + 1] == ' ' && char.IsUpper(step[i + 2]) && !char.IsDigit(step[i - 1]))
            {
                yield return step[start..(i + 1)];
                start = i + 2;
            }
        }

        yield return step[start..];
    }

    private static ImmutableArray<string> Split(string text) => text.Length == 0 ? [] : [.. text.Split('\n')];
}
