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
/// <param name="store">Keeps them beyond that; null keeps none.</param>
internal sealed class TemplateCompiler(TemplateProject project, ImmutableArray<Assembly> models, ITemplateStore? store)
    : IRazorTemplateCompiler,
        ITemplateFactoryProvider
{
    private static readonly ConcurrentDictionary<string, Lazy<Compiled>> Known = new(StringComparer.Ordinal);

    private readonly Lazy<TemplateGenerator> _generator = new(() => new(project));
    private readonly TemplateCompilation _compilation = new(project, models);
    private readonly ConcurrentDictionary<string, Lazy<Compiled>> _byKey = new(StringComparer.Ordinal);

    public ICompilationService CompilationService => _compilation;

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

    /// <summary>What a compiled template depends on besides its text.</summary>
    private static readonly string Versions = string.Join(
        ';',
        new[]
        {
            typeof(TemplateCompiler),
            typeof(RazorLightTemplateAttribute),
            typeof(Microsoft.AspNetCore.Razor.Language.RazorEngine),
            typeof(Microsoft.CodeAnalysis.CSharp.CSharpCompilation),
            typeof(object),
        }.Select(type => type.Assembly.ManifestModule.ModuleVersionId)
    );

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
            var name = HashOf(key);
            var assembly = (Kept(name) ?? Emit(key, name)).Load();
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

    private CompiledTemplate? Kept(string name) => store?.Load(name) is { } bytes ? CompiledTemplate.Of(bytes) : null;

    private CompiledTemplate Emit(string key, string name)
    {
        var compiled = _compilation.Emit(_generator.Value.Generate(project.Item(key)));
        store?.Save(name, compiled.ToBytes());
        return compiled;
    }

    /// <summary>Over all that the page class depends on.</summary>
    private string HashOf(string key)
    {
        IEnumerable<string> parts =
        [
            Versions,
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
