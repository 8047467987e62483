namespace Configurator.Core.Documents;

/// <summary>A file of the site that is no page: handed on as it is, in UTF-8 without a byte order mark.</summary>
/// <param name="Path">From the site's root.</param>
/// <param name="Text">Lines end with a line feed.</param>
public sealed record TextFile(string Path, string Text);
