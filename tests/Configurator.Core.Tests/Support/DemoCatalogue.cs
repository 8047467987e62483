using Configurator.Core.Binding;
using Configurator.Core.Documents;
using Configurator.Core.Engineering;
using Configurator.Core.Loading;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Tests.Support;

/// <summary>The catalogue that the repository comes with.</summary>
internal static class DemoCatalogue
{
    private static readonly string[] Folders = ["machines", "options"];

    private static readonly Lazy<Catalogue> Bound = new(Read);

    public static IEnumerable<Machine> Machines => Bound.Value.Machines.Values;

    private static readonly Lazy<SiteDocuments> Composed = new(() =>
        Documenter.Compose(Engineer.Compute(Prover.Prove(Bound.Value)).Value, "").Value);

    /// <summary>Every document of its site.</summary>
    public static SiteDocuments Documents => Composed.Value;

    public static EngineeredCatalogue Engineered => Documents.Engineered;

    public static Catalogue Whole => Bound.Value;

    private static Catalogue Read()
    {
        var files = Folders
            .SelectMany(folder =>
                Directory.EnumerateFiles(Path.Combine(Repository.Folder, folder), "*", SearchOption.AllDirectories)
            )
            .Append(Path.Combine(Repository.Folder, "site-templates", "site.yaml"))
            .Select(file => new SourceFile(
                Path.GetRelativePath(Repository.Folder, file).Replace('\\', '/'),
                File.ReadAllBytes(file)
            ));
        var bound = Loader.Load(SourceSet.Of(files)).Then(Binder.Bind);
        Assert.False(bound.HasErrors, "the catalogue of the repository has errors");
        return bound.Value;
    }
}
