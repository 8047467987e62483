using System.Collections.Immutable;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>One stretch of a trunk and what is tapped at its far end.</summary>
/// <param name="LengthMetres">One way.</param>
/// <param name="OhmPerKm">Of one core, hot.</param>
/// <param name="TapAmperes">Drawn at the end of the stretch, whatever the voltage.</param>
public sealed record TrunkStretch(Rational LengthMetres, Rational OhmPerKm, Rational TapAmperes)
{
    public Rational LoopOhm => Conductors.LoopOhm(LengthMetres, OhmPerKm);
}

/// <summary>A line fed at one end with several loads along it.</summary>
public static class Trunk
{
    /// <summary>Volts at each tap: U_k = U_(k-1) - 2 L_k r (sum of I_j for j from k on), CON-03. Exact for loads of
    /// constant current; a longer or thinner stretch lowers every tap from its own on. Source: physics;
    /// corroborated.</summary>
    public static ImmutableArray<Rational> VoltsAtTaps(Rational feedVolts, ImmutableArray<TrunkStretch> stretches)
    {
        var volts = ImmutableArray.CreateBuilder<Rational>(stretches.Length);
        var level = feedVolts;
        var flowing = stretches.Aggregate((Rational)0, (sum, stretch) => sum + stretch.TapAmperes);
        foreach (var stretch in stretches)
        {
            level -= stretch.LoopOhm * flowing;
            flowing -= stretch.TapAmperes;
            volts.Add(level);
        }

        return volts.MoveToImmutable();
    }
}
