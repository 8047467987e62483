using System.CommandLine;
using Configurator.Cli.Disk;
using Configurator.Core.Logic;
using Configurator.Core.Sources;
using Configurator.Planning;

namespace Configurator.Cli.Commands;

/// <summary><c>plan</c>: gives every fit its home port, and writes the port plan.</summary>
internal static class PlanCommand
{
    private const string FewestMoves = "fewest-moves";
    private const string FromScratch = "from-scratch";

    public static Command Make(TextWriter output, TextWriter errors)
    {
        var machine = new Argument<string?>("MACHINE")
        {
            Description = "A machine's id; all machines if left out",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var again = new Option<string?>("--again")
        {
            Description = "Plan anew and show what that would save and move; changes nothing without --write",
            HelpName = $"{FewestMoves}|{FromScratch}",
        };
        again.AcceptOnlyFromAmong(FewestMoves, FromScratch);
        var write = new Option<bool>("--write") { Description = "With --again: write the new plan" };
        var check = new Option<bool>("--check") { Description = "Plan nothing; verify the plans that there are" };
        var catalogue = Shared.Catalogue();
        var command = new Command("plan", "Give every fit its home port, the same in all orders.")
        {
            machine,
            again,
            write,
            check,
            catalogue,
        };
        command.SetAction(parsed =>
        {
            var folder = parsed.GetValue(catalogue)!;
            return parsed.GetValue(check)
                ? PlanCheck.Run(folder, parsed.GetValue(machine), output, errors)
                : Run(
                    folder,
                    parsed.GetValue(machine),
                    ModeOf(parsed.GetValue(again)),
                    parsed.GetValue(again) is null || parsed.GetValue(write),
                    output,
                    errors
                );
        });
        return command;
    }

    private static PlanMode ModeOf(string? again) =>
        again switch
        {
            FewestMoves => PlanMode.FewestMoves,
            FromScratch => PlanMode.FromScratch,
            _ => PlanMode.KeepHomes,
        };

    private static int Run(
        string folder,
        string? machine,
        PlanMode mode,
        bool isWritten,
        TextWriter output,
        TextWriter errors
    )
    {
        var reading = CatalogueReader.Read(folder);
        var (proofs, code) = ProvedMachines.Read(reading, output, errors);
        if (proofs is null || ProvedMachines.Find(proofs, machine, errors) is not { } shown)
        {
            return proofs is null ? code : ExitCodes.Usage;
        }

        var isComplete = true;
        foreach (var proof in shown.Where(proof => proof.Logic.Machine.IsWhole))
        {
            var before = WrittenPlan.Of(reading.Sources, proof.Logic.Machine.Id.Value);
            var plan = Planner.Plan(
                proof.Logic,
                FormerHomes.Carry(proof.Logic.Machine, PlanFile.Read(before?.Text ?? "")),
                mode,
                PlanEffort.Usual
            );
            output.Write(PlanReport.Of(plan));
            isComplete &= plan.Unplaced.IsEmpty;
            if (
                isWritten
                && Write(folder, proof.Logic, plan, before, output, errors) is var written and not ExitCodes.Fine
            )
            {
                return written;
            }
        }

        return isComplete && shown.All(proof => proof.Logic.Machine.IsWhole) ? ExitCodes.Fine : ExitCodes.Findings;
    }

    private static int Write(
        string folder,
        OrderLogic logic,
        PlanResult plan,
        SourceText? before,
        TextWriter output,
        TextWriter errors
    )
    {
        var text = PlanFile.Of(logic, plan, before?.Text);
        var path = WrittenPlan.PathOf(plan.Machine.Id.Value);
        if (text == before?.Text)
        {
            output.WriteLine($"  {path} stays as it is");
            return ExitCodes.Fine;
        }

        if (WrittenPlan.Write(folder, path, text) is { } problem)
        {
            return Report.Environment(problem, errors);
        }

        output.WriteLine($"  wrote {path}");
        return ExitCodes.Fine;
    }
}
