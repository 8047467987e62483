using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Documents;
using Configurator.Core.Documents.Pages;
using Configurator.Core.Review;
using Configurator.Site.Rendering;

namespace Configurator.Site;

/// <summary>A preview of a change: the site after it, with the review in it, and the site before it in a folder
/// below.</summary>
public static class ReviewSite
{
    /// <summary>Without errors only where the later side has none.</summary>
    public static Outcome<SiteFiles> Build(
        ReviewSide before,
        ReviewSide after,
        ReviewReport report,
        ReviewVerdict verdict,
        RunFacts facts,
        ITemplateStore? store = null
    )
    {
        if (after.Checked.HasErrors)
        {
            return new(SiteFiles.Empty, after.Checked.Diagnostics);
        }

        var earlier = Earlier(before, facts, store);
        return Pipeline
            .Pages(
                after.Engineered,
                facts,
                store,
                documents => WithReview(documents, report, verdict, hasBefore: !earlier.IsEmpty),
                [.. earlier.Select(file => file.Key)]
            )
            .Then(site => new Outcome<SiteFiles>(site.With(earlier)));
    }

    private static SiteDocuments WithReview(
        SiteDocuments documents,
        ReviewReport report,
        ReviewVerdict verdict,
        bool hasBefore
    ) =>
        documents with
        {
            Pages =
            [
                .. documents.Pages.Select(page => page.Path == PagePaths.Catalogue ? ReviewPage.Announce(page) : page),
                ReviewPage.Compose(documents.Engineered, report, verdict, hasBefore),
            ],
        };

    /// <summary>Nothing where the earlier side has errors, or its templates do.</summary>
    private static ImmutableArray<KeyValuePair<string, ReadOnlyMemory<byte>>> Earlier(
        ReviewSide before,
        RunFacts facts,
        ITemplateStore? store
    )
    {
        var site = Pipeline.Build(before.Checked, facts with { Revision = before.Name }, store);
        return site.HasErrors
            ? []
            : [.. site.Value.Files.Select(file => KeyValuePair.Create(ReviewPage.BeforeFolder + file.Key, file.Value))];
    }
}
