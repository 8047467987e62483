using System.Numerics;
using System.Text.Json;
using Configurator.Cli.Tests.Support;

namespace Configurator.Cli.Tests.Commands;

/// <summary><c>prove</c> on the demonstration catalogue.</summary>
public sealed class ProveTests
{
    private const string Machine = "pantry-four";

    [Fact]
    public void Every_load_has_its_least_and_its_most_with_what_they_hold_for()
    {
        var ran = Tool.Run("prove", Machine);

        Assert.Equal(ExitCodes.Fine, ran.ExitCode);
        Assert.Matches(@"  loads, over all [\d ]+ configurations that keep the rules, each load by itself, homes after the port plan:\n", ran.Output);
        Assert.Matches(@"    Sensor supply L\+ \(sensor-supply\): \d+ mA to \d+ mA\n      most with [a-z0-9 ,-]+\n      least with ", ran.Output);
        Assert.Matches(@"  pairs of options: \d+ configurations have all [\d ]+ that the rules allow \(no fewer than \d+ can\)\n$", ran.Output);
    }

    [Fact]
    public void A_load_is_weighed_with_margins_and_a_histogram_whose_shares_are_of_configurations()
    {
        var ran = Tool.Run("prove", Machine, "--weigh", "sensor-supply");

        Assert.Equal(ExitCodes.Fine, ran.ExitCode);
        Assert.Contains("(of configurations, not of sales)", ran.Output, StringComparison.Ordinal);
        Assert.Matches(@"\n  doser-heads: \d+ mA; 1 times \d+ mA, 2 times \d+ mA", ran.Output);
        Assert.Matches(@"\n  \d+ mA to \d+ mA: [\d ]+ \(below 0\.1 %\)\n", ran.Output);
    }

    [Fact]
    public void The_histogram_for_programs_sums_to_the_number_of_configurations()
    {
        using var json = JsonDocument.Parse(Tool.Run("prove", Machine, "--weigh", "ports-a", "--format", "json").Output);
        var root = json.RootElement;
        var classes = root.GetProperty("histogram").EnumerateArray().ToList();

        Assert.Equal(
            Number(root.GetProperty("configurations")),
            classes.Aggregate(BigInteger.Zero, (sum, one) => sum + Number(one.GetProperty("configurations"))));
        Assert.Equal(root.GetProperty("most").GetProperty("weight").GetInt64(), classes[^1].GetProperty("weight").GetInt64());
        Assert.Equal(root.GetProperty("least").GetProperty("weight").GetInt64(), classes[0].GetProperty("weight").GetInt64());
    }

    [Fact]
    public void Loads_and_pairs_come_as_json_for_programs()
    {
        using var json = JsonDocument.Parse(Tool.Run("prove", Machine, "--format", "json").Output);
        var machine = json.RootElement[0];

        Assert.Contains(machine.GetProperty("loads").EnumerateArray(), load => load.GetProperty("load").GetString() == "mass");
        Assert.InRange(
            machine.GetProperty("pairs").GetProperty("covered-by").GetArrayLength(),
            machine.GetProperty("pairs").GetProperty("at-least").GetInt32(), 40);
    }

    [Theory]
    [InlineData("there is no load `weight` on `pantry-four`", Machine, "--weigh", "weight")]
    [InlineData("to fix: name the machine", "--weigh", "mass")]
    public void What_cannot_be_weighed_is_told_and_exits_with_2(string said, params string[] arguments)
    {
        var ran = Tool.Run(["prove", .. arguments]);

        Assert.Equal(ExitCodes.Usage, ran.ExitCode);
        Assert.Contains(said, ran.Errors, StringComparison.Ordinal);
        Assert.Empty(ran.Output);
    }

    private static BigInteger Number(JsonElement digits) =>
        BigInteger.Parse(digits.GetString()!, System.Globalization.CultureInfo.InvariantCulture);
}
