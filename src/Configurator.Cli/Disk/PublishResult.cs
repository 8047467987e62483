using System.Collections.Immutable;

namespace Configurator.Cli.Disk;

/// <summary>How a publish ended. Unless published, the site that was there is unchanged, byte for byte.</summary>
internal enum PublishVerdict
{
    Published,

    /// <summary>The place or a file's name is not one that may be written to.</summary>
    Refused,

    /// <summary>The disk failed, or another publish is at work.</summary>
    Failed,

    Cancelled,
}

/// <summary>What became of a publish.</summary>
/// <param name="Problem">Null exactly when published or cancelled.</param>
/// <param name="Messages">What was put right after an earlier run, and what could not be tidied up.</param>
internal sealed record PublishResult(PublishVerdict Verdict, DiskProblem? Problem, ImmutableArray<string> Messages);
