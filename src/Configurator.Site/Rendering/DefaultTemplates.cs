using System.Collections.Immutable;
using System.Reflection;
using Configurator.Core.Sources;

namespace Configurator.Site.Rendering;

/// <summary>The templates and assets that the tool carries for catalogues that bring none of their own.</summary>
public static class DefaultTemplates
{
    private static readonly Assembly Home = typeof(DefaultTemplates).Assembly;

    public static TemplateSet Load() =>
        TemplateSet.Of(
            Below("templates/").Select(file => SourceText.Decode(new(file.Key, file.Value))).OfType<SourceText>()
        );

    /// <summary>Style sheets, scripts and pictures by their path below <c>site-templates/assets</c>.</summary>
    public static ImmutableSortedDictionary<string, ReadOnlyMemory<byte>> Assets() =>
        Below("assets/").ToImmutableSortedDictionary(StringComparer.Ordinal);

    private static IEnumerable<KeyValuePair<string, ReadOnlyMemory<byte>>> Below(string folder) =>
        Home.GetManifestResourceNames()
            .Where(name => name.StartsWith(folder, StringComparison.Ordinal))
            .Select(name => KeyValuePair.Create(name[folder.Length..].Replace('\\', '/'), Read(name)));

    private static ReadOnlyMemory<byte> Read(string name)
    {
        using var stream = Home.GetManifestResourceStream(name)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
