namespace Configurator.Site.Inspecting;

/// <summary>What stands in an <c>href</c> or <c>src</c>, taken apart the way a browser does.</summary>
/// <param name="Scheme">Lower case without the colon; <c>//</c> where only a host is named; empty within the
/// site.</param>
/// <param name="Path">Decoded; empty where the link stays on its page.</param>
/// <param name="Fragment">Decoded; null where there is none.</param>
internal sealed record SiteUrl(string Scheme, string Path, string? Fragment)
{
    public bool IsWithin => Scheme.Length == 0;

    public bool IsRooted => Path.StartsWith('/');

    /// <summary>Whether the page goes to the named place in the target itself, without a script of ours.</summary>
    public bool NamesPlace => !string.IsNullOrEmpty(Fragment) && !Fragment.Contains('=', StringComparison.Ordinal);

    public static SiteUrl Parse(string written)
    {
        var url = string.Concat(written.Where(character => character is not ('\t' or '\n' or '\r'))).Trim(Stripped);
        var scheme = SchemeOf(url);
        if (scheme.Length > 0)
        {
            return new(scheme, url, null);
        }

        var hash = url.IndexOf('#', StringComparison.Ordinal);
        var beforeHash = hash < 0 ? url : url[..hash];
        var query = beforeHash.IndexOf('?', StringComparison.Ordinal);
        var path = query < 0 ? beforeHash : beforeHash[..query];
        return new("", Uri.UnescapeDataString(path), hash < 0 ? null : Uri.UnescapeDataString(url[(hash + 1)..]));
    }

    private static readonly char[] Stripped = [.. Enumerable.Range(0, 0x21).Select(code => (char)code)];

    private static string SchemeOf(string url)
    {
        if (url.Length > 1 && url[0] is '/' or '\\' && url[1] is '/' or '\\')
        {
            return "//";
        }

        var end = url.AsSpan().IndexOfAny(":/?#");
        return end > 0 && url[end] == ':' ? url[..end].ToLowerInvariant() : "";
    }
}
