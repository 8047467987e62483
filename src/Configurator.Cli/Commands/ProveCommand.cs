using System.CommandLine;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Engineering.Loads.Printing;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Covering;
using Configurator.Core.Logic.Printing;

namespace Configurator.Cli.Commands;

/// <summary><c>prove</c>: how many configurations each machine has, and whether its rules are in good health.</summary>
internal static class ProveCommand
{
    public static Command Make(TextWriter output, TextWriter errors)
    {
        var machine = new Argument<string?>("MACHINE")
        {
            Description = "A machine's id; all machines if left out",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var catalogue = Shared.Catalogue();
        var weigh = new Option<string?>("--weigh")
        {
            Description = "Say all of one load: heaviest, lightest, margins of options, histogram",
            HelpName = "LOAD",
        };
        var format = Shared.Format();
        var command = new Command("prove", "Count configurations and check the health of the rules.")
        {
            machine,
            weigh,
            catalogue,
            format,
        };
        command.SetAction(parsed =>
            Run(
                parsed.GetValue(catalogue)!,
                parsed.GetValue(machine),
                parsed.GetValue(weigh),
                parsed.GetValue(format),
                output,
                errors
            )
        );
        return command;
    }

    private static int Run(
        string folder,
        string? machine,
        string? weigh,
        OutputFormat format,
        TextWriter output,
        TextWriter errors
    )
    {
        var (proofs, code) = ProvedMachines.Read(folder, output, errors);
        if (proofs is null)
        {
            return code;
        }

        if (machine is not null && !proofs.ContainsKey(new(machine)))
        {
            errors.WriteLine($"configurator: there is no machine `{machine}`");
            errors.WriteLine($"  to fix: use one of {string.Join(", ", proofs.Keys)}");
            return ExitCodes.Usage;
        }

        List<MachineProof> shown =
        [
            .. proofs.Values.Where(proof => machine is null || proof.Logic.Machine.Id.Value.Value == machine),
        ];
        if (weigh is not null)
        {
            return WeighLoad.Run(shown, weigh, format, output, errors);
        }

        output.Write(
            format == OutputFormat.Json
                ? ProofJson.Of(shown, (json, proof) =>
                    LoadJson.Write(json, WorstCases.Of(proof.Logic), Covering(proof))
                )
                : string.Join('\n', shown.AsParallel().AsOrdered().Select(Say))
        );
        return shown.Exists(proof => proof.Health.IsEmpty) ? ExitCodes.Findings : ExitCodes.Fine;
    }

    private static string Say(MachineProof proof) =>
        proof.Health.IsEmpty
            ? ProofText.Of(proof)
            : ProofText.Of(proof) + WorstCaseText.Of(WorstCases.Of(proof.Logic), Covering(proof));

    private static CoveringSet? Covering(MachineProof proof) => CoveringSet.Of(proof.Logic, CoveringSet.QuickWork);
}
