using System.Collections.Immutable;
using Configurator.Core.Diagnostics;

namespace Configurator.Core.Review.Kinds;

/// <summary>What is wrong with the definitions.</summary>
public static class DefinitionKinds
{
    public static readonly ChangeKind FaultAdded = new(
        "fault-added",
        ReviewTopic.Definitions,
        Severity.Warning,
        "What is newly wrong with the definitions",
        "It was not reported before the change"
    )
    {
        IsDiagnosed = true,
    };

    public static readonly ChangeKind FaultGone = new(
        "fault-gone",
        ReviewTopic.Definitions,
        Severity.Note,
        "What is no longer wrong with the definitions",
        "It was reported before the change"
    );

    public static ImmutableArray<ChangeKind> All { get; } = [FaultAdded, FaultGone];
}
