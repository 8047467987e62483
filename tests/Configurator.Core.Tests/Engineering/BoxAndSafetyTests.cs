using Configurator.Core.Engineering;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering;

public class BoxAndSafetyTests
{
    private const string Agitator = "options/small/agitator.yaml";

    // By hand: power and network to the first master and the guard are three cables; the trunk goes on from master to master.
    [Theory]
    [InlineData("film", "Pass: 3 of 6, margin 3")]
    [InlineData("2 x heads", "Pass: 3 of 6, margin 3")]
    public void Only_cables_that_end_in_the_box_take_an_entry(string pick, string found) =>
        Assert.Equal(found, Check.Small.Built(pick).Found("box.entries/cabinet"));

    [Fact]
    public void A_box_with_too_few_entries_is_reported_at_its_station() => Check.Small
        .Machine("entries: 6", "entries: 2")
        .Machine("station: cabinet, title", "station: [|cabinet|], title")
        .Says("CFG4201 3 cables enter the box; the limit is 2\nto fix: move a direct fit to a port, or give the box more entries");

    // The guard is wired, not a fast signal; the eye wired directly is one.
    [Fact]
    public void A_sensor_wired_directly_takes_a_fast_input()
    {
        var check = Direct().Changing(SmallCatalogue.Option("cup-check"), "offered-on", "touches-box: [direct-input]\noffered-on");
        Assert.Equal("Pass: 0 of 2, margin 2", check.Built("film").Found("box.direct-inputs/cabinet"));
        Assert.Equal("Pass: 1 of 2, margin 1", check.Built("cup-check").Found("box.direct-inputs/cabinet"));
        Assert.Equal("Pass: 4 of 6, margin 2", check.Built("cup-check").Found("box.entries/cabinet"));
    }

    // By hand: a coder wired to terminals takes one fast input where its option says so, however many cables it has.
    [Theory]
    [InlineData("[drive, direct-input]", "Pass: 1 of 2, margin 1")]
    [InlineData("[drive]", "Pass: 0 of 2, margin 2")]
    public void A_wired_device_takes_a_fast_input_where_its_option_says_so(string touches, string found)
    {
        var check = Check.Small
            .Changing(Agitator, "[drive]", touches)
            .Changing(Agitator, "stations: [cabinet]", "stations: [filler, outfeed]")
            .Changing(Agitator, "wiring: inside", "wiring: direct")
            .Changing(SmallCatalogue.PortPlan, "homes:\n", "homes:\n  agitator/stirrer/1: direct\n  agitator/stirrer/2: direct\n");
        Assert.Equal(found, check.Built("agitator").Found("box.direct-inputs/cabinet"));
    }

    // By hand: the drive of the agitator and the guard draw 2.5 A + 0.2 A through one channel, or each through its own.
    [Theory]
    [InlineData("channel: 'mixer/1:1', protection: 3 A", "Pass: 2.7 A of 3 A, margin 0.3 A", "")]
    [InlineData("channel: 'mixer/1:1', protection: 2 A", "Fail: 2.7 A of 2 A, margin -0.7 A", "")]
    [InlineData("channel: 'mixer/1:1', protection: 2 A, inside-channel: 'mixer/1:2', inside-protection: 3 A",
        "Pass: 0.2 A of 2 A, margin 1.8 A", "Pass: 2.5 A of 3 A, margin 0.5 A")]
    public void Channels_of_the_box_carry_what_hangs_on_them(string channels, string direct, string inside)
    {
        var built = Check.Small
            .Machine("direct-inputs: 2", $"direct-inputs: 2, {channels}")
            .Machine("standard:\n", "standard:\n  - {fit: mixer, device: mixer-drive, stations: [cabinet], purpose: Mixes, wiring: inside}\n")
            .Changing(SmallCatalogue.Device("guard-switch"), "plug: terminals", "plug: terminals\ncurrent: 200 mA")
            .With("""
                device: mixer-drive
                title: Drive of the mixer
                kind: drive
                letters: TA
                connection: wired
                current: 2.5 A

                """)
            .Built();
        Assert.Equal(direct, built.Found("power.box-channel/direct"));
        Assert.Equal(inside.Length > 0, built.Findings.Any(finding => finding.Id == "power.box-channel/inside"));
        Assert.Equal(inside, inside.Length > 0 ? built.Found("power.box-channel/inside") : "");
    }

    // By hand: the guard of the option at the first input of the standard guard; only in orders with both they clash.
    [Fact]
    public void Two_devices_that_can_be_ordered_together_never_share_a_place()
    {
        var check = Check.Small
            .Changing(SmallCatalogue.Device("guard-switch"), "plug: terminals", "plug: terminals\nsafety: {inputs: 1, test-pulses: own}")
            .Changing(SmallCatalogue.Option("cup-check"), "fits:",
                "touches-box: [safety-inputs]\nfits:\n  - {fit: back, device: guard-switch, stations: [outfeed], purpose: Sees it shut, wiring: direct}")
            .Changing(SmallCatalogue.PortPlan, "standard/guard/1: direct\n",
                "standard/guard/1: direct\n  cup-check/back/1: direct\nbox:\n  cup-check/back/1: {safety-inputs: [1]}\n  standard/guard/1: {safety-inputs: [1]}\n");
        Assert.Equal("Pass", check.Built("film").Found("box.taken-once/safety-inputs"));
        Assert.Equal("box.taken-once/safety-inputs", check.Built("film", "cup-check").Failed());
        Assert.Contains(
            check.Without(SmallCatalogue.Plain).Without(SmallCatalogue.Delivered).Run(),
            diagnostic => diagnostic.Rule.Code == "CFG4204" && diagnostic.Message == "safety input 1 of the box is wired to `cup-check/back/1` and `standard/guard/1`");
    }

    [Fact]
    public void An_option_that_adds_to_the_box_says_so() => Direct()
        .Changing(SmallCatalogue.Option("cup-check"), "option: cup-check", "option: [|cup-check|]")
        .Says("CFG4203 `cup-check` adds to the control box and does not say so\nto fix: list what it adds under `touches-box`");

    [Fact]
    public void What_is_mounted_inside_adds_to_the_box() => Assert.Equal(
        "box.declared/agitator", Check.Small.Changing(Agitator, "touches-box: [drive]\n", "").Built("agitator").Failed());

    [Fact]
    public void A_safety_device_wired_into_the_box_passes() =>
        Assert.Equal("Pass", Check.Small.Built().Found("safety.wiring/standard/guard/1"));

    [Fact]
    public void A_safety_device_on_a_port_is_one_mistake_at_its_fit() => OnPort()
        .Machine("{fit: guard", "{fit: [|guard|]")
        .Says("CFG4101 safety device `standard/guard/1` is wired to a standard IO-Link port\nto fix: set `wiring: direct` on the fit");

    [Fact]
    public void A_safety_device_on_a_port_cannot_be_accepted() => OnPort()
        .Machine("{fit: guard", "{fit: (|guard|)")
        .Changing(SmallCatalogue.Plain, "revision: A\n", "revision: A\n" + Accept("[|safety.wiring/standard/guard/1|]"))
        .Says("CFG4902 `safety.wiring/standard/guard/1` is a safety finding: safety device `standard/guard/1` is wired to a standard IO-Link port\nnote: it fails here");

    [Fact]
    public void A_machine_cannot_accept_a_safety_device_on_a_port_either() => OnPort()
        .Machine("{fit: guard", "{fit: (|guard|)")
        .Machine("standard:", Accept("[|safety.wiring/standard/guard/1|]") + "standard:")
        .Says("CFG4902 `safety.wiring/standard/guard/1` is a safety finding: safety device `standard/guard/1` is wired to a standard IO-Link port\nnote: it fails here");

    [Theory]
    [InlineData(SmallCatalogue.Plain, "revision: A\n")]
    [InlineData(SmallCatalogue.Machine, "standard:")]
    public void A_failure_that_is_accepted_is_shown_as_accepted(string path, string place)
    {
        var check = Check.Small.Machine("spare-ports: 1", "spare-ports: 4")
            .Changing(path, place, path == SmallCatalogue.Plain ? place + Accept("ports.spare/front") : Accept("ports.spare/front") + place);
        check.Says();
        var finding = Assert.Single(check.Engineered.Configurations.Single().Report.Findings, finding => finding.Id == "ports.spare/front");
        Assert.Equal((Verdict.Accepted, "A test bench"), (finding.Verdict, finding.Accepted!.Because.ToString()));
        Assert.True(check.Engineered.Configurations.Single().IsChecked);
    }

    [Theory]
    [InlineData("ports.spare/front")]
    [InlineData("ports.spear/front")]
    public void A_record_without_a_failure_is_useless(string finding) => Check.Small
        .Changing(SmallCatalogue.Plain, "revision: A\n", "revision: A\n" + Accept($"[|{finding}|]"))
        .Says($"CFG4901 `{finding}` is not a failed finding of `plain`\nto fix: remove the record, or correct the id");

    [Fact]
    public void Every_failure_is_a_diagnostic_and_a_configuration_that_has_one_is_not_checked()
    {
        var check = Check.Small.Machine("spare-ports: 1", "spare-ports: 4").Machine("entries: 6", "entries: 2");
        Assert.Equal(["CFG4009", "CFG4201"], check.Run().Select(diagnostic => diagnostic.Rule.Code).Order(StringComparer.Ordinal));
        Assert.False(check.Engineered.Configurations.Single().IsChecked);
    }

    private static Check Direct() => Check.Small
        .Changing(SmallCatalogue.Option("cup-check"), "device: eye", "device: eye\n    wiring: direct")
        .Changing(SmallCatalogue.PortPlan, "cup-eye/1: front:1", "cup-eye/1: direct")
        .Changing(SmallCatalogue.PortPlan, "guard/1: direct\n", "guard/1: direct\nbox:\n  cup-check/cup-eye/1: {fast-inputs: [1]}\n");

    private static Check OnPort() => Check.Small
        .Machine("wiring: direct}", "wiring: port}")
        .Changing(SmallCatalogue.PortPlan, "guard/1: direct", "guard/1: front:4");

    private static string Accept(string finding) =>
        $"accepted: [{{finding: {finding}, by: controls lead, because: A test bench, until: 2027-03-31}}]\n";
}
