namespace Configurator.Core.Model;

public enum DeviceKind
{
    Sensor,
    ValveManifold,
    Actuator,
    Motor,
    Drive,
    IoLinkMaster,
    Hub,
    Safety,
    Supply,
    Controller,
    PanelPart,
    Cordset,
    Splitter,
    Operator,
    Cap,
}

/// <summary>How a device is connected: by IO-Link, by a plain PNP signal on pin 4, by wires into the control box, or
/// not.</summary>
public enum ConnectionKind
{
    None,
    IoLink,
    Switching,
    Wired,
}

/// <summary>What a device needs of a port and what a port offers: class A or B, or a hub port for plain signals
/// only.</summary>
public enum PortClass
{
    A,
    B,
    Switching,
}

/// <summary>What a device does with pin 2.</summary>
public enum PinTwoUse
{
    Unused,
    Signal,
    Supply,
}

/// <summary>What a master's class A ports can do with pin 2.</summary>
public enum PinTwoOffer
{
    None,
    Input,
    Output,
    Either,
}

/// <summary>Where a core leads on to from its terminal in the box.</summary>
public enum CoreTarget
{
    Unsaid,
    Supply,
    ZeroVolts,
    Earth,
    SafetyInput,
    SafetyOutput,
    TestPulse,
    FastInput,
    Input,
    Output,

    /// <summary>A pair of contacts that drops safe torque off.</summary>
    TorqueOff,

    /// <summary>A port of the network switch.</summary>
    Network,

    /// <summary>The drive, switch or starter that feeds the device.</summary>
    Feeder,
}

/// <summary>How a plug leaves its socket.</summary>
public enum PlugForm
{
    Straight,
    Angled,
}

/// <summary>Whether a part can still be bought.</summary>
public enum Lifecycle
{
    Active,
    LastOrders,
    Ended,
}

/// <summary>IO-Link transmission rates: 4.8, 38.4 and 230.4 kbit/s.</summary>
public enum BitRate
{
    Com1,
    Com2,
    Com3,
}
