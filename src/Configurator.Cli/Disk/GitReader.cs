using System.Globalization;
using System.Text;
using Configurator.Core.Sources;

namespace Configurator.Cli.Disk;

/// <summary>Reads a catalogue as it is in a revision, from the repository that its folder is in. The work tree is not
/// touched.</summary>
internal static class GitReader
{
    private const long ListingMax = 16L << 20;
    private const string Install = "install git, or give folders instead of revisions";

    /// <param name="folder">The catalogue's folder: the same one is read in the revision.</param>
    public static CatalogueReading Read(string folder, string revision)
    {
        if (revision.Length == 0 || revision.StartsWith('-') || revision.Any(char.IsControl))
        {
            return CatalogueReading.Failed(
                new(
                    $"`{CatalogueNames.Escape(revision)}` is not a revision",
                    "give a branch, a tag, a commit or a folder"
                )
            );
        }

        if (!Directory.Exists(folder))
        {
            return CatalogueReading.Failed(
                new($"there is no folder `{folder}`", "give the folder that holds `machines` and `options`")
            );
        }

        return Git(folder, "rev-parse", "--show-prefix") switch
        {
            null => CatalogueReading.Failed(new("git is not installed or cannot be started", Install)),
            { ExitCode: not 0 } run => CatalogueReading.Failed(
                new(
                    $"`{folder}` is in no git repository that can be read: {run.Errors}",
                    "give folders instead of revisions"
                )
            ),
            var run => Read(folder, revision, Encoding.UTF8.GetString(run.Output).TrimEnd('\n').TrimEnd('/')),
        };
    }

    private static CatalogueReading Read(string folder, string revision, string prefix)
    {
        if (Git(folder, "rev-parse", "--verify", "--quiet", $"{revision}^{{commit}}") is not { ExitCode: 0 } commit)
        {
            return CatalogueReading.Failed(
                new(
                    $"there is neither a folder nor a revision `{revision}`",
                    "correct the name, or fetch the revision first; a shallow clone lacks it"
                )
            );
        }

        var tree = $"{Encoding.ASCII.GetString(commit.Output).Trim()}:{prefix}";
        string[] listing = ["ls-tree", "-r", "-l", "-z", "--full-tree", tree, "--", .. CatalogueRules.TopFolders];
        return GitProcess.Run(folder, listing, [], ListingMax) switch
        {
            { ExitCode: 0 } run => Read(folder, revision, [.. GitEntry.Read(run.Output)]),
            var run => CatalogueReading.Failed(
                new(
                    $"`{revision}` has no folder `{prefix}` that can be read: {run?.Errors}",
                    "review from another folder"
                )
            ),
        };
    }

    private static CatalogueReading Read(string folder, string revision, List<GitEntry> entries)
    {
        if (!entries.Exists(entry => !entry.Path.StartsWith(CatalogueRules.Templates, StringComparison.Ordinal)))
        {
            return CatalogueReading.Failed(
                new(
                    $"`{revision}` has neither a folder `machines` nor a folder `options`",
                    "give a revision that has them"
                )
            );
        }

        var tree = GitTree.Of(entries);
        return entries.Count > CatalogueRules.EntriesMax || tree.Files.Sum(file => file.Bytes) > CatalogueRules.BytesMax
            ? CatalogueReading.Failed(
                new(
                    $"`{revision}` has more files than a catalogue may have",
                    "keep only definitions, notes and templates there"
                )
            )
            : Read(folder, revision, tree);
    }

    private static CatalogueReading Read(string folder, string revision, GitTree tree)
    {
        var most = tree.Files.Sum(file => file.Bytes + 128);
        var run = GitProcess.Run(folder, ["cat-file", "--batch"], tree.Files.Select(file => file.Id), most);
        var files = new List<SourceFile>();
        var at = 0;
        foreach (var file in tree.Files)
        {
            if (run is not { ExitCode: 0 } || Contents(run.Output, file, ref at) is not { } bytes)
            {
                return CatalogueReading.Failed(
                    new(
                        $"git cannot read `{file.Path}` in `{revision}`: {run?.Errors}",
                        "fetch the revision with all its files"
                    )
                );
            }

            files.Add(new(file.Path, bytes));
        }

        return new(SourceSet.Of(files, tree.Refused), null);
    }

    /// <summary>The next object of the batch: a line with its id, kind and size, then its bytes.</summary>
    private static ReadOnlyMemory<byte>? Contents(byte[] batch, GitEntry file, ref int at)
    {
        var head = string.Create(CultureInfo.InvariantCulture, $"{file.Id} blob {file.Bytes}\n");
        if (!batch.AsSpan(at).StartsWith(Encoding.ASCII.GetBytes(head)) || at + head.Length + file.Bytes > batch.Length)
        {
            return null;
        }

        var bytes = batch.AsMemory(at + head.Length, (int)file.Bytes);
        at += head.Length + bytes.Length + 1;
        return bytes;
    }

    private static GitRun? Git(string folder, params string[] arguments) =>
        GitProcess.Run(folder, arguments, [], ListingMax);
}
