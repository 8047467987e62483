using System.CommandLine;
using System.Globalization;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Printing;
using Configurator.Core.Model;

namespace Configurator.Cli.Commands;

/// <summary><c>order</c>: does an order work, what comes with it, what is left; and if not, why not and what
/// would.</summary>
internal static class OrderCommand
{
    public static Command Make(TextWriter output, TextWriter errors)
    {
        var machine = new Argument<string>("MACHINE") { Description = "A machine's id" };
        var options = new Argument<string[]>("OPTION[=N]")
        {
            Description = "Options ordered, each with how many of it",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var catalogue = Shared.Catalogue();
        var format = Shared.Format();
        var command = new Command("order", "Try an order: what it brings, what it leaves, or why it cannot be.")
        {
            machine,
            options,
            catalogue,
            format,
        };
        command.SetAction(parsed =>
            Run(
                parsed.GetValue(catalogue)!,
                parsed.GetValue(machine)!,
                parsed.GetValue(options) ?? [],
                parsed.GetValue(format),
                output,
                errors
            )
        );
        return command;
    }

    private static int Run(
        string folder,
        string machine,
        string[] options,
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

        if (!proofs.TryGetValue(new(machine), out var proof))
        {
            return UnknownName.Say(
                $"there is no machine `{machine}`",
                machine,
                proofs.Keys.Select(id => id.Value),
                errors
            );
        }

        var order = PartialOrder.Empty;
        foreach (var text in options)
        {
            if (Pick.Read(text) is not { } pick)
            {
                errors.WriteLine($"configurator: `{text}` is not OPTION or OPTION=N");
                return ExitCodes.Usage;
            }

            if (!proof.Logic.Machine.Options.ContainsKey(pick.Option))
            {
                return UnknownName.SayOfOption(pick.Option, proof.Logic.Machine, proofs, errors);
            }

            order = order.With(pick.Option, pick.Range);
        }

        var answer = OrderAnswer.Of(proof.Logic, order);
        output.Write(
            format == OutputFormat.Json ? OrderJson.Of(proof.Logic, answer) : OrderText.Of(proof.Logic, answer)
        );
        return answer.IsPossible ? ExitCodes.Fine : ExitCodes.Findings;
    }

    private sealed record Pick(OptionId Option, NumberRange Range)
    {
        public static Pick? Read(string text) =>
            text.Split('=') switch
            {
                [var option] => new(new(option), NumberRange.AtLeastOne),
                [var option, var number]
                    when int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var count) => new(
                    new(option),
                    new(count, count)
                ),
                _ => null,
            };
    }
}
