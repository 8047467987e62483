using System.Globalization;
using Configurator.Core.Sources;

namespace Configurator.Cli.Disk;

/// <summary>What may lie in a catalogue, how large it may be, and the words for what is refused.</summary>
internal static class CatalogueRules
{
    public const int EntriesMax = 20_000;
    public const long BytesMax = 256L << 20;
    public const int DepthMax = 16;
    public const string Templates = "site-templates";
    private const long TextBytesMax = 1L << 20;
    private const long AssetBytesMax = 4L << 20;
    private const string SpecialWhy = "this is a pipe, a socket or a device, not a file";
    private static readonly string[] DefinitionEndings = [".yaml", ".md"];
    private static readonly string[] TextEndings = [.. DefinitionEndings, ".cshtml"];

    public static IReadOnlyList<string> TopFolders { get; } = ["machines", "options", Templates];

    public static RefusedFile IsLink(string path) =>
        new(path, "this is a link; links are not followed", "put the file or folder itself here");

    public static RefusedFile IsSpecial(string path) => new(path, SpecialWhy, "remove it");

    public static RefusedFile IsNoFolder(string path) =>
        new(path, $"`{path}` must be a folder", "rename the file and make a folder of that name");

    public static RefusedFile IsTooDeep(string path) =>
        new(
            path,
            string.Create(CultureInfo.InvariantCulture, $"folders are nested more than {DepthMax} deep here"),
            "move what it holds further up"
        );

    public static RefusedFile HasOddName(string path) =>
        new(
            path,
            "the name has characters that cannot be seen or is not UTF-8",
            "rename it with lower-case letters, digits and hyphens"
        );

    public static RefusedFile HasWrongCase(string path, string right) =>
        new(path, $"only `{right}` is read, in lower case", $"rename it to `{right}`");

    public static RefusedFile Collides(string path, string other) =>
        new(path, $"its name differs from `{other}` only in case; some disks keep only one", "rename one of the two");

    public static RefusedFile IsUnreadable(string path, Exception failure)
    {
        var problem = DiskProblem.From("this cannot be read", failure);
        return new(path, problem.Why, problem.Fix);
    }

    /// <summary>What keeps a regular file from being read, or null.</summary>
    public static RefusedFile? Judge(CatalogueFile file)
    {
        var isTemplate = file.Path.StartsWith(Templates + "/", StringComparison.Ordinal);
        return WrongEnding(file.Path, isTemplate ? TextEndings : DefinitionEndings)
            ?? (isTemplate ? null : Stray(file.Path))
            ?? TooLarge(file);
    }

    private static RefusedFile? WrongEnding(string path, string[] endings)
    {
        var ending = Path.GetExtension(path);
        var meant = ending.ToLowerInvariant() is var lower && lower == ".yml" ? ".yaml" : lower;
        return meant == ending || !endings.Contains(meant)
            ? null
            : new(
                path,
                $"only files that end in `{meant}` are read",
                $"rename it to `{Path.GetFileNameWithoutExtension(path)}{meant}`"
            );
    }

    private static RefusedFile? Stray(string path) =>
        DefinitionEndings.Contains(Path.GetExtension(path))
            ? null
            : new(path, "nothing reads this file: it is neither `.yaml` nor `.md`", "move it out of the catalogue");

    private static RefusedFile? TooLarge(CatalogueFile file)
    {
        var most = TextEndings.Contains(Path.GetExtension(file.Path)) ? TextBytesMax : AssetBytesMax;
        return file.Bytes <= most
            ? null
            : new(
                file.Path,
                string.Create(CultureInfo.InvariantCulture, $"the file has {file.Bytes} bytes; {most} is the limit"),
                "split it, or move it out of the catalogue"
            );
    }
}
