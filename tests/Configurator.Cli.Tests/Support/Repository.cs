namespace Configurator.Cli.Tests.Support;

/// <summary>Where this repository's own files are.</summary>
internal static class Repository
{
    public static string Root { get; } = Find(new DirectoryInfo(AppContext.BaseDirectory));

    public static string Cases => Path.Combine(Root, "tests", "Cases");

    /// <summary>Copies the definitions of the demonstration catalogue.</summary>
    public static void CopyDemo(string to)
    {
        foreach (var folder in new[] { "machines", "options", "site-templates" })
        {
            Copy(Path.Combine(Root, folder), Path.Combine(to, folder));
        }
    }

    public static void Copy(string from, string to)
    {
        Directory.CreateDirectory(to);
        foreach (var folder in Directory.EnumerateDirectories(from, "*", SearchOption.AllDirectories))
        {
            Directory.CreateDirectory(Path.Combine(to, Path.GetRelativePath(from, folder)));
        }

        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            File.Copy(file, Path.Combine(to, Path.GetRelativePath(from, file)), overwrite: true);
        }
    }

    private static string Find(DirectoryInfo folder) =>
        File.Exists(Path.Combine(folder.FullName, "Configurator.sln")) ? folder.FullName : Find(folder.Parent!);
}
