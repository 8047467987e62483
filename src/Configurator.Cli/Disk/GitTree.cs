using Configurator.Core.Sources;

namespace Configurator.Cli.Disk;

/// <summary>Sorts the files of a revision into those to read and those refused, by the rules for folders on
/// disk.</summary>
internal sealed class GitTree
{
    private readonly List<GitEntry> _files = [];
    private readonly List<RefusedFile> _refused = [];
    private readonly Dictionary<string, string> _taken = new(StringComparer.OrdinalIgnoreCase);

    private GitTree() { }

    public IReadOnlyList<GitEntry> Files => _files;

    public IReadOnlyList<RefusedFile> Refused => _refused;

    public static GitTree Of(IEnumerable<GitEntry> entries)
    {
        var tree = new GitTree();
        foreach (var entry in entries.OrderBy(entry => entry.Path, StringComparer.Ordinal))
        {
            tree.Sort(entry);
        }

        return tree;
    }

    private void Sort(GitEntry entry)
    {
        var steps = entry.Path.Split('/');
        if (steps.Skip(1).Any(CatalogueNames.IsIgnored))
        {
            return;
        }

        var path = string.Join('/', steps.Select(CatalogueNames.Escape));
        if (Judge(entry, steps, path) is { } refused)
        {
            _refused.Add(refused);
        }
        else
        {
            _files.Add(entry);
        }
    }

    private RefusedFile? Judge(GitEntry entry, string[] steps, string path)
    {
        if (!steps.All(CatalogueNames.IsPlain))
        {
            return CatalogueRules.HasOddName(path);
        }

        if (entry.IsLink)
        {
            return CatalogueRules.IsLink(path);
        }

        if (!entry.IsFile)
        {
            return CatalogueRules.IsSpecial(path);
        }

        if (steps.Length == 1)
        {
            return CatalogueRules.IsNoFolder(path);
        }

        return steps.Length - 1 > CatalogueRules.DepthMax ? CatalogueRules.IsTooDeep(path)
            : Collision(path) is { } other ? CatalogueRules.Collides(path, other)
            : CatalogueRules.Judge(new(path, "", entry.Bytes));
    }

    /// <summary>A file or folder on the way whose name differs in case only.</summary>
    private string? Collision(string path)
    {
        for (var end = path.IndexOf('/', StringComparison.Ordinal); end >= 0; end = path.IndexOf('/', end + 1))
        {
            if (Differs(path[..end]) is { } other)
            {
                return other;
            }
        }

        return Differs(path);
    }

    private string? Differs(string path) => _taken.TryAdd(path, path) || _taken[path] == path ? null : _taken[path];
}
