using System.Collections.Immutable;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Timing;

/// <summary>What times mean on something that moves. Speeds in m/s, which is mm/ms.</summary>
public static class Motion
{
    /// <summary>Speed in m/s of a machine that moves one pitch a cycle: v = pitch rate / 60, PKG-05; the mean over the
    /// cycle. Source: physics; corroborated.</summary>
    public static Rational SpeedOf(Rational pitchMetres, Rational cyclesPerMinute) =>
        pitchMetres * cyclesPerMinute / 60;

    /// <summary>How far, in mm, something moves while a signal is so late: e = v dt, PKG-01. A constant delay can be
    /// compensated, a jitter cannot. Source: physics; corroborated.</summary>
    public static Rational ShiftMillimetres(Rational metresPerSecond, Rational milliseconds) =>
        metresPerSecond * milliseconds;

    /// <summary>Spread from peak to peak, in mm, of independent jitters: v (sum of t), PKG-02; the worst that can
    /// happen. Source: statistics; corroborated.</summary>
    public static Rational SpreadMillimetres(Rational metresPerSecond, IEnumerable<Rational> jitters) =>
        metresPerSecond * jitters.Aggregate((Rational)0, (sum, jitter) => sum + jitter);

    /// <summary>Standard deviation, in mm, of the same where each is evenly spread: v sqrt(sum of t^2 / 12), PKG-02.
    /// Source: statistics; corroborated.</summary>
    public static Rational DeviationMillimetres(Rational metresPerSecond, IEnumerable<Rational> jitters) =>
        metresPerSecond
        * (jitters.Aggregate((Rational)0, (sum, jitter) => sum + (jitter * jitter)) / 12).RootDown(decimals: 12);

    /// <summary>Targets a second that a sensor sees: f = v / (w + g), PKG-03. Source: physics; corroborated.</summary>
    public static Rational SwitchingHertz(Rational metresPerSecond, Rational targetMm, Rational gapMm) =>
        metresPerSecond * 1000 / (targetMm + gapMm);

    /// <summary>How long a length takes to pass, in ms: t = w / v; target and gap must both outlast the sensor's
    /// response and the controller's scan. Source: PKG-03, physics; corroborated.</summary>
    public static Rational PassingMilliseconds(Rational metresPerSecond, Rational millimetres) =>
        millimetres / metresPerSecond;

    /// <summary>The times, in ms, in which a sampled position lies from low to high, crossings between samples by a
    /// straight line: PKG-04. Without that, each stay is unsure by two samples. Source: derived;
    /// corroborated.</summary>
    public static ImmutableArray<(Rational Enter, Rational Leave)> Stays(
        ImmutableArray<(Rational Time, Rational Position)> samples,
        Rational low,
        Rational high
    )
    {
        var stays = new List<(Rational Enter, Rational Leave)>();
        foreach (var (from, to) in samples.Zip(samples.Skip(1)))
        {
            if (Inside(from, to, low, high) is not { } part)
            {
                continue;
            }

            var joins = stays.Count > 0 && stays[^1].Leave == part.Enter;
            var enter = joins ? stays[^1].Enter : part.Enter;
            if (joins)
            {
                stays.RemoveAt(stays.Count - 1);
            }

            stays.Add((enter, part.Leave));
        }

        return [.. stays.Where(stay => stay.Leave > stay.Enter)];
    }

    private static (Rational Enter, Rational Leave)? Inside(
        (Rational Time, Rational Position) from,
        (Rational Time, Rational Position) to,
        Rational low,
        Rational high
    )
    {
        var rise = to.Position - from.Position;
        if (rise == 0)
        {
            return from.Position >= low && from.Position <= high ? (from.Time, to.Time) : null;
        }

        var atLow = from.Time + ((low - from.Position) * (to.Time - from.Time) / rise);
        var atHigh = from.Time + ((high - from.Position) * (to.Time - from.Time) / rise);
        var (first, last) = atLow < atHigh ? (atLow, atHigh) : (atHigh, atLow);
        var enter = first > from.Time ? first : from.Time;
        var leave = last < to.Time ? last : to.Time;
        return enter <= leave ? (enter, leave) : null;
    }
}
