using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>What is checked of the 24 V that feeds the field.</summary>
internal static class PowerRules
{
    public static readonly FindingRule MasterVoltage = new(
        "power.master-voltage",
        "Voltage at masters",
        new("CFG4401", Severity.Error, "Voltage too low at a master"),
        "L+: 20 V at the master, IEC 61131-9 5.3.2, corroborated; 2L+: 20.4 V at the load, IEC 61131-2, corroborated"
    );

    public static readonly FindingRule DeviceVoltage = new(
        "power.device-voltage",
        "Voltage at the far device",
        new("CFG4402", Severity.Error, "Voltage too low at a device"),
        "L+: 18 V at the device, IEC 61131-9 5.3.2, corroborated; 2L+: 20.4 V at the load, IEC 61131-2, corroborated"
    );

    public static readonly FindingRule TrunkCurrent = new(
        "power.trunk-current",
        "Current in the trunk",
        new("CFG4403", Severity.Error, "Trunk draws more than its protection carries"),
        "I_B <= I_n, IEC 60364-4-43 433.1; corroborated"
    );

    public static readonly FindingRule Conductor = new(
        "power.conductor",
        "Conductors behind protection",
        new("CFG4404", Severity.Error, "Conductor too thin for its protection"),
        "I_n <= I_Z with IEC 60204-1 tables 6 and D.1, cable on open tray at 40 degC; D.1 from memory"
    );

    public static readonly FindingRule Trip = new(
        "power.trip",
        "Protection trips at the far end",
        new("CFG4405", Severity.Error, "Fault at the far end does not trip"),
        "I_sc = U / (R_s + 2 L r(T)), CON-07; physics, common practice"
    );

    public static readonly FindingRule Supply = new(
        "power.supply",
        "Supplies with reserve",
        new("CFG4406", Severity.Error, "Supply overloaded"),
        "output and reserve that the definitions state; 20 to 25 % reserve is common practice"
    );

    public static readonly FindingRule StartUp = new(
        "power.start-up",
        "Supplies at start-up",
        new("CFG4407", Severity.Error, "Supply too weak at start-up"),
        "sum of start-up currents against the boost current; common practice"
    );

    public static readonly FindingRule Stop = new(
        "power.stop",
        "Stop function of circuits",
        new("CFG4408", Severity.Error, "Circuit and stop function do not agree"),
        "IEC 60204-1 9.2 names stop functions; which one drops what is for competent persons",
        IsSafety: true
    );

    public static readonly FindingRule Branch = new(
        "power.branch",
        "Device cables behind their ports",
        new("CFG4409", Severity.Error, "Device cable too thin for its port"),
        "ampacity >= protective device, smallest conductor of the branch governs, IEC 60204-1 7.2, corroborated; "
            + "table 6 for electronic pairs, from memory"
    );

    public static readonly FindingRule BoxChannel = new(
        "power.box-channel",
        "24 V channels of the box",
        new("CFG4410", Severity.Error, "Channel of the box overloaded"),
        "I_B <= I_n, IEC 60364-4-43 433.1; corroborated"
    );

    public static ImmutableArray<FindingRule> All { get; } =
    [MasterVoltage, DeviceVoltage, TrunkCurrent, Conductor, Branch, Trip, Supply, StartUp, Stop, BoxChannel];

    /// <summary>Least volts at a master's feed.</summary>
    public static Rational MasterMin(CircuitUse use) => use == CircuitUse.SensorSupply ? 20 : Rational.Of(20.4m);

    /// <summary>Least volts at what is plugged in.</summary>
    public static Rational DeviceMin(CircuitUse use) => use == CircuitUse.SensorSupply ? 18 : Rational.Of(20.4m);
}
