using Configurator.Core.Documents;
using Configurator.Core.Sources;

namespace Configurator.Site.Tests.Downloads;

/// <summary>The small catalogue of <c>tests/Cases/base</c> with hostile texts in it, and its finished site.</summary>
internal static class Published
{
    private const string Recipe = "=cmd|' /C calc'!A1, \\\"quoted\\\", <b>bold</b>; ½ × “mm²”";

    private static readonly Lazy<(SiteDocuments Documents, SiteFiles Site)> Made = new(Make);

    public static DocumentSet Set => Made.Value.Documents.Sets.Single();

    public static SiteDocuments Documents => Made.Value.Documents;

    public static SiteFiles Site => Made.Value.Site;

    public static ReadOnlyMemory<byte> File(string path) => Site.Files[path];

    private static (SiteDocuments Documents, SiteFiles Site) Make()
    {
        var engineered = Pipeline.Check(SourceSet.Of(Files()));
        Assert.Empty(engineered.Diagnostics);
        var site = Pipeline.Build(engineered, new("test", "", ""));
        Assert.Empty(site.Diagnostics);
        return (Documenter.Compose(engineered.Value, "").Value, site.Value);
    }

    private static IEnumerable<SourceFile> Files()
    {
        var root = Path.Combine(Folder(), "tests", "Cases", "base", "input");
        foreach (var file in Directory.EnumerateFiles(root, "*", SearchOption.AllDirectories))
        {
            var path = Path.GetRelativePath(root, file).Replace('\\', '/');
            var text = System.IO.File.ReadAllText(file);
            yield return new(path, System.Text.Encoding.UTF8.GetBytes(
                path.EndsWith("top-film.yaml", StringComparison.Ordinal)
                    ? text.Replace("purpose: Finds the print mark on the film", $"purpose: \"{Recipe}\"", StringComparison.Ordinal)
                    : text));
        }
    }

    private static string Folder()
    {
        var folder = AppContext.BaseDirectory;
        while (!System.IO.File.Exists(Path.Combine(folder, "Configurator.sln")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }

        return folder;
    }
}
