using System.Collections.Immutable;
using System.Reflection;
using Microsoft.AspNetCore.Html;
using Microsoft.AspNetCore.Razor.Runtime.TagHelpers;
using Microsoft.AspNetCore.Razor.TagHelpers;
using Microsoft.CodeAnalysis;
using RazorLight;
using SourceSpan = Configurator.Core.Sources.SourceSpan;

namespace Configurator.Site.Rendering;

/// <summary>
/// What templates are compiled against: the little of the runtime that formatting needs, and the models.
/// </summary>
internal static class TemplateReferences
{
    private static readonly ImmutableArray<string> OfTheRuntime =
    [
        "Microsoft.CSharp",
        "netstandard",
        "System.Collections",
        "System.Collections.Immutable",
        "System.Linq",
        "System.Linq.Expressions",
        "System.Memory",
        "System.ObjectModel",
        "System.Private.CoreLib",
        "System.Runtime",
        "System.Runtime.Extensions",
        "System.Runtime.Numerics",
        "System.Text.Encodings.Web",
        "System.Threading",
    ];

    private static readonly Lazy<ImmutableArray<MetadataReference>> Fixed = new(() =>
        [.. RuntimePaths().Concat(EnginePaths()).Select(Reference)]
    );

    public static ImmutableArray<MetadataReference> With(ImmutableArray<Assembly> models) =>
        [.. Fixed.Value, .. models.Select(model => Reference(model.Location))];

    private static PortableExecutableReference Reference(string path) => MetadataReference.CreateFromFile(path);

    private static IEnumerable<string> EnginePaths() =>
        new[]
        {
            typeof(SafeHtml),
            typeof(SourceSpan),
            typeof(TemplatePage),
            typeof(IHtmlContent),
            typeof(ITagHelper),
            typeof(TagHelperExecutionContext),
        }
            .Select(type => type.Assembly.Location)
            .Distinct(StringComparer.Ordinal);

    private static IEnumerable<string> RuntimePaths()
    {
        var trusted = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator);
        var byName = trusted.ToLookup(path => Path.GetFileNameWithoutExtension(path), StringComparer.Ordinal);
        return OfTheRuntime.Select(name => byName[name].First());
    }
}
