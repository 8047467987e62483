using Configurator.Core.Engineering.Timing;
using Configurator.Core.Model.Units;
using CsCheck;

namespace Configurator.Core.Tests.Engineering.Timing;

public class MotionTests
{
    // By hand: 60 m/min is 1 mm/ms.
    [Fact]
    public void A_late_signal_shifts_by_speed_times_delay() =>
        Assert.Equal(Rational.Of(2.3m), Motion.ShiftMillimetres(Motion.SpeedOf(1, 60), Rational.Of(2.3m)));

    // By hand: 0.5 x (2.3 + 2 + 4) = 4.15 mm; 0.5 x sqrt((2.3^2 + 2^2 + 4^2) / 12) = 0.7259 mm.
    [Fact]
    public void Jitters_add_up_at_worst_and_less_on_the_whole()
    {
        Rational[] jitters = [Rational.Of(2.3m), 2, 4];
        Assert.Equal(Rational.Of(4.15m), Motion.SpreadMillimetres(new(1, 2), jitters));
        Assert.Equal("0.7259", Motion.DeviationMillimetres(new(1, 2), jitters).ToString(decimals: 4));
    }

    // Source: tests/Data/reference/worked_examples.csv, WE-39.
    [Fact]
    public void A_sensor_switches_as_often_as_targets_pass()
    {
        Assert.Equal(10, Motion.SwitchingHertz(1, 10, 90));
        Assert.Equal(90, Motion.PassingMilliseconds(1, 90));
    }

    // Source: tests/Data/reference/worked_examples.csv, WE-38.
    [Fact]
    public void A_stay_begins_and_ends_between_samples()
    {
        (Rational, Rational)[] samples = [(0, 0), (20, 8), (40, 16), (60, 20), (80, Rational.Of(20.1m)), (280, Rational.Of(20.1m)), (300, 20), (320, 12), (340, 4)];
        Assert.Equal((50, 305), Assert.Single(Motion.Stays([.. samples], 18, 99)));
    }

    [Fact]
    public void What_leaves_and_comes_back_stays_twice() =>
        Assert.Equal(2, Motion.Stays([(0, 0), (1, 10), (2, 0), (3, 10)], 5, 20).Length);

    // Law: no deviation is larger than the spread, and another jitter never makes a position surer.
    [Fact]
    public void Another_jitter_never_makes_a_position_surer() => Gen.Select(Gen.Int[0, 100].List[0, 6], Gen.Int[0, 100]).Sample((list, another) =>
    {
        var jitters = list.ConvertAll(value => (Rational)value);
        return Motion.SpreadMillimetres(1, [.. jitters, another]) >= Motion.SpreadMillimetres(1, jitters)
            && Motion.DeviationMillimetres(1, jitters) <= Motion.SpreadMillimetres(1, jitters);
    });
}
