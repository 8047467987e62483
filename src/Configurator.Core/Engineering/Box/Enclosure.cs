using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Box;

/// <summary>How a cabinet stands, which decides which of its faces give off heat.</summary>
public enum Mounting
{
    SingleFree,
    SingleOnWall,
    EndOfRowFree,
    EndOfRowOnWall,
    MiddleOfRowFree,
    MiddleOfRowOnWall,
    MiddleOfRowOnWallTopCovered,
}

/// <summary>Height, width and depth, in m.</summary>
public sealed record EnclosureSize(Rational Height, Rational Width, Rational Depth)
{
    private static readonly Rational Full = Rational.Of(1.8m);
    private static readonly Rational Most = Rational.Of(1.4m);
    private static readonly Rational Half = Rational.Of(0.7m);

    /// <summary>Square metres that give off heat. Source: VDE 0660-500 / IEC 60890 area rule, by a public controller
    /// engineering manual; corroborated.</summary>
    public Rational EffectiveArea(Mounting mounting) =>
        mounting switch
        {
            Mounting.SingleFree => (Full * Height * (Width + Depth)) + (Most * Width * Depth),
            Mounting.SingleOnWall => (Most * Width * (Height + Depth)) + (Full * Depth * Height),
            Mounting.EndOfRowFree => (Most * Depth * (Height + Width)) + (Full * Width * Height),
            Mounting.EndOfRowOnWall => (Most * Height * (Width + Depth)) + (Most * Width * Depth),
            Mounting.MiddleOfRowFree => (Full * Width * Height) + (Most * Width * Depth) + (Depth * Height),
            Mounting.MiddleOfRowOnWall => (Most * Width * (Height + Depth)) + (Depth * Height),
            _ => (Most * Width * Height) + (Half * Width * Depth) + (Depth * Height),
        };
}
