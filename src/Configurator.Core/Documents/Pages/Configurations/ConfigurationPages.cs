using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>The documents of one published configuration.</summary>
internal static class ConfigurationPages
{
    public static DocumentSet Compose(DocumentContext context, EngineeredConfiguration configuration)
    {
        var set = new DocumentSet(
            configuration,
            [
                .. Documents.Select(document => Compose(context, configuration, document)),
                .. Languages(context)
                    .Skip(1)
                    .SelectMany(language => Translated(context with { Words = new(language) }, configuration)),
            ]
        );
        return set with
        {
            Pages = [.. set.Pages.Select(page => page with { Downloads = Downloads(context, set, page) })],
        };
    }

    private static IEnumerable<Page> Translated(DocumentContext context, EngineeredConfiguration configuration) =>
        Documents
            .Where(document => document.IsTranslated)
            .Select(document => Compose(context, configuration, document));

    /// <summary>All tables in one workbook and one JSON file, and those of this page one by one.</summary>
    private static ImmutableArray<Link> Downloads(DocumentContext context, DocumentSet set, Page page)
    {
        var links = context.On(page.Path);
        return
        [
            links.To(set.Workbook, page.Words.Workbook),
            links.To(set.Json, "JSON"),
            .. set
                .Tables.Where(pair => pair.Page == page)
                .SelectMany(pair => pair.Tables)
                .Select(table => links.To(set.CsvOf(page, table), $"CSV: {table.Caption}")),
        ];
    }

    private static ImmutableArray<string> Languages(DocumentContext context) => context.Catalogue.Site.Languages;

    private static string PathOf(
        DocumentContext context,
        PublishedConfiguration published,
        ConfigurationDocument document,
        string language
    ) =>
        language == Languages(context)[0]
            ? PagePaths.Of(published, document.Name)
            : PagePaths.Of(published, document.Name, language);

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
        ControllerDocument.Document,
        MonitoringDocument.Document,
        HygieneDocument.Document,
        SanitationDocument.Document,
    ];

    /// <summary>On every document: whoever works from one has to know.</summary>
    private static IEnumerable<string> Deviations(DocumentContext context, EngineeredConfiguration configuration) =>
        configuration
            .Report.Findings.Where(finding => finding.Verdict == Verdict.Accepted)
            .Select(finding => $"{finding.Statement}. {FindingCells.Acceptance(context, finding)}");

    /// <summary>The overview has it as a table.</summary>
    private static ImmutableArray<RevisionLine> History(DocumentContext context, PublishedConfiguration published) =>
        [
            .. published.History.Select(step => new RevisionLine(
                step.Revision,
                DocumentContext.Print(step.On),
                context.In(step.By),
                context.In(step.Change)
            )),
        ];

    private static Page Compose(
        DocumentContext context,
        EngineeredConfiguration configuration,
        ConfigurationDocument document
    )
    {
        var published = configuration.Published;
        var path = PathOf(context, published, document, context.Language);
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
            Control = context.Control(published, document.Suffix) with
            {
                Deviations = [.. Deviations(context, configuration)],
                History = document.Name == "index" ? [] : History(context, published),
            },
            Lead = document.Lead(context.Words),
            Standards = document.Standards(context.Words),
            Translations =
                document.IsTranslated && Languages(context).Length > 1
                    ?
                    [
                        .. Languages(context)
                            .Select(language => new Translation(
                                language,
                                SiteWords.NameOf(language),
                                language == context.Language
                                    ? null
                                    : PagePaths.Relative(path, PathOf(context, published, document, language))
                            )),
                    ]
                    : [],
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
)
{
    /// <summary>Written once in every language of the site, with a switch between them.</summary>
    public bool IsTranslated { get; init; }

    /// <summary>Governing texts for the foot of the page.</summary>
    public Func<SiteWords, string> Standards { get; init; } = _ => "";
}

/// <summary>One configuration, and how things are called on one page of it.</summary>
internal sealed record ConfigurationContext(DocumentContext Documents, Links Links, EngineeredConfiguration Engineered)
{
    public SiteWords Words => Documents.Words;

    public FittedMachine Fitted => Engineered.Report.Fitted;

    /// <summary>Stop functions that drop a circuit of the trunk.</summary>
    public string DroppedBy(FieldCircuit circuit) =>
        circuit.DroppedBy.IsEmpty ? Words.StaysAlive : DroppedBy(circuit.DroppedBy);

    /// <summary>Stop functions as the machine calls them; empty of none.</summary>
    public string DroppedBy(ImmutableArray<Located<string>> stops) =>
        string.Join(
            ", ",
            Fitted
                .Machine.Control.Stops.Where(stop => stops.Any(name => name.Value == stop.Name.Value))
                .Select(stop => In(stop.Title))
        );

    public Designations Names => Documents.Designations;

    public string In(Model.Text? text) => Documents.In(text);
}
