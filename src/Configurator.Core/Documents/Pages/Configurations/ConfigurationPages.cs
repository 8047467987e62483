using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>The documents of one published configuration.</summary>
internal static class ConfigurationPages
{
    public static DocumentSet Compose(DocumentContext context, EngineeredConfiguration configuration)
    {
        var set = new DocumentSet(
            configuration,
            [.. Documents.Select(document => Compose(context, configuration, document))]
        );
        return set with { Pages = [.. set.Pages.Select(page => page with { Downloads = Downloads(context, set, page) })] };
    }

    /// <summary>All tables in one workbook and one JSON file, and those of this page one by one.</summary>
    private static ImmutableArray<Link> Downloads(DocumentContext context, DocumentSet set, Page page)
    {
        var links = context.On(page.Path);
        return
        [
            links.To(set.Workbook, context.Words.Workbook),
            links.To(set.Json, "JSON"),
            .. set.Tables.Where(pair => pair.Page == page)
                .SelectMany(pair => pair.Tables)
                .Select(table => links.To(set.CsvOf(page, table), $"CSV: {table.Caption}")),
        ];
    }

    private static readonly ImmutableArray<ConfigurationDocument> Documents =
    [
        OverviewDocument.Document,
        PortMapDocument.Document,
        WiringDocument.Document,
        CablesDocument.Document,
        LabelsDocument.Document,
        PartsDocument.Document,
        BudgetsDocument.Document,
        AcceptanceDocument.Document,
        PowerDocument.Document,
        SafetyDocument.Document,
        TimingDocument.Document,
        SanitationDocument.Document,
    ];

    private static Page Compose(
        DocumentContext context,
        EngineeredConfiguration configuration,
        ConfigurationDocument document
    )
    {
        var published = configuration.Published;
        var path = PagePaths.Of(published, document.Name);
        var links = context.On(path);
        var title = document.Title(context.Words);
        return new(
            path,
            document.Name == "index" ? "configuration" : document.Name,
            $"{title}: {context.In(published.Title)}, {context.In(configuration.Machine.Title)}",
            context.Words
        )
        {
            Heading =
                document.Name == "index" ? context.In(published.Title) : $"{title}: {context.In(published.Title)}",
            Crumbs =
            [
                .. links.CrumbsTo(configuration.Machine),
                .. document.Name == "index" ? [] : ImmutableArray.Create(links.Configuration(published)),
            ],
            Siblings =
            [
                .. Documents.Select(other =>
                    other == document
                        ? new Link(title)
                        : links.To(PagePaths.Of(published, other.Name), other.Title(context.Words))
                ),
            ],
            Control = context.Control(published, document.Suffix),
            Lead = document.Lead(context.Words),
            Sections = [.. document.Sections(new(context, links, configuration))],
        };
    }
}

/// <summary>One of the documents of a configuration.</summary>
/// <param name="Name">File name without ending.</param>
/// <param name="Suffix">Ends its document number.</param>
internal sealed record ConfigurationDocument(
    string Name,
    string Suffix,
    Func<SiteWords, string> Title,
    Func<SiteWords, string> Lead,
    Func<ConfigurationContext, IEnumerable<Section>> Sections
);

/// <summary>One configuration, and how things are called on one page of it.</summary>
internal sealed record ConfigurationContext(DocumentContext Documents, Links Links, EngineeredConfiguration Engineered)
{
    public SiteWords Words => Documents.Words;

    public FittedMachine Fitted => Engineered.Report.Fitted;

    /// <summary>The stop function that drops a circuit of the trunk.</summary>
    public string DroppedBy(FieldCircuit circuit) => circuit.DroppedBy is { } by ? In(by) : Words.StaysAlive;

    public Designations Names => Documents.Designations;

    public string In(Model.Text? text) => Documents.In(text);
}
