namespace Configurator.Core.Tests.Engineering.Rigs;

/// <summary>The kinds of device that rigs carry.</summary>
internal enum Gadget
{
    /// <summary>IO-Link at class A or B.</summary>
    Eye,

    /// <summary>As an eye, but it draws a lot.</summary>
    Heavy,

    /// <summary>A plain signal.</summary>
    Prox,

    /// <summary>A plain signal; two of them just fit at one port.</summary>
    Band,

    /// <summary>A plain signal that draws too much for a second one beside it, and for a hub.</summary>
    Lamp,

    /// <summary>A plain signal with a second one at pin 2.</summary>
    Feeler,

    /// <summary>Needs class B.</summary>
    Valves,

    /// <summary>Has two ports for plain signals.</summary>
    Hub,
}

/// <param name="Current">Milliamperes from the sensor supply.</param>
/// <param name="Extra">Milliamperes from the extra supply.</param>
/// <param name="IsPlain">Switches pin 4 and leaves pin 2 alone.</param>
internal readonly record struct GadgetFacts(int Current, int Extra, bool IsSwitching, bool IsPlain, bool NeedsClassB)
{
    public const int HubPorts = 2;
    public const int HubPerPort = 100;
    public const int HubInAll = 200;

    public static GadgetFacts Of(Gadget gadget) =>
        gadget switch
        {
            Gadget.Eye => new(40, 0, false, false, false),
            Gadget.Heavy => new(180, 0, false, false, false),
            Gadget.Prox => new(20, 0, true, true, false),
            Gadget.Band => new(90, 0, true, true, false),
            Gadget.Lamp => new(150, 0, true, true, false),
            Gadget.Feeler => new(30, 0, true, false, false),
            Gadget.Valves => new(60, 800, false, false, true),
            _ => new(30, 0, false, false, false),
        };
}
