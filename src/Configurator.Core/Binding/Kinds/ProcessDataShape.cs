using System.Collections.Immutable;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Model;
using static Configurator.Core.Binding.Kinds.Common;

namespace Configurator.Core.Binding.Kinds;

/// <summary>What a device definition may say about its process data and its identity.</summary>
internal static class ProcessDataShape
{
    public const int BitsMax = 64;
    private const int OctetsMax = 32;
    private const int VendorMax = 0xFFFF;
    private const int DeviceMax = 0xFFFFFF;

    /// <summary>As the standard writes them.</summary>
    private static readonly WordShape AType = new(
        Enum.GetValues<ProcessType>()
            .ToImmutableSortedDictionary(type => type.ToString(), type => (object)type, StringComparer.Ordinal)
    );

    private static readonly RecordShape Item = new(
        "process data item",
        [
            Required(
                "name",
                Id,
                "Its name for ever; tags in the controller program end with it. Each of its words starts with a letter."
            ),
            Required("title", AText, "What it says, in a few words."),
            Required("type", AType, "How it travels."),
            Required("octet", new CountShape(0, OctetsMax - 1), "The first octet that it touches; 0 travels first."),
            Optional(
                "bit",
                new CountShape(0, 7),
                "Its lowest bit in the last octet that it touches; 0, the lowest, if left out."
            ),
            Optional("length", new CountShape(1, BitsMax), "In bits; UIntegerT and IntegerT only."),
            Optional("from", Setting, "Smallest value, with its unit if it has one."),
            Optional("to", Setting, "Largest value, in the same unit."),
            Optional("step", Setting, "What one count of the raw value stands for."),
            Optional("port", new CountShape(1, OctetsMax), "The port whose plain signal it carries; hubs only."),
        ]
    );

    public static readonly RecordShape Sides = new(
        "set of process data",
        [
            Optional("inputs", new ListShape(Item), "From the device."),
            Optional("outputs", new ListShape(Item), "To the device."),
        ]
    );

    public static readonly RecordShape Identity = new(
        "device identity",
        [
            Required("vendor", new CountShape(1, VendorMax), "VendorID, of two octets."),
            Required("device", new CountShape(1, DeviceMax), "DeviceID, of three octets."),
        ]
    );
}
