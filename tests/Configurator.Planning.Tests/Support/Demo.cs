using System.Collections.Immutable;
using System.Text;
using Configurator.Core.Binding;
using Configurator.Core.Engineering;
using Configurator.Core.Loading;
using Configurator.Core.Logic;
using Configurator.Core.Sources;
using Configurator.Core.Tests.Support;

namespace Configurator.Planning.Tests.Support;

/// <summary>The catalogue that the repository comes with, as it is or with files laid over it.</summary>
internal sealed class Demo
{
    private static readonly ImmutableArray<string> Folders = ["machines", "options"];

    private readonly ImmutableSortedDictionary<string, byte[]> _files;
    private readonly Lazy<ProvedCatalogue> _proved;

    private Demo(ImmutableSortedDictionary<string, byte[]> files)
    {
        _files = files;
        _proved = new(Prove);
    }

    public static Demo Whole { get; } = new(Read());

    public static ImmutableArray<string> MachineIds { get; } = ["pantry-eight", "pantry-four", "spout-two"];

    public static string PlanPath(string machine) => $"machines/{machine}/port-plan.yaml";

    public Demo With(string path, string text) => new(_files.SetItem(path, Encoding.UTF8.GetBytes(text)));

    public string TextOf(string path) => Encoding.UTF8.GetString(_files[path]);

    /// <summary>The rules of a machine, compiled anew: they are not for several threads.</summary>
    public OrderLogic Logic(string machine) => OrderLogic.Of(_proved.Value.Catalogue.Machines[new(machine)]);

    /// <summary>Everything that is said of every configuration of each machine.</summary>
    public EngineeredCatalogue Engineered() =>
        Engineer.Compute(Loader.Load(Sources).Then(Binder.Bind).Then(Prover.Prove)).Value;

    /// <summary>Plans a machine from what its plan says now, as <c>plan</c> does.</summary>
    /// <param name="further">Lines that its plan has besides.</param>
    public PlanResult Plan(string machine, PlanMode mode = PlanMode.KeepHomes, string further = "")
    {
        var logic = Logic(machine);
        var written = PlanFile.Read(TextOf(PlanPath(machine)) + further);
        return Planner.Plan(logic, FormerHomes.Carry(logic.Machine, written), mode, PlanEffort.Usual);
    }

    /// <summary>The file that such a plan gives.</summary>
    public string Written(PlanResult plan) =>
        PlanFile.Of(Logic(plan.Machine.Id.Value.Value), plan, TextOf(PlanPath(plan.Machine.Id.Value.Value)));

    private SourceSet Sources => SourceSet.Of(_files.Select(file => new SourceFile(file.Key, file.Value)));

    private ProvedCatalogue Prove()
    {
        var proved = Loader.Load(Sources).Then(Binder.Bind).Then(Prover.Prove);
        Assert.False(proved.HasErrors, proved.Diagnostics.FirstOrDefault()?.Message);
        return proved.Value;
    }

    private static ImmutableSortedDictionary<string, byte[]> Read() =>
        Folders
            .SelectMany(folder =>
                Directory.EnumerateFiles(Path.Combine(Repository.Folder, folder), "*", SearchOption.AllDirectories)
            )
            .ToImmutableSortedDictionary(
                file => Path.GetRelativePath(Repository.Folder, file).Replace('\\', '/'),
                File.ReadAllBytes,
                StringComparer.Ordinal
            );
}
