using Configurator.Core.Model;
using Configurator.Planning.Tests.Support;

namespace Configurator.Planning.Tests.Files;

/// <summary>A device that moves between definitions keeps its cable where it is.</summary>
public class FormerHomesTests
{
    private const string Watch = """
        option: door-watch
        formerly: [door-look]
        title: {en: Door watch, es: Vigilancia de puerta}
        summary: {en: Sees the service door, es: Ve la puerta de servicio}
        offered-on: [spout-two]
        fits:
          - {fit: door-eye, device: home-sensor, stations: [outfeed], purpose: {en: Sees the door, es: Ve la puerta}}

        """;

    private static readonly Demo Catalogue = Demo.Whole.With("options/checking/door-watch.yaml", Watch);

    [Fact]
    public void A_device_that_moves_to_another_option_keeps_its_port() =>
        Assert.Equal("outfeed:4", Carried("gate-watch/door-eye/1: outfeed:4"));

    [Fact]
    public void The_home_under_a_former_id_goes_before_another_of_that_name() =>
        Assert.Equal("outfeed:3", Carried("a-watch/door-eye/1: outfeed:4", "door-look/door-eye/1: outfeed:3"));

    [Fact]
    public void A_home_of_its_own_goes_before_any_other() =>
        Assert.Equal("outfeed:1", Carried("door-look/door-eye/1: outfeed:3", "door-watch/door-eye/1: outfeed:1"));

    [Fact]
    public void Another_fit_or_another_place_in_the_list_is_not_the_same_device()
    {
        Assert.Null(Carried("door-look/gate-eye/1: outfeed:3"));
        Assert.Null(Carried("door-look/door-eye/2: outfeed:3"));
    }

    [Fact]
    public void A_home_where_the_device_cannot_live_is_not_carried_over()
    {
        // The box is for what is wired directly, and there is no such master.
        Assert.Null(Carried("door-look/door-eye/1: direct"));
        Assert.Null(Carried("door-look/door-eye/1: nowhere:1"));
    }

    [Fact]
    public void The_line_under_the_old_id_gives_way_to_one_under_the_new()
    {
        var plan = Catalogue.Plan("spout-two", further: "  door-look/door-eye/1: outfeed:4\n");

        Assert.Equal("outfeed:4", plan.Homes[InstanceKey.Parse("door-watch/door-eye/1")!.Value].ToString());
        Assert.Empty(plan.Moved);
        Assert.Empty(plan.Dropped);
    }

    [Fact]
    public void A_home_of_a_fit_that_is_gone_is_said_to_be_gone()
    {
        var plan = Demo.Whole.Plan("spout-two", further: "  old-watch/old-eye/1: outfeed:4\n");

        Assert.Contains(
            "  gone: old-watch/old-eye/1 was at outfeed:4; there is no such fit any more\n",
            PlanReport.Of(plan),
            StringComparison.Ordinal
        );
        Assert.Equal("old-watch/old-eye/1", Assert.Single(plan.Dropped).ToString());
    }

    private static string? Carried(params string[] lines)
    {
        var written = PlanFile.Read("homes:\n" + string.Concat(lines.Select(line => $"  {line}\n")));
        var carried = FormerHomes.Carry(Catalogue.Logic("spout-two").Machine, written);
        return carried.TryGetValue(InstanceKey.Parse("door-watch/door-eye/1")!.Value, out var home) ? home.ToString() : null;
    }
}
