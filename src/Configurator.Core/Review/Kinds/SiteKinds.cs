using System.Collections.Immutable;
using Configurator.Core.Diagnostics;

namespace Configurator.Core.Review.Kinds;

/// <summary>Pages of the site.</summary>
public static class SiteKinds
{
    public static readonly ChangeKind TemplatesChanged = new(
        "templates-changed",
        ReviewTopic.Site,
        Severity.Note,
        "Templates and assets",
        "Every page may look different"
    );

    public static readonly ChangeKind PageRemoved = new(
        "page-removed",
        ReviewTopic.Site,
        Severity.Note,
        "Pages removed",
        "Links to it from outside lead nowhere"
    );

    public static readonly ChangeKind PageAdded = new(
        "page-added",
        ReviewTopic.Site,
        Severity.Note,
        "Pages added",
        "It has a link from its machine or list"
    );

    public static readonly ChangeKind PageChanged = new(
        "page-changed",
        ReviewTopic.Site,
        Severity.Note,
        "Pages changed",
        "What it says is different, not only how it looks"
    );

    public static ImmutableArray<ChangeKind> All { get; } = [TemplatesChanged, PageRemoved, PageAdded, PageChanged];
}
