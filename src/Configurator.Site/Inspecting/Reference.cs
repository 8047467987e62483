using Configurator.Core.Sources;

namespace Configurator.Site.Inspecting;

/// <summary>How a page uses what it names.</summary>
internal enum ReferenceUse
{
    /// <summary>Followed when a reader asks for it.</summary>
    Link,

    /// <summary>Fetched with the page.</summary>
    Request,

    /// <summary>A picture that is fetched with the page.</summary>
    Picture,
}

/// <summary>A place where a file of the site names another file.</summary>
internal sealed record Reference(string Written, ReferenceUse Use, SourceSpan Span)
{
    public SiteUrl Url => SiteUrl.Parse(Written);
}
