using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Air;

/// <summary>A pneumatic cylinder. Lengths in any one unit; volumes and areas follow from it.</summary>
/// <param name="Rod">0 where none.</param>
public sealed record Cylinder(Rational Bore, Rational Rod, Rational Stroke)
{
    private static readonly Rational QuarterPi = Rational.Of(0.785398163397448m);

    /// <summary>Space swept by a stroke out.</summary>
    public Rational VolumeOut(Rational? quarterPi = null) => (quarterPi ?? QuarterPi) * Bore * Bore * Stroke;

    /// <summary>Space swept by a stroke back.</summary>
    public Rational VolumeBack(Rational? quarterPi = null) =>
        (quarterPi ?? QuarterPi) * ((Bore * Bore) - (Rod * Rod)) * Stroke;

    /// <summary>Space filled with compressed air in a minute: out, and back where air drives it back too; PNE-03, dead
    /// volumes add. Source: US DOE/ORNL calculator documentation; corroborated.</summary>
    public Rational IntakePerMinute(Rational cyclesPerMinute, bool isDoubleActing, Rational? quarterPi = null) =>
        (VolumeOut(quarterPi) + (isDoubleActing ? VolumeBack(quarterPi) : 0)) * cyclesPerMinute;

    /// <summary>Free air in compressed air: (pg + pa) / pa.</summary>
    public static Rational CompressionRatio(Rational gauge, Rational atmosphere) => (gauge + atmosphere) / atmosphere;

    /// <summary>Push in N: F = eta (p A - p_back A_other), PNE-04; mm and bar in. Source: physics; eta of 0.8 to 0.95
    /// is common practice.</summary>
    public Rational PushNewtons(Rational gaugeBar, Rational backBar, Rational efficiency) =>
        efficiency * QuarterPi * ((gaugeBar * Bore * Bore) - (backBar * ((Bore * Bore) - (Rod * Rod)))) / 10;
}
