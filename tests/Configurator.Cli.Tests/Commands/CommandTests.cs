using System.Text.Json;
using Configurator.Cli.Tests.Support;

namespace Configurator.Cli.Tests.Commands;

public sealed class CommandTests
{
    [Fact]
    public void The_demonstration_catalogue_checks_clean_and_says_what_was_checked()
    {
        var ran = Tool.Run("check");

        Assert.Equal(ExitCodes.Fine, ran.ExitCode);
        Assert.Matches(@"^checked 3 machines, \d+ options, \d+ devices, \d+ configurations, \d+ recipes, \d+ findings: 0 errors, 0 warnings\n$", ran.Output);
        Assert.Empty(ran.Errors);
    }

    [Fact]
    public void Counts_and_diagnostics_come_as_json_for_programs()
    {
        var ran = Tool.Run("check", "--format", "json");

        using var json = JsonDocument.Parse(ran.Output);
        Assert.Equal(3, json.RootElement.GetProperty("counts").GetProperty("machines").GetInt32());
        Assert.Equal(0, json.RootElement.GetProperty("diagnostics").GetArrayLength());
    }

    [Fact]
    public void Help_starts_with_examples()
    {
        var ran = Tool.Run("--help");

        Assert.Equal(ExitCodes.Fine, ran.ExitCode);
        Assert.StartsWith("Examples:\n  configurator check", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("publish", "configurator publish --to _site")]
    [InlineData("check", "configurator check --catalogue")]
    [InlineData("about", "configurator about CFG")]
    public void Every_command_has_examples_of_its_own(string command, string example) =>
        Assert.Contains(example, Tool.Run(command, "--help").Output, StringComparison.Ordinal);

    [Fact]
    public void The_version_is_one_line()
    {
        var ran = Tool.Run("--version");

        Assert.Equal(ExitCodes.Fine, ran.ExitCode);
        Assert.Matches(@"^\d+\.\d+\.\d+\n$", ran.Output);
    }

    [Theory]
    [InlineData("did you mean `check` instead of `chek`?", "chek")]
    [InlineData("`xml` is not a format; use text, json or github", "check", "--format", "xml")]
    [InlineData("Option '--to' is required.", "publish")]
    [InlineData("`yesterday` is not a date such as 2026-10-02", "publish", "--to", "x", "--date", "yesterday")]
    [InlineData("there is no code `CFG9999`", "about", "CFG9999")]
    [InlineData("there is no machine `pantry-for`", "order", "pantry-for")]
    [InlineData("there is no option on `spout-two` `toping`", "order", "spout-two", "toping")]
    public void A_wrong_call_is_told_what_is_wrong_and_exits_with_2(string said, params string[] arguments)
    {
        var ran = Tool.Run(arguments);

        Assert.Equal(ExitCodes.Usage, ran.ExitCode);
        Assert.Contains(said, ran.Errors, StringComparison.Ordinal);
        Assert.Empty(ran.Output);
    }

    [Fact]
    public void An_option_of_other_machines_is_said_to_be_theirs()
    {
        var ran = Tool.Run("order", "spout-two", "lid-presence");

        Assert.Equal(ExitCodes.Usage, ran.ExitCode);
        Assert.Equal(
            "configurator: `lid-presence` is not offered on Spout Two (it is on Pantry Four and Pantry Eight)\n"
                + "  to fix: did you mean `cap-presence`?\n",
            ran.Errors);
    }

    [Fact]
    public void A_number_that_cannot_be_ordered_is_said_with_those_that_can()
    {
        var ran = Tool.Run("order", "pantry-four", "doser-heads=6");

        Assert.Equal(ExitCodes.Findings, ran.ExitCode);
        Assert.Contains("“Separate dosing heads” can be taken 1 to 4 times; 6 are ordered", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_catalogue_that_is_not_there_exits_with_3_and_says_how_to_go_on()
    {
        var ran = Tool.Run("check", "--catalogue", "no-such-folder");

        Assert.Equal(ExitCodes.Environment, ran.ExitCode);
        Assert.Contains("no-such-folder", ran.Errors, StringComparison.Ordinal);
        Assert.Contains("to fix:", ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void About_explains_a_code_however_it_is_typed()
    {
        var ran = Tool.Run("about", "cfg3002");

        Assert.Equal(ExitCodes.Fine, ran.ExitCode);
        Assert.StartsWith("# CFG3002: Options that cannot be ordered together\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains("## How to fix", ran.Output, StringComparison.Ordinal);
    }
}
