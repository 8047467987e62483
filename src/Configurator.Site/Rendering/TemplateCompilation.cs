using System.Collections.Immutable;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Emit;
using Microsoft.CodeAnalysis.Text;
using RazorLight.Compilation;
using RazorLight.Generation;

namespace Configurator.Site.Rendering;

/// <summary>C# text of one template to an assembly in memory.</summary>
internal sealed class TemplateCompilation(TemplateProject project, ImmutableArray<Assembly> models)
    : ICompilationService
{
    private static readonly CSharpCompilationOptions Options = new(
        OutputKind.DynamicallyLinkedLibrary,
        optimizationLevel: OptimizationLevel.Release,
        deterministic: true
    );

    private readonly Lazy<ImmutableArray<MetadataReference>> _references = new(() => TemplateReferences.With(models));

    public CSharpCompilationOptions CSharpCompilationOptions => Options;

    public EmitOptions EmitOptions { get; } = new(debugInformationFormat: DebugInformationFormat.PortablePdb);

    public CSharpParseOptions ParseOptions { get; } = new(LanguageVersion.Latest);

    public Assembly OperatingAssembly => typeof(TemplateCompilation).Assembly;

    public Assembly CompileAndEmit(IGeneratedRazorTemplate razorTemplate) => Emit(razorTemplate).Load();

    /// <exception cref="TemplateFailure">The template's C# has errors.</exception>
    public CompiledTemplate Emit(IGeneratedRazorTemplate razorTemplate)
    {
        var code = SourceText.From(razorTemplate.GeneratedCode, Encoding.UTF8);
        var compilation = CSharpCompilation.Create(
            NameOf(razorTemplate),
            [CSharpSyntaxTree.ParseText(code, ParseOptions, TemplateKey.PathOf(razorTemplate.TemplateKey) + ".g.cs")],
            _references.Value,
            Options
        );
        using var image = new MemoryStream();
        using var symbols = new MemoryStream();
        var result = compilation.Emit(image, symbols, options: EmitOptions);
        return result.Success
            ? new CompiledTemplate(image.ToArray(), symbols.ToArray())
            : throw new TemplateFailure(CompileErrors.Of(razorTemplate, result.Diagnostics, project));
    }

    private static string NameOf(IGeneratedRazorTemplate template)
    {
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes(template.TemplateKey + '\n' + template.GeneratedCode));
        return "Template-" + Convert.ToHexStringLower(hash.AsSpan(0, 8));
    }
}
