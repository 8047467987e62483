using System.Collections.Immutable;
using Configurator.Core.Diagnostics;

namespace Configurator.Core.Engineering.Ports;

/// <summary>The checks on ports and the cables that end at them.</summary>
internal static class PortRules
{
    private const string IoLink = "IO-Link Interface and System Specification v1.1.x (IEC 61131-9)";

    public static readonly FindingRule Home = new(
        "ports.home",
        "Every device has its port",
        new("CFG4001", Severity.Error, "No home port"),
        "port plan of the machine"
    );

    public static readonly FindingRule Sharing = new(
        "ports.sharing",
        "One device a port",
        new("CFG4002", Severity.Error, "Two devices at one port"),
        "port plan of the machine"
    );

    public static readonly FindingRule Class = new(
        "ports.class",
        "Port class",
        new("CFG4003", Severity.Error, "Port of the wrong class"),
        $"{IoLink} 5.5"
    );

    public static readonly FindingRule Reach = new(
        "ports.reach",
        "Cable length",
        new("CFG4004", Severity.Error, "Cable too long"),
        $"{IoLink} Table 11: 20 m; stock lengths of the cordset"
    );

    public static readonly FindingRule PortCurrent = new(
        "ports.port-current",
        "Sensor supply of a port",
        new("CFG4005", Severity.Error, "Port overloaded"),
        $"{IoLink} 5.3.2; limit of the master's data sheet"
    );

    public static readonly FindingRule ExtraCurrent = new(
        "ports.extra-current",
        "Extra supply of a class B port",
        new("CFG4006", Severity.Error, "Extra supply of a port overloaded"),
        $"{IoLink} 5.5; limit of the master's data sheet"
    );

    public static readonly FindingRule MasterCurrent = new(
        "ports.master-current",
        "Sensor supply of a master",
        new("CFG4007", Severity.Error, "Master overloaded"),
        "limit of the master's data sheet"
    );

    public static readonly FindingRule MasterExtra = new(
        "ports.master-extra",
        "Extra supply of a master",
        new("CFG4008", Severity.Error, "Extra supply of a master overloaded"),
        "limit of the master's data sheet"
    );

    public static readonly FindingRule Spare = new(
        "ports.spare",
        "Spare ports",
        new("CFG4009", Severity.Error, "Too few spare ports"),
        "spare-port policy of the machine"
    );

    public static ImmutableArray<FindingRule> All { get; } =
    [Home, Sharing, Class, Reach, PortCurrent, ExtraCurrent, MasterCurrent, MasterExtra, Spare];
}
