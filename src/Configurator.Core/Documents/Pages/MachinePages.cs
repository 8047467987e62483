using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Engineering.Power;
using Configurator.Core.Engineering.Safety;
using Configurator.Core.Engineering.Timing;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Printing;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Documents.Pages;

/// <summary>A machine's own page and its port plan.</summary>
internal static class MachinePages
{
    public static IEnumerable<Page> Compose(DocumentContext context, Machine machine) =>
        [Machine(context, machine), PortPlanPage.Compose(context, machine)];

    private static Page Machine(DocumentContext context, Machine machine)
    {
        var path = PagePaths.Of(machine.Id.Value);
        var words = context.Words;
        var links = context.On(path);
        ImmutableArray<Block> worstCases = [.. WorstCaseTable.Of(context, links, machine)];
        return new(path, "machine", context.In(machine.Title), words)
        {
            Crumbs = [links.Catalogue],
            Lead = context.In(machine.Summary),
            Sections =
            [
                new(
                    "facts",
                    words.Machine,
                    [
                        Facts(context, machine),
                        new LinkList([
                            new(links.To(PagePaths.Picker(machine.Id.Value), words.PickAnOrder), words.PickAnOrderText),
                        ]),
                        .. About(machine),
                    ]
                ),
                new(
                    "configurations",
                    words.Configurations,
                    [
                        CataloguePages.ConfigurationTable(
                            context,
                            links,
                            context.Engineered.Configurations.Where(c => c.Machine.Id.Value == machine.Id.Value),
                            withMachine: false
                        ),
                    ]
                ),
                new("options", words.Options, [OptionTable(context, links, machine)]),
                new(
                    "rules",
                    words.WhatGoesTogether,
                    [ChoiceTable(context, links, machine), RuleTable(context, machine)]
                ),
                new("health", words.RuleHealth, [HealthBlock.Of(context, machine)]),
                .. worstCases.IsEmpty
                    ? ImmutableArray<Section>.Empty
                    : [new("worst-cases", words.WorstCases, worstCases)],
                .. WorstOf(context, links, machine, "power", words.Power, PowerRules.All),
                .. WorstOf(context, links, machine, "safety", words.SafetyWiring, SafetyChecks.All),
                .. WorstOf(
                    context,
                    links,
                    machine,
                    "timing",
                    words.Timing,
                    [TimingRules.Answer, TimingRules.Position, TimingRules.Image, TimingRules.Cycle]
                ),
                .. WashTable.Of(context, machine),
                .. WorstOf(context, links, machine, "hygiene", words.Hygiene, [HygieneRules.Cables]),
                new("layout", words.Layout, [LayoutDrawing.Of(context, machine), StationTable(context, machine)]),
                new(
                    "port-plan",
                    words.PortPlan,
                    [
                        new Paragraph(words.PortPlanLead),
                        .. AllOrdersSection.Sentence(context, machine),
                        new LinkList([
                            new(links.To(PagePaths.PortPlan(machine.Id.Value), words.PortPlan), ""),
                            new(
                                links.To(PagePaths.ControllerTypes(machine.Id.Value), "controller.st"),
                                words.TypesFile
                            ),
                        ]),
                    ]
                ),
            ],
        };
    }

    private static IEnumerable<Section> WorstOf(
        DocumentContext context,
        Links links,
        Machine machine,
        string id,
        string title,
        ImmutableArray<FindingRule> rules
    )
    {
        ImmutableArray<Block> blocks = [.. WorstFindings.Of(context, links, machine, rules, $"{id}-worst")];
        return blocks.IsEmpty ? [] : [new(id, title, blocks)];
    }

    private static Facts Facts(DocumentContext context, Machine machine) =>
        new([
            Fact.Of(context.Words.Document, machine.Document),
            Fact.Of(context.Words.Revision, machine.Revision),
            Fact.Of(context.Words.Lanes, DocumentContext.Print(machine.Lanes)),
            Fact.Of(context.Words.Rate, context.Print(machine.Rate)),
            Fact.Of(context.Words.Options, DocumentContext.Print(machine.Options.Count)),
            Fact.Of(
                context.Words.PossibleConfigurations,
                OrderText.Number(context.Engineered.Proved.Logic[machine.Id.Value].Logic.Count(PartialOrder.Empty))
            ),
        ]);

    private static IEnumerable<Block> About(Machine machine) =>
        machine.About is { } about ? [new Passage(about.Text, new SourceSpan(about.Path, 1, 1, 0), BelowLevel: 2)] : [];

    private static Table OptionTable(DocumentContext context, Links links, Machine machine)
    {
        var words = context.Words;
        return new(
            "options",
            $"{words.Options}: {context.In(machine.Title)}",
            [
                new(words.Option),
                new(words.Family),
                new(words.Summary),
                new(words.Needs),
                new(words.NotWith),
                new(words.ComesWith),
                new(words.TouchesBox),
            ],
            [
                .. machine
                    .Options.Values.OrderBy(option => option.Family, StringComparer.Ordinal)
                    .ThenBy(option => option.Id.Value)
                    .Select(option =>
                        Row.Of(
                            links.Option(option.Id.Value),
                            CataloguePages.Sentence(option.Family),
                            context.In(option.Summary),
                            string.Join(
                                "; ",
                                option.Requires.Select(requirement => Say(context, requirement.Condition))
                            ),
                            Cell.Of(
                                OptionReasons.NotWith(context, option).Select(link => links.Option(link.Other.Value))
                            ),
                            Cell.Of(option.ComesWith.Select(link => links.Option(link.Other.Value))),
                            CataloguePages.TouchesBox(context, option)
                        )
                    ),
            ]
        );
    }

    private static Table ChoiceTable(DocumentContext context, Links links, Machine machine)
    {
        var words = context.Words;
        return new(
            "choices",
            words.Choices,
            [new(words.Choice), new(words.Take), new(words.OutOf), new(words.Because)],
            [
                .. machine.Choices.Select(choice =>
                    Row.Of(
                        context.In(choice.Title),
                        WordLists.Of(choice.Take, words),
                        Cell.Of(choice.Of.Select(option => links.Option(option.Value))),
                        context.In(choice.Because)
                    )
                ),
            ]
        );
    }

    private static Table RuleTable(DocumentContext context, Machine machine)
    {
        var words = context.Words;
        return new(
            "rules",
            words.Rules,
            [new(words.Ordered), new(words.Rule), new(words.Option), new(words.Because)],
            [.. machine.Rules.Select(rule => Row.Of([.. RuleCells(context, rule)]))]
        );
    }

    /// <summary>What brings the rule about, whether it needs or rules out, what, and why.</summary>
    public static IEnumerable<Cell> RuleCells(DocumentContext context, MachineRule rule)
    {
        var words = context.Words;
        var banned = RuleText.Banned(rule);
        return
        [
            rule.When is { } when ? Say(context, when) : words.Always,
            banned is null ? words.Needs : words.NotWith,
            Say(context, banned ?? rule.Need),
            context.In(rule.Because),
        ];
    }

    private static Table StationTable(DocumentContext context, Machine machine)
    {
        var words = context.Words;
        return new(
            "stations",
            words.Stations,
            [new(words.Station), new(words.Location), new(words.Area), new(words.Class), new(words.Wash)],
            [
                .. machine.Stations.Select(station =>
                    Row.Of(
                        context.In(station.Title),
                        context.Designations.Of(station),
                        context.In(station.Area.Title),
                        WordLists.Of(station.Area.Class, words),
                        WordLists.Of(station.Area.Wash, words)
                    )
                ),
            ]
        );
    }

    /// <summary>A condition with the options' titles.</summary>
    public static string Say(DocumentContext context, Condition condition) =>
        ConditionText.Of(condition, id =>
            context.Catalogue.Options.TryGetValue(id, out var option) ? $"“{context.In(option.Title)}”" : id.Value
        );
}
