using Configurator.Core.Binding;
using Configurator.Core.Diagnostics;
using Configurator.Core.Documents;
using Configurator.Core.Engineering;
using Configurator.Core.Loading;
using Configurator.Core.Logic;
using Configurator.Core.Sources;
using Configurator.Site.Downloads;
using Configurator.Site.Inspecting;
using Configurator.Site.Rendering;

namespace Configurator.Site;

/// <summary>What a run prints about itself: its own version, and the revision and date given to it.</summary>
/// <param name="Revision">Of the definitions; empty where none was given.</param>
/// <param name="Date">ISO 8601; empty where none was given.</param>
public sealed record RunFacts(string ToolVersion, string Revision, string Date);

/// <summary>All stages in order.</summary>
public static class Pipeline
{
    /// <summary>Everything that can be found wrong without writing pages.</summary>
    /// <param name="on">The day of the run, by which accepted deviations end; null where none was given.</param>
    public static Outcome<EngineeredCatalogue> Check(SourceSet sources, DateOnly? on = null) =>
        Engineer.Compute(Loader.Load(sources).Then(Binder.Bind).Then(Prover.Prove), on);

    /// <summary>The same, and what cannot be shown of the prose.</summary>
    public static Outcome<EngineeredCatalogue> CheckWithProse(SourceSet sources, DateOnly? on = null) =>
        Check(sources, on)
            .Then(engineered => new Outcome<EngineeredCatalogue>(
                engineered,
                Renderer.CheckProse(engineered.Catalogue)
            ));

    /// <summary>The whole site, and everything that can be found wrong.</summary>
    public static Outcome<SiteFiles> Build(SourceSet sources, RunFacts facts) => Build(Check(sources), facts);

    /// <summary>The site of a checked catalogue. Where that has errors no page is made, but templates and prose are
    /// still checked.</summary>
    /// <param name="store">Keeps compiled templates from one run to the next; null keeps none.</param>
    public static Outcome<SiteFiles> Build(
        Outcome<EngineeredCatalogue> engineered,
        RunFacts facts,
        ITemplateStore? store = null
    ) =>
        engineered.HasErrors
            ? engineered.Then(catalogue => Renderer.Check(catalogue.Catalogue, store))
            : engineered.Then(catalogue => Pages(catalogue, facts, store));

    private static Outcome<SiteFiles> Pages(EngineeredCatalogue engineered, RunFacts facts, ITemplateStore? store) =>
        Inspected(
            Documenter
                .Compose(engineered, facts.Revision)
                .Then(documents => WithDownloads(Renderer.Render(documents, store), documents))
                .Then(site => WithBuildInfo(site, facts))
        );

    /// <summary>Links to a page that could not be made are no fault of their own.</summary>
    private static Outcome<SiteFiles> Inspected(Outcome<SiteFiles> site) =>
        site.HasErrors ? site : site.Then(Inspector.Inspect);

    private static Outcome<SiteFiles> WithDownloads(Outcome<SiteFiles> site, SiteDocuments documents) =>
        site.HasErrors
            ? site
            : site.Then(pages => Audited(pages.With(DownloadFiles.Of(documents)), documents));

    private static Outcome<SiteFiles> Audited(SiteFiles site, SiteDocuments documents) =>
        new(site, [.. DownloadChecks.Check(documents, site)]);

    private static Outcome<SiteFiles> WithBuildInfo(SiteFiles site, RunFacts facts) =>
        new(site.With([new("build-info.json", BuildInfo.Of(facts))]));
}
