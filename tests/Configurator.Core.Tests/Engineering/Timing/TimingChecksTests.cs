using Configurator.Core.Engineering;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Engineering.Timing;

/// <summary>By hand, for the eye of the small catalogue: two octets at COM2 take up to 86 bits, 2.24 ms, in a cycle of 2.3 ms.</summary>
public class TimingChecksTests
{
    private const string CupCheck = "options/small/cup-check.yaml";
    private const string Times = "master: 1 ms, network: 2 ms, task: 4 ms, output: 1 ms, fast-input: 0.1 ms";

    [Fact]
    public void A_cycle_that_the_messages_keep_passes() =>
        Assert.Equal("Pass: 2.3 ms of 2.24 ms, margin 0.06 ms", Check.Small.Built("cup-check").Found("timing.cycle/cup-check/cup-eye/1"));

    [Fact]
    public void A_cycle_too_short_for_its_messages_names_the_next_that_can_be_stated() => Check.Small
        .Changing(SmallCatalogue.Device("eye"), "cycle: 2.3 ms", "cycle: 2.2 ms")
        .Changing(SmallCatalogue.Device("eye"), "device: eye", "device: [|eye|]")
        .Says("CFG4301 `eye` states a cycle of 2.2 ms; its messages (TYPE_2_2 at COM2, 2 octets in, 0 out, 1 on request) take up to 2.24 ms; the limit is 2.24 ms\nto fix: state `cycle: 2.3 ms`, the next that a device can state, or less process data");

    // By hand: TYPE_2_V with 8 octets on request is 2 + 11 octets, 143 + 10 + 1 + 30 = 184 bits, 4.79 ms.
    [Fact]
    public void Room_for_parameters_takes_time() => Assert.Equal("Fail: 2.3 ms of 4.792 ms, margin -2.492 ms", Check.Small
        .Changing(SmallCatalogue.Device("eye"), "cycle: 2.3 ms}", "cycle: 2.3 ms, on-request-octets: 8}")
        .Built("cup-check").Found("timing.cycle/cup-check/cup-eye/1"));

    // By hand: eye 2 in, hub 1 in, first valves 1 in and 4 out; the second head is at home elsewhere.
    [Theory]
    [InlineData("timing.image/front/in", "Pass: 4 of 4, margin 0")]
    [InlineData("timing.image/front/out", "Fail: 4 of 3, margin -1")]
    [InlineData("timing.image/extra/out", "Fail: 4 of 3, margin -1")]
    public void Process_data_adds_up_by_master(string finding, string found) => Assert.Equal(found, Check.Small
        .Changing(SmallCatalogue.Device("master-4"), "  pin-2: either\n", "  pin-2: either\n  input-octets: 4\n  output-octets: 3\n")
        .Built("cup-check", "counter", "2 x heads").Found(finding));

    [Fact]
    public void A_master_that_states_no_limit_is_not_judged() =>
        Assert.DoesNotContain(Check.Small.Built("cup-check").Findings, finding => finding.Id.StartsWith("timing.image", StringComparison.Ordinal));

    // By hand: 0.2 + (2.3 + 2.24) + 1 + 2 + 2 x 4 + 1 ms.
    [Theory]
    [InlineData("20 ms", "Pass: 16.74 ms of 20 ms, margin 3.26 ms")]
    [InlineData("16 ms", "Fail: 16.74 ms of 16 ms, margin -0.74 ms")]
    public void An_answer_takes_the_longest_of_every_part(string within, string found) =>
        Assert.Equal(found, Needing($"answer-within: {within}").Built("cup-check").Found("timing.answer/cup-check/cup-eye/1"));

    // By hand: COM3 0.2 + 0.4 + 0.37 + 12; direct 0.2 + 0.1 + 8 + 1; one octet at COM2 is 15.98 ms and not enough. Three entries and two
    // fast inputs are left of six and two.
    [Fact]
    public void A_late_answer_names_every_way_that_is_fast_enough_and_what_it_takes_of_the_box()
    {
        var finding = Assert.Single(Needing("answer-within: 13 ms").Built("cup-check").Findings, finding => finding.Verdict == Verdict.Fail);
        Assert.Equal(
            "a device at COM3 in place of COM2 gives 12.973 ms; a direct signal with IO-Link kept for parameters, which takes a cable entry of 3 and a fast input of 2 left, gives 9.3 ms",
            finding.Fix);
    }

    // By hand: one octet at COM2 takes 72 bits, 1.875 ms, in a cycle of 1.9 ms: 0.2 + 3.775 + 12.
    [Fact]
    public void Less_process_data_is_named_where_it_is_enough() => Assert.StartsWith(
        "process data of 1 octets in place of 2 gives 15.975 ms; ",
        Assert.Single(Needing("answer-within: 16 ms").Built("cup-check").Findings, finding => finding.Verdict == Verdict.Fail).Fix,
        StringComparison.Ordinal);

    [Fact]
    public void Where_nothing_is_fast_enough_that_is_said() => Assert.Equal(
        "no less process data, faster rate or direct signal is enough: take a faster device, network or task",
        Assert.Single(Needing("answer-within: 5 ms").Built("cup-check").Findings, finding => finding.Verdict == Verdict.Fail).Fix);

    // By hand: 0.2 + 2.3 + 1 + 2 + 4 = 9.5 ms vary; at 12 m/min, 0.2 mm/ms, that is 1.9 mm. Of the message nothing varies.
    [Theory]
    [InlineData("position-error: 2 mm", "Pass: 1.9 mm of 2 mm, margin 0.1 mm")]
    [InlineData("position-error: 1 mm", "Fail: 1.9 mm of 1 mm, margin -0.9 mm")]
    [InlineData("position-error: 1 mm\n    moves-at: 3 m/min", "Pass: 0.475 mm of 1 mm, margin 0.525 mm")]
    public void Only_what_varies_moves_a_position(string need, string found) =>
        Assert.Equal(found, Needing(need).Built("cup-check").Found("timing.position/cup-check/cup-eye/1"));

    // By hand: 0.2 ms of the sensor vary as a whole or by what is stated, the task by 4 ms or, where the event is kept, by 0.02 ms.
    [Theory]
    [InlineData("", "", "Fail: 0.84 mm of 0.5 mm, margin -0.34 mm")]
    [InlineData(", latch: 0.02 ms", "", "Pass: 0.044 mm of 0.5 mm, margin 0.456 mm")]
    [InlineData(", latch: 0.02 ms", "\nresponse-jitter: 0.05 ms", "Pass: 0.014 mm of 0.5 mm, margin 0.486 mm")]
    public void A_direct_signal_varies_by_sensor_and_input(string latch, string jitter, string found) => Assert.Equal(
        found,
        Direct(Needing("position-error: 0.5 mm", Times + latch, jitter)).Built("cup-check").Found("timing.position/cup-check/cup-eye/1"));

    // By hand: 600 mm x 20 1/min = 12 m/min.
    [Fact]
    public void Without_a_speed_pitch_and_rate_give_the_mean() => Assert.Equal("Pass: 1.9 mm of 2 mm, margin 0.1 mm", Needing("position-error: 2 mm")
        .Machine("speed: 12 m/min", "pitch: 600 mm\nrate: 20 1/min")
        .Built("cup-check").Found("timing.position/cup-check/cup-eye/1"));

    [Fact]
    public void What_nobody_states_is_asked_for_and_not_assumed()
    {
        var report = Check.Small.Changing(CupCheck, "    set:", "    position-error: 1 mm\n    set:").Built("cup-check");
        Assert.Equal("timing.stated/cup-check/cup-eye/1", report.Failed());
        Assert.Equal(
            "state `response` of `eye` and `master` under `timing` of the control and `network` under `timing` of the control and `task` under `timing` of the control and `output` under `timing` of the control and `speed` of the machine, or `moves-at` of the fit",
            Assert.Single(report.Findings, finding => finding.Verdict == Verdict.Fail).Fix);
    }

    // By hand: the switch 1 ms, the hub 2 ms and 3 + 1.875 ms (one octet, 72 bits), then 12 ms; by a port of its own 13 ms.
    [Fact]
    public void A_signal_through_a_hub_waits_for_the_hub()
    {
        var check = Needing("purpose: Sees the cup")
            .Changing(SmallCatalogue.Device("prox"), "current: 20 mA", "current: 20 mA\nresponse: 1 ms")
            .Changing(SmallCatalogue.Device("hub-4"), "current: 30 mA", "current: 30 mA\nresponse: 2 ms")
            .Changing(SmallCatalogue.Option("counter"), "purpose: Counts}", "purpose: Counts, answer-within: 14 ms}");
        Assert.Equal("Fail: 19.875 ms of 14 ms, margin -5.875 ms", check.Built("cup-check", "counter").Found("timing.answer/counter/count-eye/1"));
        Assert.StartsWith(
            "a port of a master in place of the hub gives 13 ms; a direct signal, which takes",
            Assert.Single(check.Built("cup-check", "counter").Findings, finding => finding.Verdict == Verdict.Fail).Fix,
            StringComparison.Ordinal);
    }

    private static Check Needing(string need, string times = Times, string jitter = "") => Check.Small
        .Machine("  masters:", $"  timing: {{{times}}}\n  masters:")
        .Machine("revision: A\n", "revision: A\nspeed: 12 m/min\n")
        .Changing(SmallCatalogue.Device("eye"), "current: 40 mA", $"current: 40 mA\nresponse: 0.2 ms{jitter}")
        .Changing(CupCheck, "    purpose: Sees the cup\n", need.StartsWith("purpose", StringComparison.Ordinal) ? "    purpose: Sees the cup\n" : $"    purpose: Sees the cup\n    {need}\n");

    private static Check Direct(Check check) => check
        .Changing(CupCheck, "    set:", "    wiring: direct\n    set:")
        .Changing(CupCheck, "offered-on", "touches-box: [direct-input]\noffered-on")
        .Changing(SmallCatalogue.PortPlan, "cup-check/cup-eye/1: front:1", "cup-check/cup-eye/1: direct");
}
