using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages;

/// <summary>One page an option: what it does, what goes with it, what it fits, its notes.</summary>
internal static class OptionPages
{
    public static Page Compose(DocumentContext context, Option option)
    {
        var path = PagePaths.Of(option.Id.Value);
        var words = context.Words;
        var links = context.On(path);
        ImmutableArray<Machine> machines =
        [
            .. context.Catalogue.Machines.Values.Where(machine => machine.Options.ContainsKey(option.Id.Value)),
        ];
        return new(path, "option", $"{context.In(option.Title)} ({words.Option})", words)
        {
            Heading = context.In(option.Title),
            Crumbs = [links.Catalogue, links.To(PagePaths.Options, words.Options)],
            Lead = context.In(option.Summary),
            Sections =
            [
                new(
                    "facts",
                    words.WhatGoesTogether,
                    [Facts(context, links, option, machines), .. OptionReasons.Of(context, links, option)]
                ),
                new("fits", words.Fits, [.. machines.Select(machine => Fits(context, links, option, machine))]),
                new("adds", words.Adds, [.. machines.Select(machine => Loads(context, option, machine))]),
                .. Notes(context, option),
                new(
                    "used",
                    words.UsedIn,
                    [
                        CataloguePages.ConfigurationTable(
                            context,
                            links,
                            context.Engineered.Configurations.Where(c =>
                                c.Proved.Configuration.QuantityOf(option.Id.Value) > 0
                            ),
                            withMachine: true
                        ),
                    ]
                ),
            ],
        };
    }

    private static Facts Facts(DocumentContext context, Links links, Option option, ImmutableArray<Machine> machines)
    {
        var words = context.Words;
        var quantity = option.Quantity is { } range
            ? FormattableString.Invariant($"{range.From}–{range.To} {context.In(range.Counts)}")
            : "1";
        return new([
            new(words.OfferedOn, [.. machines.Select(links.Machine)]),
            Fact.Of(words.QuantityRange, quantity),
            Fact.Of(
                words.Needs,
                string.Join(
                    "; ",
                    option.Requires.Select(requirement => MachinePages.Say(context, requirement.Condition))
                )
            ),
            new(
                words.NotWith,
                [.. OptionReasons.NotWith(context, option).Select(link => links.Option(link.Other.Value))]
            ),
            new(words.ComesWith, [.. option.ComesWith.Select(link => links.Option(link.Other.Value))]),
            Fact.Of(words.TouchesBox, CataloguePages.TouchesBox(context, option)),
            Fact.Of(words.OptionPrice, context.Print(option.Price)),
        ]);
    }

    private static Table Fits(DocumentContext context, Links links, Option option, Machine machine)
    {
        var words = context.Words;
        return new(
            $"fits-{machine.Id.Value}",
            context.In(machine.Title),
            [new(words.Designation), new(words.Device), new(words.Purpose), new(words.Station), new(words.Home)],
            [
                .. machine
                    .Instances.Where(instance => instance.Option?.Id.Value == option.Id.Value)
                    .Select(instance =>
                        Row.Of(
                            context.Designations.Of(instance),
                            links.Device(instance.Device),
                            context.In(instance.Fit.Purpose),
                            context.In(instance.Station.Title),
                            machine.Plan.HomeOf(instance.Key)?.ToString() ?? ""
                        )
                    ),
            ]
        );
    }

    private static Table Loads(DocumentContext context, Option option, Machine machine)
    {
        var quantities = option.Quantity is { } range ? Enumerable.Range(range.From, range.To - range.From + 1) : [1];
        var loads = quantities
            .Select(quantity => (quantity, Loads: OptionLoads.Of(machine, option, quantity)))
            .ToList();
        ImmutableArray<Load> shown = [.. Load.All.Where(load => loads.Any(row => row.Loads[load] != 0))];
        return new(
            $"loads-{machine.Id.Value}",
            context.In(machine.Title),
            [
                new(context.Words.Quantity, IsNumber: true),
                .. shown.Select(load => new Column(context.In(load.Title), IsNumber: true)),
            ],
            [
                .. loads.Select(row =>
                    Row.Of([
                        DocumentContext.Print(row.quantity),
                        .. shown.Select(load => (Cell)load.Print(row.Loads[load])),
                    ])
                ),
            ]
        );
    }

    private static IEnumerable<Section> Notes(DocumentContext context, Option option)
    {
        foreach (var (subject, title) in Subjects(context.Words))
        {
            var notes = option.Notes.On(subject, context.Language);
            if (!notes.IsEmpty)
            {
                yield return new(
                    WordLists.Plain(subject),
                    title,
                    [.. notes.SelectMany(note => NoteBlocks(context, note))]
                );
            }
        }
    }

    private static IEnumerable<Block> NoteBlocks(DocumentContext context, NoteSection note)
    {
        var passage = new Passage(note.Markdown, note.Span, BelowLevel: 2);
        return note.Step is { } step ? [new Paragraph(WordLists.Of(step, context.Words) + ":"), passage] : [passage];
    }

    private static ImmutableArray<(NoteSubject Subject, string Title)> Subjects(SiteWords words) =>
        [
            (NoteSubject.Sales, words.Sales),
            (NoteSubject.Operation, words.Operation),
            (NoteSubject.Wiring, words.WiringNotes),
            (NoteSubject.Service, words.Service),
            (NoteSubject.Sanitation, words.Sanitation),
        ];
}
