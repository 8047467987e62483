using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>One standard conductor size and its largest resistance.</summary>
/// <param name="Class">5: flexible; 1: solid, and 2: stranded, share a row (given as 1).</param>
/// <param name="PlainOhmPerKm">At 20 degC.</param>
/// <param name="TinnedOhmPerKm">At 20 degC.</param>
public sealed record ConductorSize(
    Rational AreaMm2,
    int Class,
    Rational PlainOhmPerKm,
    Rational TinnedOhmPerKm,
    string Source,
    Basis Basis
);
