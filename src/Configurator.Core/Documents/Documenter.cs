using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Documents.Audits;
using Configurator.Core.Documents.Monitoring;
using Configurator.Core.Documents.Pages;
using Configurator.Core.Documents.Pages.Configurations;
using Configurator.Core.Documents.StructuredText;
using Configurator.Core.Engineering;

namespace Configurator.Core.Documents;

/// <summary>All pages of a site, finished, and what goes with them unread: templates and assets.</summary>
public sealed record SiteDocuments(EngineeredCatalogue Engineered, ImmutableArray<Page> Pages)
{
    /// <summary>The documents of each published configuration.</summary>
    public ImmutableArray<DocumentSet> Sets { get; init; } = [];

    /// <summary>Files beside the pages that are handed on as they are.</summary>
    public ImmutableArray<TextFile> TextFiles { get; init; } = [];
}

/// <summary>Fifth stage: page records and tables, sorted, linked, formatted.</summary>
public static class Documenter
{
    /// <param name="definitions">Revision of the definitions as given to the run; empty where none was.</param>
    public static Outcome<SiteDocuments> Compose(EngineeredCatalogue engineered, string definitions)
    {
        var context = new DocumentContext(engineered, new(engineered.Catalogue.Site.Languages[0]), definitions);
        ImmutableArray<PickedMachine> picked =
        [
            .. engineered
                .Proved.Logic.Values.AsParallel()
                .AsOrdered()
                .Select(proof => PickerPage.Compose(context, proof.Logic)),
        ];
        ImmutableArray<DocumentSet> sets =
        [
            .. engineered.Configurations.Select(configuration => ConfigurationPages.Compose(context, configuration)),
        ];
        IEnumerable<Page> pages =
        [
            .. CataloguePages.Compose(context),
            .. engineered.Catalogue.Machines.Values.SelectMany(machine => MachinePages.Compose(context, machine)),
            .. engineered.Catalogue.Options.Values.Select(option => OptionPages.Compose(context, option)),
            .. engineered.Catalogue.Devices.Values.Select(device => DevicePages.Compose(context, device)),
            .. sets.SelectMany(set => set.Pages),
            .. FindingPages.Compose(context),
            .. picked.Select(machine => machine.Page),
        ];
        return new(
            new(
                engineered,
                [
                    .. pages
                        .Select(page => page with { SiteTitle = context.SiteTitle })
                        .OrderBy(page => page.Path, StringComparer.Ordinal),
                ]
            )
            {
                Sets = sets,
                TextFiles = [.. TextFiles(context), .. picked.Select(machine => machine.Script)],
            },
            [.. sets.SelectMany(set => DocumentAudit.Check(context.Designations, set))]
        );
    }

    private static IEnumerable<TextFile> TextFiles(DocumentContext context) =>
        [
            .. context
                .Catalogue.Machines.Values.Where(machine => machine.IsWhole)
                .Select(machine => MachineTypes.File(context, machine)),
            .. context.Engineered.Configurations.Select(configuration => EnableConstants.File(context, configuration)),
            .. context.Engineered.Configurations.Select(configuration => MonitoringFile.Of(context, configuration)),
            .. context.Engineered.Configurations.IsEmpty ? ImmutableArray<TextFile>.Empty : [MonitoringSchema.File],
        ];
}
