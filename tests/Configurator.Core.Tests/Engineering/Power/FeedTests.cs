using System.Collections.Immutable;
using Configurator.Core.Engineering.Power;
using Configurator.Core.Model.Units;
using Configurator.Core.Tests.Support;
using CsCheck;

namespace Configurator.Core.Tests.Engineering.Power;

/// <summary>Voltage along a trunk with several masters.</summary>
public class FeedTests
{
    private static readonly Gen<(int[] Metres, int[] Milliamperes)> Trunks = Gen.Select(
        Gen.Int[1, 40].Array[3], Gen.Int[0, 3000].Array[3]);

    // Source: worked example WE-17 (CON-03): 24 V, 2.5 mm2 at 20 degC, three stretches of 10 m with 2 A each.
    [Fact]
    public void Three_taps_of_two_amperes_see_what_the_worked_example_says() =>
        Assert.Equal(
            ["23.0424", "22.404", "22.0848"],
            Solve(Feed([10, 10, 10], sourceMilliohm: 0, Rational.Of(7.98m)), Constant([2000, 2000, 2000]))!.Volts.Select(volt => volt.ToString(4))
        );

    // Source: worked example WE-19 (CON-04): 48 W behind 0.5 ohm at 24 V; ours rounds each step down to a microvolt.
    [Fact]
    public void A_load_of_constant_power_settles_where_the_formula_says()
    {
        var solved = Solve(Feed([0], sourceMilliohm: 500, Rational.Of(7.98m)), [new(0, 48)])!;

        Assert.Equal("22.9545", solved.Volts[0].ToString(4));
        Assert.Equal("2.0911", solved.Amperes[0].ToString(4));
    }

    // Source: maximum power transfer, physics: no more than Us^2 / 4R, here 288 W.
    [Theory]
    [InlineData(280, true)]
    [InlineData(289, false)]
    public void Beyond_the_most_that_a_line_can_carry_no_voltage_is_named(int watts, bool carries) =>
        Assert.Equal(carries, Solve(Feed([0], sourceMilliohm: 500, Rational.Of(7.98m)), [new(0, watts)]) is not null);

    // Law: a longer stretch never raises a voltage anywhere.
    [Fact]
    public void A_longer_trunk_never_raises_a_voltage() =>
        Gen.Select(Trunks, Gen.Int[0, 2], Gen.Int[1, 20]).Sample((trunk, at, more) =>
        {
            var longer = trunk.Metres.ToArray();
            longer[at] += more;
            return IsNowhereHigher(Volts(longer, trunk.Milliamperes), Volts(trunk.Metres, trunk.Milliamperes));
        });

    // Law: another load never raises a voltage anywhere.
    [Fact]
    public void Another_load_never_raises_a_voltage() =>
        Gen.Select(Trunks, Gen.Int[0, 2], Gen.Int[1, 900]).Sample((trunk, at, more) =>
        {
            var heavier = trunk.Milliamperes.ToArray();
            heavier[at] += more;
            return IsNowhereHigher(Volts(trunk.Metres, heavier), Volts(trunk.Metres, trunk.Milliamperes));
        });

    // Law: by superposition each current loses what it would lose alone.
    [Fact]
    public void The_drops_of_single_loads_add_up() => Trunks.Sample(trunk =>
    {
        var all = Volts(trunk.Metres, trunk.Milliamperes);
        var alone = Enumerable.Range(0, 3)
            .Select(at => Volts(trunk.Metres, [.. trunk.Milliamperes.Select((current, i) => i == at ? current : 0)]))
            .ToList();
        return Enumerable.Range(0, 3).All(at =>
            24 - all[at] == alone.Aggregate((Rational)0, (sum, volts) => sum + (24 - volts[at])));
    });

    private static bool IsNowhereHigher(ImmutableArray<Rational> one, ImmutableArray<Rational> other) =>
        one.Zip(other).All(pair => pair.First <= pair.Second);

    private static ImmutableArray<Rational> Volts(int[] metres, int[] milliamperes) =>
        Solve(Feed(metres, sourceMilliohm: 40, Rational.Of(8.9m)), Constant(milliamperes))!.Volts;

    private static FeedVolts? Solve(TrunkFeed feed, ImmutableArray<TapLoad> loads) => FeedVolts.Of(feed, loads);

    private static ImmutableArray<TapLoad> Constant(int[] milliamperes) =>
        [.. milliamperes.Select(current => new TapLoad(new Rational(current, 1000), 0))];

    private static TrunkFeed Feed(int[] metres, int sourceMilliohm, Rational ohmPerKm)
    {
        var master = DemoCatalogue.Machines.First().Control.Masters[0];
        return new(
            24, new Rational(sourceMilliohm, 1000), [.. metres.Select(_ => master)], [.. metres.Select(length => (Rational)length)], ohmPerKm);
    }
}
