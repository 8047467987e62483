using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.Picking;
using Configurator.Core.Engineering;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Printing;

namespace Configurator.Core.Documents.Pages;

/// <summary>The page that picks an order of one machine, and the script that holds its rules.</summary>
internal sealed record PickedMachine(Page Page, TextFile Script);

/// <summary>Everything that can be ordered of a machine, for reading; with scripts, to pick an order from.</summary>
internal static class PickerPage
{
    private static readonly ImmutableArray<string> Scripts =
    [
        .. new[]
        {
            "diagram",
            "solver",
            "rules",
            "reasons",
            "order",
            "weights",
            "texts",
            "rows",
            "desk",
            "beside",
            "dialogs",
            "page",
        }.Select(name => $"assets/picker/{name}.js"),
    ];

    public static PickedMachine Compose(DocumentContext context, OrderLogic logic)
    {
        var machine = logic.Machine;
        var checkedSet = CheckedSet.Of(logic);
        return new(
            Page(context, logic, checkedSet),
            new(PagePaths.PickerScript(machine.Id.Value), PickerScript.Of(context, machine, checkedSet))
        );
    }

    private static Page Page(DocumentContext context, OrderLogic logic, CheckedSet checkedSet)
    {
        var machine = logic.Machine;
        var path = PagePaths.Picker(machine.Id.Value);
        var words = context.Words;
        var links = context.On(path);
        return new(path, "picker", $"{context.In(machine.Title)}: {words.PickerTitle}", words)
        {
            Crumbs = links.CrumbsTo(machine),
            Lead = words.PickerLead(OrderText.Number(logic.Count(PartialOrder.Empty))),
            Styles = ["assets/picker/picker.css"],
            Scripts = [PagePaths.PickerScript(machine.Id.Value), .. Scripts],
            Sections =
            [
                new("options", words.Options, [PickGroups.Of(context, links, machine)]),
                new("order", words.YourOrder, [new PickerPlace("desk", words.PickerNeedsScripts)]),
                new(
                    "beside",
                    words.SideBySide,
                    [
                        new PickerPlace("table", words.PublishedBelow),
                        CataloguePages.ConfigurationTable(
                            context,
                            links,
                            context.Engineered.Configurations.Where(it => it.Machine.Id.Value == machine.Id.Value),
                            withMachine: false
                        ),
                        new Paragraph(words.CheckedSetLead(checkedSet.Passed.Length, checkedSet.Engineered)),
                        CheckedTable(context, links, checkedSet),
                    ]
                ),
            ],
        };
    }

    private static Table CheckedTable(DocumentContext context, Links links, CheckedSet checkedSet) =>
        new(
            "checked-set",
            context.Words.CheckedSet,
            [new("#"), new(context.Words.Options)],
            [
                .. checkedSet.Passed.Select(
                    (configuration, i) => Row.Of(DocumentContext.Print(i + 1), Cell.Of(links.Taken(configuration)))
                ),
            ]
        );
}
