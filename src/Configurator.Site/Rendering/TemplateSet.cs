using System.Collections.Immutable;
using Configurator.Core.Sources;

namespace Configurator.Site.Rendering;

/// <summary>The page templates of a catalogue by key: <c>Machine.cshtml</c>, <c>shared/_Table.cshtml</c>.</summary>
public sealed record TemplateSet(ImmutableSortedDictionary<string, SourceText> Templates)
{
    public static TemplateSet Empty { get; } =
        new(ImmutableSortedDictionary.Create<string, SourceText>(StringComparer.Ordinal));

    /// <param name="templates">Each with its path from the catalogue's folder or from <c>site-templates</c>.</param>
    public static TemplateSet Of(IEnumerable<SourceText> templates) =>
        new(Empty.Templates.SetItems(templates.Select(WithKey)));

    /// <summary>These templates, and where they have none, the given defaults.</summary>
    public TemplateSet Over(TemplateSet defaults) => new(defaults.Templates.SetItems(Templates));

    internal SourceText? Find(string key) => Templates.GetValueOrDefault(key);

    private static KeyValuePair<string, SourceText> WithKey(SourceText template)
    {
        var key = TemplateKey.OfPath(template.Path);
        return TemplateKey.IsSound(key)
            ? new(key, new SourceText(TemplateKey.PathOf(key), template.Text))
            : throw new ArgumentException($"`{template.Path}` is no template below `site-templates`", nameof(template));
    }
}
