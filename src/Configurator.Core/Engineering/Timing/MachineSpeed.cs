using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Timing;

/// <summary>How fast what a fit sees moves.</summary>
/// <param name="MetresPerSecond">Which is mm/ms.</param>
/// <param name="IsMean">Of a machine that stops between two moves, what is moved is faster than that for a
/// while.</param>
public readonly record struct MachineSpeed(Rational MetresPerSecond, bool IsMean)
{
    /// <summary>Its own, else the machine's, else pitch times rate; null where nobody says.</summary>
    public static MachineSpeed? Of(Machine machine, Fit fit) =>
        (fit.MovesAt ?? machine.Speed) is { } stated ? new(stated.InBase / 60, false)
        : machine is { Pitch: { } pitch, Rate: { } rate } ? new(Motion.SpeedOf(pitch.InBase / 1000, rate.InBase), true)
        : null;

    public override string ToString() =>
        $"{(MetresPerSecond * 60).ToString(decimals: 2)} m/min{(IsMean ? ", the mean by pitch and rate," : "")}";
}
