using Microsoft.AspNetCore.Razor.Language;
using Microsoft.Extensions.DependencyInjection;
using RazorLight.Extensions;
using RazorLight.Generation;
using RazorLight.Razor;

namespace Configurator.Site.Rendering;

/// <summary>Razor text to C# text.</summary>
internal sealed class TemplateGenerator(TemplateProject project) : RazorSourceGenerator(Engine, project)
{
    /// <summary>Before the catalogue's own imports. Without an <c>@model</c> a template can format nothing.</summary>
    private static readonly RazorSourceDocument BuiltIn = RazorSourceDocument.Create(
        """
        @using System
        @using System.Collections.Generic
        @using System.Linq
        @using System.Threading.Tasks
        @using Configurator.Site.Rendering
        @inherits Configurator.Site.Rendering.SitePage<TModel>
        @model object

        """,
        new RazorSourceDocumentProperties()
    );

    private static readonly Lock OneAtATime = new();

    private static RazorEngine Engine => SharedEngine.Value;

    private static readonly Lazy<RazorEngine> SharedEngine = new(() =>
    {
        var services = new ServiceCollection();
        services.AddRazorLight();
        return (RazorEngine)services.First(it => it.ServiceType == typeof(RazorEngine)).ImplementationInstance!;
    });

    /// <summary>
    /// The engine takes version 2.0 of the language where it is not told: no markup in local functions.
    /// </summary>
    private static readonly Lazy<RazorParserOptions> Syntax = new(() =>
        RazorParserOptions.Create(options =>
        {
            foreach (
                var feature in Engine.Features.OfType<IConfigureRazorParserOptionsFeature>().OrderBy(it => it.Order)
            )
            {
                feature.Configure(options);
            }
        })
    );

    /// <summary>The default here, unlike the engine's, maps columns and not only lines back to the template.</summary>
    private static readonly RazorCodeGenerationOptions ExactPlaces = RazorCodeGenerationOptions.CreateDefault();

    public IGeneratedRazorTemplate Generate(TemplateItem template)
    {
        lock (OneAtATime)
        {
            return GenerateCodeAsync(template).GetAwaiter().GetResult();
        }
    }

    public override Task<RazorCodeDocument> CreateCodeDocumentAsync(RazorLightProjectItem projectItem)
    {
        var imports = project.Imports(projectItem.Key).Select(import => Document(import.Path, import.Text));
        var document = RazorCodeDocument.Create(
            Document(TemplateKey.PathOf(projectItem.Key), ((TemplateItem)projectItem).Text),
            [BuiltIn, .. imports]
        );
        document.SetParserOptions(Syntax.Value);
        document.SetCodeGenerationOptions(ExactPlaces);
        return Task.FromResult(document);
    }

    private static RazorSourceDocument Document(string path, string text) =>
        RazorSourceDocument.Create(text, new RazorSourceDocumentProperties(path, path));
}
