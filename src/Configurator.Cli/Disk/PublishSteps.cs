namespace Configurator.Cli.Disk;

/// <summary>The moments of a publish, in order, at which a test may look in or end the process.</summary>
internal static class PublishSteps
{
    public const string Locked = "locked";
    public const string SitePutBack = "site put back";
    public const string Recovered = "recovered";
    public const string StagingMade = "staging made";
    public const string FileWritten = "file written";
    public const string ChecksumsWritten = "checksums written";
    public const string Verified = "verified";
    public const string MovedAside = "moved aside";
    public const string Swapped = "swapped";
    public const string OldRemoved = "old removed";

    public static IReadOnlyList<string> All { get; } =
    [
        Locked,
        SitePutBack,
        Recovered,
        StagingMade,
        FileWritten,
        ChecksumsWritten,
        Verified,
        MovedAside,
        Swapped,
        OldRemoved,
    ];
}
