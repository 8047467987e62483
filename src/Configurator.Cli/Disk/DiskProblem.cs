namespace Configurator.Cli.Disk;

/// <summary>Why the disk did not do what was asked of it, and what would put it right.</summary>
internal sealed record DiskProblem(string Why, string Fix)
{
    /// <param name="doing">What was attempted, as in "cannot write `site`".</param>
    public static DiskProblem From(string doing, Exception failure) =>
        new($"{doing}: {failure.Message.TrimEnd('.')}", FixOf(failure));

    /// <summary>What a disk may do at any moment; anything else that is thrown is a mistake of ours.</summary>
    public static bool Caused(Exception failure) => failure is IOException or UnauthorizedAccessException;

    /// <summary>The numbers are those of Linux and, for a full disk, of Windows.</summary>
    private static string FixOf(Exception failure) =>
        failure switch
        {
            UnauthorizedAccessException => "give the account that runs this the right to that path, or choose another",
            { HResult: 28 or 122 or unchecked((int)0x80070070) } => "free some space on that disk, or choose another",
            { HResult: 30 } => "make that disk writable, or choose another",
            PathTooLongException => "choose a shorter path",
            _ => "put right what the message says and run the command again",
        };
}
