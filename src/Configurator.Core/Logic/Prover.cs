using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;

namespace Configurator.Core.Logic;

/// <summary>A catalogue whose published configurations keep all rules; those that do not are reported and left out.</summary>
/// <param name="Logic">The compiled rules of each machine.</param>
public sealed record ProvedCatalogue(
    Catalogue Catalogue, ImmutableSortedDictionary<MachineId, MachineProof> Logic, ImmutableArray<ProvedConfiguration> Configurations);

/// <summary>The compiled rules of a machine, and what is odd about them.</summary>
public sealed record MachineProof(OrderLogic Logic, RuleHealth Health);

/// <summary>A published configuration, completed by what comes with it.</summary>
public sealed record ProvedConfiguration(PublishedConfiguration Published, Machine Machine, Configuration Configuration);

/// <summary>Third stage: which orders go together, and why not.</summary>
public static class Prover
{
    public static Outcome<ProvedCatalogue> Prove(Catalogue catalogue)
    {
        var logic = catalogue.Machines.Values.AsParallel().AsOrdered().Select(Prove).ToImmutableSortedDictionary(proof => proof.Logic.Machine.Id.Value, proof => proof);
        var report = new List<Diagnostic>(logic.Values
            .Where(proof => proof.Logic.Machine.FaultyOptions.IsEmpty)
            .SelectMany(proof => HealthDiagnostics.Of(proof.Logic.Machine, proof.Health)));
        var proved = catalogue.Configurations
            .Where(published => !logic[published.Machine].Health.IsEmpty)
            .Select(published => Prove(logic[published.Machine].Logic, published, report));
        return new(new(catalogue, logic, [.. proved.OfType<ProvedConfiguration>()]), [.. report]);
    }

    private static MachineProof Prove(Machine machine)
    {
        var logic = OrderLogic.Of(machine);
        return new(logic, RuleHealth.Of(logic));
    }

    private static ProvedConfiguration? Prove(OrderLogic logic, PublishedConfiguration published, List<Diagnostic> report)
    {
        var configuration = Completion.Complete(logic.Machine, published.Order);
        var broken = RuleCheck.Broken(logic.Machine, configuration);
        if (broken.IsEmpty)
        {
            return new(published, logic.Machine, configuration);
        }

        var nearest = logic.Nearest(PartialOrder.Of(published.Order), isComplete: true).FirstOrDefault();
        report.AddRange(broken.DistinctBy(Mistake).Select(rule => LogicDiagnostics.Broken(published, rule, nearest)));
        return null;
    }

    /// <summary>Two options that rule each other out break two rules by one mistake.</summary>
    private static object Mistake(BrokenRule broken) =>
        broken.Kind == RuleKind.NotWith ? string.Join('/', broken.Concerned.Order()) : broken;
}
