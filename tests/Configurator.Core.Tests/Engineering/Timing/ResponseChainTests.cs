using Configurator.Core.Engineering;
using Configurator.Core.Engineering.Timing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Tests.Support;
using CsCheck;
using Check = Configurator.Core.Tests.Support.Check;

namespace Configurator.Core.Tests.Engineering.Timing;

/// <summary>Laws of the way of a signal, and the ways of the demonstration machines.</summary>
public class ResponseChainTests
{
    private static readonly Machine Machine = Check.Small
        .Machine("  masters:", "  timing: {master: 1 ms, network: 2 ms, task: 4 ms, output: 1 ms, fast-input: 0.1 ms}\n  masters:")
        .TheMachine;

    private static readonly FitInstance Eye = Machine.Instances.Single(instance => instance.Fit.Name.Value.Value == "cup-eye");

    // Law: each with the shortest cycle that can be stated for it.
    [Fact]
    public void Another_octet_never_shortens_the_way_and_a_faster_rate_never_lengthens_it() =>
        Gen.Select(Gen.Int[0, 12], Gen.Int[0, 12], Gen.Int[0, 1]).Sample((input, output, rate) =>
        {
            var way = Way(input, output, (BitRate)rate);
            return Longest(Way(input + 1, output, (BitRate)rate)) >= Longest(way)
                && Longest(Way(input, output + 1, (BitRate)rate)) >= Longest(way)
                && Longest(Way(input, output, (BitRate)rate + 1)) <= Longest(way);
        });

    // Law: what varies is never more than the whole.
    [Fact]
    public void No_part_varies_by_more_than_it_takes() => Gen.Select(Gen.Int[0, 12], Gen.Int[0, 12]).Sample((input, output) =>
        ResponseChain.Of(Machine, Eye, Way(input, output, BitRate.Com2)).Parts.All(part => part.Jitter <= part.Longest));

    // By hand: eye 1, hub 2 and 2.3 + 2.24, then 1 + 2 + 8 + 1; the rejected piece 0.8 + 2.3 + 2.24 + 12; lids 0.6 + 0.6 + 0.49 + 12.
    [Theory]
    [InlineData("pantry-four", "cup-eye", "19.54")]
    [InlineData("pantry-eight", "cup-eye", "19.54")]
    [InlineData("pantry-four", "reject-eye", "17.34")]
    [InlineData("spout-two", "reject-eye", "17.34")]
    [InlineData("pantry-eight", "lid-band", "13.695")]
    public void The_demonstration_answers_in_time(string machine, string fit, string milliseconds)
    {
        var demo = DemoCatalogue.Machines.Single(one => one.Id.Value.Value == machine);
        var instance = demo.Instances.First(one => one.Fit.Name.Value.Value == fit);
        var all = new FittedMachine(demo, new(demo.Id.Value, System.Collections.Immutable.ImmutableSortedDictionary<OptionId, int>.Empty, []), demo.Plan, demo.Instances, demo.Control.Masters);
        var chain = ResponseChain.Of(demo, instance, SignalWay.Of(all, instance));
        Assert.Empty(chain.Missing);
        Assert.Equal(milliseconds, chain.Longest.ToString(decimals: 3));
    }

    private static Rational Longest(SignalWay way) => ResponseChain.Of(Machine, Eye, way).Longest;

    private static SignalWay Way(int input, int output, BitRate rate)
    {
        var cycle = CycleTime.ShortestFor(MSequences.OfOctets(input, output, 1).MillisecondsMax(rate))!.Value;
        return new(false, new(rate, input, output, new(cycle, UnitTable.Find("ms")!, cycle, $"{cycle} ms")), null);
    }
}
