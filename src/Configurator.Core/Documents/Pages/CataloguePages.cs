using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages;

/// <summary>The first page, and the lists of options and devices.</summary>
internal static class CataloguePages
{
    public static IEnumerable<Page> Compose(DocumentContext context) =>
        [Catalogue(context), Options(context), Devices(context)];

    private static Page Catalogue(DocumentContext context)
    {
        var words = context.Words;
        var links = context.On(PagePaths.Catalogue);
        return new(PagePaths.Catalogue, "catalogue", context.SiteTitle, words)
        {
            Lead = words.CatalogueLead,
            Sections =
            [
                new(
                    "machines",
                    words.Machines,
                    [
                        new LinkList([
                            .. context.Catalogue.Machines.Values.Select(machine => new LinkItem(
                                links.Machine(machine),
                                context.In(machine.Summary),
                                machine.Document
                            )),
                        ]),
                    ]
                ),
                new(
                    "configurations",
                    words.Configurations,
                    [ConfigurationTable(context, links, context.Engineered.Configurations, withMachine: true)]
                ),
                new(
                    "more",
                    words.Catalogue,
                    [
                        new LinkList([
                            new(links.To(PagePaths.Options, words.Options), Count(context.Catalogue.Options.Count)),
                            new(links.To(PagePaths.Devices, words.Devices), Count(context.Catalogue.Devices.Count)),
                            new(links.To(PagePaths.Findings, words.FindingPages), ""),
                        ]),
                    ]
                ),
            ],
        };
    }

    /// <summary>Published configurations with their state in document control and in checks.</summary>
    public static Table ConfigurationTable(
        DocumentContext context,
        Links links,
        IEnumerable<EngineeredConfiguration> configurations,
        bool withMachine
    )
    {
        var words = context.Words;
        ImmutableArray<Column> machine = withMachine ? [new(words.Machine)] : [];
        return new(
            "configurations",
            words.Configurations,
            [
                new(words.Configuration),
                .. machine,
                new(words.Document),
                new(words.Revision),
                new(words.State),
                new(words.Findings),
            ],
            [
                .. configurations.Select(configuration => new Row(
                    [
                        links.Configuration(configuration.Published),
                        .. withMachine ? [links.Machine(configuration.Machine)] : ImmutableArray<Cell>.Empty,
                        configuration.Published.Document.Value,
                        configuration.Published.Revision,
                        configuration.Published.Released is null ? words.Draft : words.Released,
                        configuration.IsChecked ? words.Checked : words.NotChecked,
                    ],
                    configuration.IsChecked ? "" : "fail"
                )),
            ]
        );
    }

    private static Page Options(DocumentContext context)
    {
        var words = context.Words;
        var links = context.On(PagePaths.Options);
        return new(PagePaths.Options, "list", words.Options, words)
        {
            Crumbs = [links.Catalogue],
            Sections =
            [
                .. context
                    .Catalogue.Options.Values.GroupBy(option => option.Family, StringComparer.Ordinal)
                    .OrderBy(family => family.Key, StringComparer.Ordinal)
                    .Select(family => new Section(
                        family.Key,
                        Sentence(family.Key),
                        [OptionTable(context, links, family.Key, family)]
                    )),
            ],
        };
    }

    private static Table OptionTable(
        DocumentContext context,
        Links links,
        string family,
        IEnumerable<Option> options
    ) =>
        new(
            $"options-{family}",
            $"{context.Words.Options}: {Sentence(family)}",
            [
                new(context.Words.Option),
                new(context.Words.Summary),
                new(context.Words.OfferedOn),
                new(context.Words.TouchesBox),
            ],
            [
                .. options.Select(option =>
                    Row.Of(
                        links.Option(option.Id.Value),
                        context.In(option.Summary),
                        Cell.Of(
                            option
                                .OfferedOn.Select(machine =>
                                    context.Catalogue.Machines.GetValueOrDefault(machine.Value)
                                )
                                .OfType<Machine>()
                                .Select(links.Machine)
                        ),
                        TouchesBox(context, option)
                    )
                ),
            ]
        );

    public static string TouchesBox(DocumentContext context, Option option) =>
        option.TouchesBox.IsEmpty
            ? context.Words.OnlyACable
            : string.Join(", ", option.TouchesBox.Select(touch => WordLists.Of(touch.Value, context.Words)));

    private static Page Devices(DocumentContext context)
    {
        var words = context.Words;
        var links = context.On(PagePaths.Devices);
        var table = new Table(
            "devices",
            words.Devices,
            [
                new(words.Device),
                new(words.Type),
                new(words.Plug),
                new(words.Current, IsNumber: true),
                new(words.Price, IsNumber: true),
            ],
            [
                .. context
                    .Catalogue.Devices.Values.OrderBy(device => device.Kind)
                    .ThenBy(device => device.Id.Value)
                    .Select(device =>
                        Row.Of(
                            links.Device(device),
                            WordLists.Plain(device.Kind),
                            device.Plug == "none" ? "" : device.Plug,
                            context.Print(device.Current),
                            context.Print(device.Price)
                        )
                    ),
            ]
        );
        return new(PagePaths.Devices, "list", words.Devices, words)
        {
            Crumbs = [links.Catalogue],
            Sections = [new("devices", words.Devices, [table])],
        };
    }

    private static string Count(int count) => DocumentContext.Print(count);

    public static string Sentence(string id) => char.ToUpperInvariant(id[0]) + id[1..].Replace('-', ' ');
}
