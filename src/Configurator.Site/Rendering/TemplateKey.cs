namespace Configurator.Site.Rendering;

/// <summary>How templates call each other: the path below <c>site-templates</c>, with forward slashes.</summary>
internal static class TemplateKey
{
    public const string Ending = ".cshtml";

    private const string Folder = "site-templates/";

    public static string PathOf(string key) => Folder + key;

    public static string OfPath(string path) =>
        path.StartsWith(Folder, StringComparison.Ordinal) ? path[Folder.Length..] : path;

    /// <summary>Whether the key stays below the folder: relative, no empty, <c>.</c> or <c>..</c> step.</summary>
    public static bool IsSound(string key) =>
        key.EndsWith(Ending, StringComparison.Ordinal)
        && !key.AsSpan().ContainsAny('\\', ':')
        && key.Split('/').All(step => step is not ("" or "." or ".."));

    /// <summary>Imports give their usings to the templates beside and below them, and are never rendered.</summary>
    public static bool IsImports(string key) => key.Split('/')[^1] == Imports;

    /// <summary>The keys under which imports of a template may lie, outermost first.</summary>
    public static IEnumerable<string> ImportsOf(string key)
    {
        yield return Imports;
        for (var slash = key.IndexOf('/', StringComparison.Ordinal); slash >= 0; slash = key.IndexOf('/', slash + 1))
        {
            yield return key[..(slash + 1)] + Imports;
        }
    }

    private const string Imports = "_ViewImports" + Ending;
}
