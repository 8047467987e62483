using System.Collections.Immutable;
using Configurator.Cli.Disk;
using Configurator.Core.Binding;
using Configurator.Core.Diagnostics;
using Configurator.Core.Loading;
using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Cli.Commands;

/// <summary>Reads a catalogue for questions about orders. Faulty definitions are reported; sound machines still
/// answer.</summary>
internal static class ProvedMachines
{
    /// <summary>Null, with an exit code, where there is no machine to ask about.</summary>
    public static (ImmutableSortedDictionary<MachineId, MachineProof>? Proofs, int ExitCode) Read(
        string folder,
        TextWriter output,
        TextWriter errors
    ) => Read(CatalogueReader.Read(folder), output, errors);

    public static (ImmutableSortedDictionary<MachineId, MachineProof>? Proofs, int ExitCode) Read(
        CatalogueReading reading,
        TextWriter output,
        TextWriter errors
    )
    {
        if (reading.Problem is { } problem)
        {
            return (null, Report.Environment(problem, errors));
        }

        var proved = Loader.Load(reading.Sources).Then(Binder.Bind).Then(Prover.Prove);
        if (proved.Value.Logic.IsEmpty)
        {
            Report.Print(proved.Diagnostics, reading.Sources, OutputFormat.Text, [new("machines", 0)], "read", output);
            return (null, ExitCodes.Findings);
        }

        if (proved.HasErrors)
        {
            errors.WriteLine(
                $"configurator: {proved.Diagnostics.Count(diagnostic => diagnostic.Rule.Severity == Severity.Error)} errors in the definitions, answers leave out what they concern; see `configurator check`"
            );
        }

        return (proved.Value.Logic, ExitCodes.Fine);
    }

    /// <summary>That machine, or all of them where none is named; null, with a word to the user, where there is no such
    /// machine.</summary>
    public static ImmutableArray<MachineProof>? Find(
        ImmutableSortedDictionary<MachineId, MachineProof> proofs,
        string? machine,
        TextWriter errors
    )
    {
        if (machine is null)
        {
            return [.. proofs.Values];
        }

        if (proofs.TryGetValue(new(machine), out var proof))
        {
            return [proof];
        }

        errors.WriteLine($"configurator: there is no machine `{machine}`");
        errors.WriteLine($"  to fix: use one of {string.Join(", ", proofs.Keys)}");
        return null;
    }
}
