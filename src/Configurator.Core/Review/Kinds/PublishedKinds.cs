using System.Collections.Immutable;
using Configurator.Core.Diagnostics;

namespace Configurator.Core.Review.Kinds;

/// <summary>Published configurations and their findings.</summary>
public static class PublishedKinds
{
    public static readonly ChangeKind ReleasedChanged = new(
        "released-changed",
        ReviewTopic.Published,
        Severity.Error,
        "Released results that changed without a revision step",
        "Shop and service hold a document of the same number and revision that says something else"
    );

    public static readonly ChangeKind ConfigurationInvalid = new(
        "configuration-invalid",
        ReviewTopic.Published,
        Severity.Error,
        "Published configurations that are no longer possible",
        "An order under document control breaks a rule"
    );

    public static readonly ChangeKind FindingFailed = new(
        "finding-failed",
        ReviewTopic.Published,
        Severity.Error,
        "Checks that now fail",
        "A limit is exceeded that held before"
    )
    {
        IsDiagnosed = true,
        Compared = "Margin",
    };

    public static readonly ChangeKind FindingWorse = new(
        "finding-worse",
        ReviewTopic.Published,
        Severity.Warning,
        "Failures that became worse",
        "A limit that was exceeded is exceeded further"
    )
    {
        Compared = "Margin",
    };

    public static readonly ChangeKind ReleasedReworded = new(
        "released-reworded",
        ReviewTopic.Published,
        Severity.Warning,
        "Documents of released revisions that read differently",
        "What is built is the same, but the document of the same number and revision is not"
    );

    public static readonly ChangeKind ReleaseWithdrawn = new(
        "release-withdrawn",
        ReviewTopic.Published,
        Severity.Warning,
        "Releases withdrawn",
        "A revision that was approved is a draft again"
    );

    public static readonly ChangeKind ConfigurationRemoved = new(
        "configuration-removed",
        ReviewTopic.Published,
        Severity.Warning,
        "Published configurations removed",
        "Its documents disappear from the site"
    );

    public static readonly ChangeKind OrderEdited = new(
        "order-edited",
        ReviewTopic.Published,
        Severity.Warning,
        "Published orders that come to something else",
        "What is ordered, or what comes with it, is not what it was"
    );

    public static readonly ChangeKind OrderRewritten = new(
        "order-rewritten",
        ReviewTopic.Published,
        Severity.Note,
        "Published orders written otherwise",
        "The file ticks other options and comes to the same configuration"
    );

    public static readonly ChangeKind LimitReached = new(
        "limit-reached",
        ReviewTopic.Published,
        Severity.Warning,
        "Limits with nothing left",
        "The check still passes, but what comes next needs more"
    )
    {
        Compared = "Margin",
    };

    public static readonly ChangeKind FindingTightened = new(
        "finding-tightened",
        ReviewTopic.Published,
        Severity.Note,
        "Margins that became smaller",
        "The check still passes"
    )
    {
        Compared = "Margin",
    };

    public static readonly ChangeKind FindingEased = new(
        "finding-eased",
        ReviewTopic.Published,
        Severity.Note,
        "Margins that became larger",
        "There is more room than before"
    )
    {
        Compared = "Margin",
    };

    public static readonly ChangeKind FindingMended = new(
        "finding-mended",
        ReviewTopic.Published,
        Severity.Note,
        "Failures that are gone",
        "A limit that was exceeded holds again, or nothing is left to check"
    );

    public static readonly ChangeKind ConfigurationValid = new(
        "configuration-valid",
        ReviewTopic.Published,
        Severity.Note,
        "Published configurations that are possible again",
        "It keeps all rules now"
    );

    public static readonly ChangeKind ConfigurationAdded = new(
        "configuration-added",
        ReviewTopic.Published,
        Severity.Note,
        "New published configurations",
        "Its documents appear in the site"
    );

    public static readonly ChangeKind Revised = new(
        "revised",
        ReviewTopic.Published,
        Severity.Note,
        "Revisions and releases",
        "Document control took a step"
    );

    public static readonly ChangeKind ChecksChanged = new(
        "checks-changed",
        ReviewTopic.Published,
        Severity.Note,
        "Checks that came or went",
        "They pass; there was nothing, or is nothing any more, to check"
    );

    /// <summary>In the order in which a review tells them.</summary>
    public static ImmutableArray<ChangeKind> All { get; } =
    [
        ReleasedChanged,
        ConfigurationInvalid,
        FindingFailed,
        FindingWorse,
        ReleasedReworded,
        ReleaseWithdrawn,
        ConfigurationRemoved,
        OrderEdited,
        LimitReached,
        FindingTightened,
        FindingEased,
        FindingMended,
        ConfigurationValid,
        ConfigurationAdded,
        Revised,
        OrderRewritten,
        ChecksChanged,
    ];
}
