using System.Collections.Immutable;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>Volts at each master of a trunk, and amperes drawn there.</summary>
internal sealed record FeedVolts(ImmutableArray<Rational> Volts, ImmutableArray<Rational> Amperes)
{
    private const int Rounds = 200;
    private const int PerVolt = 1_000_000;

    public Rational Total => Amperes.Aggregate((Rational)0, (sum, amperes) => sum + amperes);

    /// <summary>Exact where all loads are of constant current. With constant power the voltage is brought down step by
    /// step, each rounded down to a microvolt, until it stays; null where it does not, for no voltage carries that
    /// load.</summary>
    /// <remarks>Source: CON-03 and CON-04; below half of the feed more current brings less power, physics.</remarks>
    public static FeedVolts? Of(TrunkFeed feed, ImmutableArray<TapLoad> loads)
    {
        if (feed.Volts <= 0)
        {
            return null;
        }

        ImmutableArray<Rational> volts = [.. loads.Select(_ => feed.Volts)];
        for (var round = 0; round < Rounds; round++)
        {
            ImmutableArray<Rational> amperes = [.. loads.Select((load, i) => load.At(volts[i]))];
            var next = feed.VoltsFor(amperes);
            if (loads.All(load => load.Watts == 0))
            {
                return new(next, amperes);
            }

            next = [.. next.Select(Down)];
            if (next.Any(volt => volt * 2 < feed.Volts))
            {
                return null;
            }

            if (next.SequenceEqual(volts))
            {
                return new(next, amperes);
            }

            volts = next;
        }

        return null;
    }

    private static Rational Down(Rational volts) => new(-(-volts * PerVolt).Ceiling(), PerVolt);
}
