using System.Globalization;
using System.Text;
using Configurator.Cli;
using Configurator.Cli.Commands;

CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
using var output = new StreamWriter(Console.OpenStandardOutput(), new UTF8Encoding(false)) { NewLine = "\n" };
using var errors = new StreamWriter(Console.OpenStandardError(), new UTF8Encoding(false))
{
    NewLine = "\n",
    AutoFlush = true,
};
try
{
    return CommandLine.Run(args, output, errors);
}
#pragma warning disable CA1031 // The last place where anything can be caught: a bug of ours gets an exit code of its own.
catch (Exception bug)
#pragma warning restore CA1031
{
    output.Flush();
    errors.WriteLine($"configurator: this is a bug of ours, not of your definitions: {bug}");
    return ExitCodes.OurBug;
}
