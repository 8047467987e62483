using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Notes of what is fitted: each option's and each device's sections on one subject.</summary>
internal static class NotesByOption
{
    public static ImmutableArray<Block> On(ConfigurationContext context, NoteSubject subject) =>
        [
            new Steps([
                .. Owners(context)
                    .Select(owner => Step(context, owner, subject))
                    .Where(step => !step.Additions.IsEmpty),
            ]),
        ];

    /// <summary>Everything that can carry notes here: options of the order, then devices fitted, each once.</summary>
    public static IEnumerable<NoteOwner> Owners(ConfigurationContext context) =>
        context
            .Engineered.Proved.Configuration.Quantities.Keys.Select(id => context.Engineered.Machine.Options[id])
            .Select(option => new NoteOwner(option.Id.Value.Value, context.Links.Option(option.Id.Value), option.Notes))
            .Concat(
                Devices(context)
                    .Select(device => new NoteOwner(device.Id.Value.Value, context.Links.Device(device), device.Notes))
            );

    private static IEnumerable<Device> Devices(ConfigurationContext context) =>
        context
            .Fitted.Fitted.Select(instance => instance.Device)
            .Concat(context.Fitted.Masters.Select(master => master.Device))
            .DistinctBy(device => device.Id.Value)
            .OrderBy(device => device.Id.Value);

    private static Step Step(ConfigurationContext context, NoteOwner owner, NoteSubject subject) =>
        new(
            $"note-{owner.Id}",
            owner.Link.Text,
            [],
            [
                .. owner
                    .Notes.On(subject, context.Documents.Language)
                    .Select(note => new Addition(owner.Link, new(note.Markdown, note.Span, BelowLevel: 3))),
            ]
        );
}

internal sealed record NoteOwner(string Id, Link Link, NoteSet Notes);
