using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;
using RazorLight;
using RazorLight.Compilation;
using RazorLight.Generation;
using RazorLight.Razor;

namespace Configurator.Site.Rendering;

/// <summary>Templates by key to page classes, each text compiled once in the life of the process.</summary>
internal sealed class TemplateCompiler(TemplateProject project, ImmutableArray<Assembly> models)
    : IRazorTemplateCompiler,
        ITemplateFactoryProvider
{
    private static readonly ConcurrentDictionary<string, Lazy<Compiled>> Known = new(StringComparer.Ordinal);

    private readonly TemplateGenerator _generator = new(project);
    private readonly ConcurrentDictionary<string, Lazy<Compiled>> _byKey = new(StringComparer.Ordinal);

    public ICompilationService CompilationService { get; } = new TemplateCompilation(project, models);

    public ImmutableArray<Diagnostic> Check(string key) => Find(key).Errors;

    public Task<CompiledTemplateDescriptor> CompileAsync(string templateKey)
    {
        if (!project.Has(templateKey))
        {
            var place = project.PlaceOf(templateKey) ?? SourceSpan.FileStart(TemplateKey.PathOf(templateKey));
            throw new TemplateFailure(RenderingDiagnostics.Missing(templateKey, place));
        }

        var compiled = Find(templateKey);
        return compiled.PageType is { } type
            ? Task.FromResult(
                new CompiledTemplateDescriptor
                {
                    TemplateKey = templateKey,
                    TemplateAttribute = new RazorLightTemplateAttribute(templateKey, type),
                }
            )
            : throw new TemplateFailure(compiled.Errors);
    }

    /// <summary>A page instance makes one page: it keeps what its sections and layout said.</summary>
    public Func<ITemplatePage> CreateFactory(CompiledTemplateDescriptor templateDescriptor) =>
        () =>
        {
            var page = (ITemplatePage)Activator.CreateInstance(templateDescriptor.Type)!;
            page.Key = templateDescriptor.TemplateKey;
            return page;
        };

    private Compiled Find(string key) =>
        _byKey.GetOrAdd(key, _ => Known.GetOrAdd(HashOf(key), _ => new(() => Compile(key)))).Value;

    private Compiled Compile(string key)
    {
        ImmutableArray<SourceText> texts = [.. project.Imports(key), project.Text(TemplateKey.PathOf(key))!];
        ImmutableArray<Diagnostic> refused = [.. texts.SelectMany(TemplateRules.Check)];
        if (refused.Length > 0)
        {
            return new(null, refused);
        }

        try
        {
            var assembly = CompilationService.CompileAndEmit(_generator.Generate(project.Item(key)));
            return new(assembly.GetCustomAttribute<RazorLightTemplateAttribute>()!.TemplateType, []);
        }
        catch (TemplateGenerationException syntax)
        {
            return new(null, CompileErrors.Of(key, syntax.Diagnostics));
        }
        catch (TemplateFailure failure)
        {
            return new(null, failure.Diagnostics);
        }
    }

    /// <summary>
    /// Over all that the page class depends on. The engine's and compiler's versions are those of the process.
    /// </summary>
    private string HashOf(string key)
    {
        IEnumerable<string> parts =
        [
            key,
            project.Item(key).Text,
            .. project.Imports(key).SelectMany(import => new[] { import.Path, import.Text }),
            .. models.Select(model => model.ManifestModule.ModuleVersionId.ToString()),
        ];
        var text = string.Concat(parts.Select(part => FormattableString.Invariant($"{part.Length}:{part}")));
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
    }

    private sealed record Compiled(Type? PageType, ImmutableArray<Diagnostic> Errors);
}
