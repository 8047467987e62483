namespace Configurator.Benchmarks.Examples;

/// <summary>Tables that examples name: beside their own file, else among the published values of the tests.</summary>
internal static class ExampleTables
{
    public static Func<string, CsvTable?> Beside(string path)
    {
        var folders = Folders(path).ToList();
        return name => folders.Select(folder => Path.Combine(folder, Path.GetFileName(name))).FirstOrDefault(File.Exists) is { } file
            ? CsvTable.Parse(File.ReadAllText(file))
            : null;
    }

    private static IEnumerable<string> Folders(string path)
    {
        var own = Path.GetDirectoryName(Path.GetFullPath(path))!;
        return [own, .. Published(own), .. Published(AppContext.BaseDirectory), .. Published(Directory.GetCurrentDirectory())];
    }

    private static IEnumerable<string> Published(string from)
    {
        for (var folder = new DirectoryInfo(from); folder is not null; folder = folder.Parent)
        {
            yield return Path.Combine(folder.FullName, "tests", "Data", "reference");
        }
    }
}
