using System.Text;

namespace Configurator.Site.Rendering;

/// <summary>A page to make: where it will stand in the site, with which template, from which page record.</summary>
internal sealed record PageJob(string Path, string TemplateKey, object? Model);

/// <summary>The finished text of a page; empty where the template failed.</summary>
internal sealed record RenderedPage(string Html)
{
    public static RenderedPage Empty { get; } = new("");

    public ReadOnlyMemory<byte> Utf8 => Encoding.UTF8.GetBytes(Html);
}
