using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;

namespace Configurator.Core.Logic;

/// <summary>A catalogue whose published configurations keep all rules; those that do not are reported and left
/// out.</summary>
/// <param name="Logic">The compiled rules of each machine.</param>
public sealed record ProvedCatalogue(
    Catalogue Catalogue,
    ImmutableSortedDictionary<MachineId, MachineProof> Logic,
    ImmutableArray<ProvedConfiguration> Configurations
);

/// <summary>The compiled rules of a machine, and what is odd about them.</summary>
public sealed record MachineProof(OrderLogic Logic, RuleHealth Health);

/// <summary>A published configuration, completed by what comes with it.</summary>
public sealed record ProvedConfiguration(
    PublishedConfiguration Published,
    Machine Machine,
    Configuration Configuration
);

/// <summary>Third stage: which orders go together, and why not.</summary>
public static class Prover
{
    /// <summary>Of a machine's search, for all that is asked of it; a few seconds at most.</summary>
    private const long WorkMax = 60_000_000;

    public static Outcome<ProvedCatalogue> Prove(Catalogue catalogue)
    {
        var attempts = catalogue
            .Machines.Values.AsParallel()
            .AsOrdered()
            .Select(machine => (Machine: machine, Proof: Prove(machine)))
            .ToList();
        var logic = attempts
            .Select(attempt => attempt.Proof)
            .OfType<MachineProof>()
            .ToImmutableSortedDictionary(proof => proof.Logic.Machine.Id.Value, proof => proof);
        var report = new List<Diagnostic>(logic.Values.SelectMany(OfRules));
        report.AddRange(
            attempts
                .Where(attempt => attempt.Proof is null)
                .Select(attempt => LogicDiagnostics.IsNotProved(attempt.Machine))
        );
        var proved = catalogue
            .Configurations.Where(published =>
                logic.TryGetValue(published.Machine, out var proof) && !proof.Health.IsEmpty
            )
            .Select(published => Prove(logic[published.Machine], published, report));
        return new(new(catalogue, logic, [.. proved.OfType<ProvedConfiguration>()]), [.. report]);
    }

    /// <summary>What is odd about the rules; where options are faulty or not offered, that and nothing that may follow
    /// from it.</summary>
    private static IEnumerable<Diagnostic> OfRules(MachineProof proof)
    {
        var machine = proof.Logic.Machine;
        ImmutableArray<Diagnostic> notOffered =
        [
            .. machine
                .Options.Values.SelectMany(option => option.ComesWith.Select(link => (Option: option, Link: link)))
                .Where(pair =>
                    !machine.Options.ContainsKey(pair.Link.Other.Value)
                    && !machine.FaultyOptions.Contains(pair.Link.Other.Value)
                )
                .Select(pair => LogicDiagnostics.NotOffered(machine, pair.Option, pair.Link)),
        ];
        return !machine.FaultyOptions.IsEmpty || notOffered.Length > 0
            ? notOffered
            : HealthDiagnostics.Of(machine, proof.Health);
    }

    /// <summary>Null where its rules cannot be proved with a bounded amount of work.</summary>
    private static MachineProof? Prove(Machine machine)
    {
        try
        {
            var logic = OrderLogic.Of(machine);
            logic.Search.Solver.WorkMax = WorkMax;
            return new(logic, RuleHealth.Of(logic));
        }
        catch (TooEntangledException)
        {
            return null;
        }
    }

    /// <summary>The nearest order that works; null where there is none, or finding it takes too long.</summary>
    private static Repair? NearestTo(PublishedConfiguration published, OrderLogic logic)
    {
        try
        {
            logic.Search.Solver.WorkMax = logic.Search.Solver.Work + WorkMax;
            return logic.Nearest(PartialOrder.Of(published.Order), isComplete: true).FirstOrDefault();
        }
        catch (TooEntangledException)
        {
            return null;
        }
    }

    private static ProvedConfiguration? Prove(
        MachineProof proof,
        PublishedConfiguration published,
        List<Diagnostic> report
    )
    {
        var logic = proof.Logic;
        var configuration = Completion.Complete(logic.Machine, published.Order);
        var broken = RuleCheck.Broken(logic.Machine, configuration);
        if (broken.IsEmpty)
        {
            return new(published, logic.Machine, configuration);
        }

        if (proof.Health.NeverOrderable.Any(never => configuration.QuantityOf(never.Option) > 0))
        {
            return null;
        }

        var nearest = NearestTo(published, logic);
        report.AddRange(
            broken
                .Where(rule => rule.Kind != RuleKind.ComesWith)
                .DistinctBy(Mistake)
                .Select(rule => LogicDiagnostics.Broken(published, rule, nearest))
        );
        return null;
    }

    /// <summary>Two options that rule each other out break two rules by one mistake.</summary>
    private static object Mistake(BrokenRule broken) =>
        broken.Kind == RuleKind.NotWith ? string.Join('/', broken.Concerned.Order()) : broken;
}
