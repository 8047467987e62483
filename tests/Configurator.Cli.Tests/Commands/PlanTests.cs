using Configurator.Cli.Tests.Disk;
using Configurator.Cli.Tests.Support;

namespace Configurator.Cli.Tests.Commands;

/// <summary><c>plan</c> on a copy of the demonstration catalogue.</summary>
public sealed class PlanTests : IDisposable
{
    private const string Plan = "machines/spout-two/port-plan.yaml";

    private const string SmallPlan = "machines/tray-one/port-plan.yaml";

    private readonly TempFolder _folder = new();

    public PlanTests() => Repository.CopyDemo(_folder.Root);

    public void Dispose() => _folder.Dispose();

    private string Text
    {
        get => File.ReadAllText(_folder[Plan]);
        set => File.WriteAllText(_folder[Plan], value);
    }

    [Fact]
    public void Planning_what_is_planned_already_leaves_every_file_as_it_is()
    {
        var before = Text;
        var ran = Run();

        Assert.Equal(ExitCodes.Fine, ran.ExitCode);
        Assert.Matches(@"^spout-two\n  \d+ fits at home, 0 of them new, 0 moved\n", ran.Output);
        Assert.Contains(
            "  0 fits without a port (proved: fewer is impossible with these homes kept)\n", ran.Output, StringComparison.Ordinal);
        Assert.EndsWith($"  {Plan} stays as it is\n", ran.Output, StringComparison.Ordinal);
        Assert.Equal(before, Text);
    }

    [Fact]
    public void A_home_that_is_missing_is_found_and_written()
    {
        var before = Text;
        Text = string.Concat(
            before.Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(line => !line.Contains("bin-eye", StringComparison.Ordinal)).Select(line => line + '\n')
        );
        var ran = Run();

        Assert.Equal(ExitCodes.Fine, ran.ExitCode);
        Assert.Matches(@"  new: bin-full/bin-eye/1 at [a-z]+:\d\n", ran.Output);
        Assert.EndsWith($"  wrote {Plan}\n", ran.Output, StringComparison.Ordinal);
        Assert.Equal(before.Split('\n').Length, Text.Split('\n').Length);
        Assert.Contains("\n  bin-full/bin-eye/1: ", Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("fewest-moves")]
    [InlineData("from-scratch")]
    public void Planning_again_shows_what_would_move_and_writes_nothing(string how)
    {
        using var small = Small();
        var before = File.ReadAllText(small[SmallPlan]);
        var ran = Tool.Run("plan", "--again", how, "--catalogue", small.Root);

        Assert.Equal(ExitCodes.Fine, ran.ExitCode);
        Assert.DoesNotContain(SmallPlan, ran.Output, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(small[SmallPlan]));
    }

    [Fact]
    public void What_is_planned_again_is_written_when_asked_for_and_then_holds()
    {
        using var small = Small();
        Assert.Equal(
            ExitCodes.Fine,
            Tool.Run("plan", "--again", "from-scratch", "--write", "--catalogue", small.Root).ExitCode
        );

        Assert.Equal(ExitCodes.Fine, Tool.Run("plan", "--check", "--catalogue", small.Root).ExitCode);
        Assert.EndsWith(
            $"  {SmallPlan} stays as it is\n",
            Tool.Run("plan", "--catalogue", small.Root).Output,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Checking_says_what_holds_for_every_configuration()
    {
        var ran = Run("--check");

        Assert.Equal(ExitCodes.Fine, ran.ExitCode);
        Assert.StartsWith("spout-two: holds for every configuration\n", ran.Output, StringComparison.Ordinal);
        Assert.Matches(@"  extension `[a-z]+` is fitted in \d+(\.\d)? % of orders by the declared mix, in \d+(\.\d)? % of configurations\n", ran.Output);
    }

    [Fact]
    public void A_home_that_some_order_cannot_have_fails_the_check()
    {
        Text = Text.Replace("bin-full/bin-eye/1: ", "bin-full/bin-eye/1: nowhere:1 # ", StringComparison.Ordinal);

        Assert.Equal(ExitCodes.Findings, Run("--check").ExitCode);
    }

    [Theory]
    [InlineData("there is no machine `spout-too`", "plan", "spout-too")]
    [InlineData("there is no machine `spout-too`", "plan", "spout-too", "--check")]
    [InlineData("sometimes", "plan", "--again", "sometimes")]
    public void A_wrong_call_is_told_what_is_wrong_and_exits_with_2(string said, params string[] arguments)
    {
        var ran = Tool.Run([.. arguments, "--catalogue", _folder.Root]);

        Assert.Equal(ExitCodes.Usage, ran.ExitCode);
        Assert.Contains(said, ran.Errors, StringComparison.Ordinal);
        Assert.Empty(ran.Output);
    }

    private static TempFolder Small()
    {
        var small = new TempFolder();
        Repository.Copy(Path.Combine(Repository.Cases, "base", "input"), small.Root);
        return small;
    }

    private Ran Run(params string[] arguments) =>
        Tool.Run(["plan", "spout-two", "--catalogue", _folder.Root, .. arguments]);
}
