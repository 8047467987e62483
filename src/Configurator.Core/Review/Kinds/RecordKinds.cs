using System.Collections.Immutable;
using Configurator.Core.Diagnostics;

namespace Configurator.Core.Review.Kinds;

/// <summary>Records of accepted deviations.</summary>
public static class RecordKinds
{
    public static readonly ChangeKind RecordEnded = new(
        "record-ended",
        ReviewTopic.Records,
        Severity.Error,
        "Accepted deviations that have ended",
        "What was accepted for a time counts as failed again"
    );

    public static readonly ChangeKind RecordAdded = new(
        "record-added",
        ReviewTopic.Records,
        Severity.Warning,
        "Newly accepted deviations",
        "Whoever approves this change approves that the finding fails"
    );

    public static readonly ChangeKind RecordChanged = new(
        "record-changed",
        ReviewTopic.Records,
        Severity.Warning,
        "Accepted deviations that changed",
        "It is accepted for another time, by another role or for another reason"
    );

    public static readonly ChangeKind RecordEnding = new(
        "record-ending",
        ReviewTopic.Records,
        Severity.Warning,
        "Accepted deviations that end within 30 days",
        "Mend what fails, or have it accepted anew"
    );

    public static readonly ChangeKind RecordRemoved = new(
        "record-removed",
        ReviewTopic.Records,
        Severity.Note,
        "Records removed",
        "Nothing is accepted there any more"
    );

    public static ImmutableArray<ChangeKind> All { get; } =
    [RecordEnded, RecordAdded, RecordChanged, RecordEnding, RecordRemoved];
}
