using System.CommandLine;
using Configurator.Core.Logic;
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
        var format = Shared.Format();
        var command = new Command("prove", "Count configurations and check the health of the rules.")
        {
            machine,
            catalogue,
            format,
        };
        command.SetAction(parsed =>
            Run(parsed.GetValue(catalogue)!, parsed.GetValue(machine), parsed.GetValue(format), output, errors)
        );
        return command;
    }

    private static int Run(string folder, string? machine, OutputFormat format, TextWriter output, TextWriter errors)
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
        output.Write(format == OutputFormat.Json ? ProofJson.Of(shown) : string.Join('\n', shown.Select(ProofText.Of)));
        return shown.Exists(proof => proof.Health.IsEmpty) ? ExitCodes.Findings : ExitCodes.Fine;
    }
}
