namespace Configurator.Site.Markup;

/// <summary>Where a note may lead: to other files of the site, to the web by https, to a mail address.</summary>
internal static class LinkPolicy
{
    /// <summary>Why a target is refused, or null where it is fine.</summary>
    public static string? Refusal(string? target, bool isImage)
    {
        if (string.IsNullOrEmpty(target))
        {
            return "it leads nowhere";
        }

        if (target.Any(character => char.IsControl(character) || character is ' ' or '\\'))
        {
            return "it has a character that a link cannot have";
        }

        if (target[0] == '/')
        {
            return "it does not start at the page";
        }

        return Scheme(target) is { } scheme ? SchemeRefusal(scheme, target, isImage) : null;
    }

    /// <summary>What stands before the first colon, unless a path, a query or a fragment has begun by then.</summary>
    private static string? Scheme(string target)
    {
        var end = target.AsSpan().IndexOfAny(":/?#");
        return end >= 0 && target[end] == ':' ? target[..end].ToLowerInvariant() : null;
    }

    private static string? SchemeRefusal(string scheme, string target, bool isImage) =>
        scheme switch
        {
            "https" or "mailto" when isImage => "pictures come from the catalogue",
            "https" => IsWeb(target) ? null : "it is no web address",
            "mailto" => null,
            _ => $"scheme `{scheme}`",
        };

    private static bool IsWeb(string target) =>
        target.StartsWith("https://", StringComparison.OrdinalIgnoreCase)
        && Uri.TryCreate(target, UriKind.Absolute, out var uri)
        && uri.Host.Length > 0;
}
