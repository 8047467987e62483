using Configurator.Core.Binding.Shapes;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using static Configurator.Core.Binding.Kinds.Common;

namespace Configurator.Core.Binding.Kinds;

/// <summary>What a device definition may say.</summary>
internal static class DeviceShape
{
    private static readonly ListShape PortNumbers = new(new CountShape(1, 32));

    private static readonly PatternShape Plug = new(
        "a plug such as `m12-a-4`, `terminals` or `none`",
        "^(m12-[adlkstx]-[0-9]{1,2}|m8-[0-9]|terminals|none)$"
    );

    private static readonly RecordShape IoLink = new(
        "set of IO-Link data",
        [
            Required("rate", WordShape.Of<BitRate>(), "Transmission rate: com1 4.8, com2 38.4, com3 230.4 kbit/s."),
            Required("input-octets", new CountShape(0, 32), "Process data from the device, in octets."),
            Required("output-octets", new CountShape(0, 32), "Process data to the device, in octets."),
            Required("cycle", Of(Dimension.Time), "Shortest cycle that the device allows."),
            Optional(
                "on-request-octets",
                new CountShape(1, 32),
                "Room for parameters in each message, in octets: 1, 2, 8 or 32; 1 if left out."
            ),
            Optional("process-data", ProcessDataShape.Sides, "What travels in every cycle, item by item."),
            Optional("identity", ProcessDataShape.Identity, "How it names itself, for the master to hold against."),
        ]
    );

    private static readonly RecordShape Parameter = new(
        "parameter",
        [
            Required("parameter", Id, "Its name, as recipes use it."),
            Required("title", AText, "What it sets."),
            Required("index", new CountShape(0, 65535), "IO-Link index."),
            Optional("subindex", new CountShape(0, 255), "IO-Link subindex; 0 if left out."),
            Required("type", WordShape.Of<RawType>(), "How it travels."),
            Optional("from", Setting, "Smallest value, with its unit if it has one."),
            Optional("to", Setting, "Largest value, in the same unit."),
            Optional("step", Setting, "What one count of the raw value stands for."),
            Optional(
                "words",
                new TableShape(AWord, new CountShape(-32768, 65535)),
                "Words instead of numbers, each with its raw value."
            ),
        ]
    );

    private static readonly RecordShape Ports = new(
        "set of ports",
        [
            Optional("class-a", PortNumbers, "Numbers of the class A ports."),
            Optional("class-b", PortNumbers, "Numbers of the class B ports."),
            Optional("switching", PortNumbers, "Numbers of ports that take plain switching signals only."),
            Optional("pin-2", WordShape.Of<PinTwoOffer>(), "What class A ports can do with pin 2."),
            Optional("current-per-port", Of(Dimension.Current), "What each port may give at L+."),
            Optional("current-in-all", Of(Dimension.Current), "What all ports together may give at L+."),
            Optional("extra-per-port", Of(Dimension.Current), "What each class B port may give from its extra supply."),
            Optional("extra-in-all", Of(Dimension.Current), "What all class B ports together may give."),
            Optional(
                "input-octets",
                new CountShape(0, 1500),
                "Most process data from all its ports that it carries to the controller, in octets."
            ),
            Optional(
                "output-octets",
                new CountShape(0, 1500),
                "Most process data to all its ports that it carries from the controller, in octets."
            ),
        ]
    );

    private static readonly RecordShape Cordset = new(
        "cordset",
        [
            Required("lengths", new ListShape(Of(Dimension.Length)), "Lengths in stock."),
            Required(
                "cores",
                new ListShape(new PatternShape("a colour code of IEC 60757 such as `BN`", "^[A-Z]{2}([A-Z]{2})?$")),
                "Core colours in pin order."
            ),
            Required("conductor", Of(Dimension.CrossSection), "Cross-section of one core."),
            Required("jacket", Line, "Material of the jacket."),
            Optional("device-end", WordShape.Of<PlugForm>(), "Form of the plug at the device; straight if left out."),
            Optional("far-end", WordShape.Of<PlugForm>(), "Form of the plug at the other end; straight if left out."),
            Optional("torque", Of(Dimension.Torque), "Tightening torque of its plugs, as its maker states it."),
            Optional("diameter", Of(Dimension.Length), "Across the jacket."),
            Optional("bend-radius", Of(Dimension.Length), "Smallest bend of the fixed cable, as its maker states it."),
        ]
    );

    private static readonly RecordShape Lead = new(
        "core",
        [
            Required("core", Line, "What is printed on it, or its colour in IEC 60757 letters."),
            Required("at", Line, "Terminal or pin at the device."),
            Required("carries", Line, "What it carries, such as `motor phase U`."),
            Optional("conductor", Of(Dimension.CrossSection), "Its cross-section where it is not that of the others."),
            Optional("feeder-at", Line, "Terminal of what feeds it: a drive, a switch or a starter."),
            Optional(
                "leads-to",
                WordShape.Of<CoreTarget>(),
                "Where it leads on to inside the box; unsaid if left out."
            ),
        ]
    );

    private static readonly RecordShape Terminal = new(
        "terminal",
        [
            Required("at", Line, "As it is printed on the device."),
            Required("carries", Line, "What it carries, such as `command`."),
            Optional("leads-to", WordShape.Of<CoreTarget>(), "What it is wired to inside the box."),
            Optional("linked-to", Line, "Another terminal of the same device that it is linked to."),
        ]
    );

    private static readonly RecordShape Contacts = new(
        "pair of terminals",
        [
            Required("in", Line, "Where the circuit that it drops comes in."),
            Required("out", Line, "Where that circuit goes out."),
        ]
    );

    private static readonly RecordShape Leads = new(
        "cable into the box",
        [
            Required("conductor", Of(Dimension.CrossSection), "Cross-section of one core."),
            Required("jacket", Line, "Material of the jacket."),
            Optional("shielded", Flag, "It has a shield, to be clamped at the box."),
            Optional(
                "straight-to-feeder",
                Flag,
                "What feeds the device takes its cores at once, without terminals of the box between."
            ),
            Optional("diameter", Of(Dimension.Length), "Across the jacket; the size of its gland follows from it."),
            Optional("bend-radius", Of(Dimension.Length), "Smallest bend of the fixed cable, as its maker states it."),
            Required("cores", new ListShape(Lead), "Its cores, in the order of the terminals in the box."),
        ]
    );

    private static readonly RecordShape Safety = new(
        "set of safety needs",
        [
            Optional("inputs", new CountShape(0, 16), "Safety inputs of the box, one a channel."),
            Optional("outputs", new CountShape(0, 16), "Safety outputs of the box."),
            Optional("test-pulses", WordShape.Of<TestPulses>(), "needed by plain contacts, own, or none."),
        ]
    );

    public static readonly RecordShape Device = new(
        "device",
        [
            Required("device", Id, "Its id; equal to the file's name."),
            Required("title", AText, "What it is, in a few words."),
            Required("kind", WordShape.Of<DeviceKind>(), "What sort of part it is."),
            Required(
                "letters",
                new PatternShape("class letters of IEC 81346-2 such as `BX`", "^[A-Z]{1,3}$"),
                "Class letters for designations."
            ),
            Required(
                "connection",
                WordShape.Of<ConnectionKind>(),
                "How it is connected: io-link, switching (plain PNP on pin 4), wired, none."
            ),
            Optional("port-class", APortClass, "The port class that it needs; a if left out."),
            Optional("pin-2", WordShape.Of<PinTwoUse>(), "What it does with pin 2."),
            Optional("plug", Plug, "Connector at the device."),
            Optional("far-plug", Plug, "Connector at the other end; cordsets only."),
            Optional("current", Of(Dimension.Current), "What it draws from L+, or from the box when wired."),
            Optional(
                "extra-current",
                Of(Dimension.Current),
                "What it draws from the extra supply of a class B port, all outputs on."
            ),
            Optional("start-up-current", Of(Dimension.Current), "Peak at switch-on."),
            Optional("safety", Safety, "What it needs of the box; safety devices only."),
            Optional("constant-power", Flag, "It draws more as the voltage falls; its currents hold at 24 V."),
            Optional("output-current", Of(Dimension.Current), "What a supply gives for ever; supplies only."),
            Optional("boost-current", Of(Dimension.Current), "What a supply gives at start-up; supplies only."),
            Optional("io-link", IoLink, "What it says over IO-Link."),
            Optional("response", Of(Dimension.Time), "Its own delay from event to signal, at most."),
            Optional("response-jitter", Of(Dimension.Time), "How much that delay varies; all of it if left out."),
            Optional("parameters", new ListShape(Parameter), "What can be set in it."),
            Optional("ports", Ports, "Ports it offers; masters and hubs only."),
            Optional("cordset", Cordset, "Stock lengths and cores; cables only."),
            Optional("leads", Leads, "The cable that is cut and wired into the box; for devices without a plug."),
            Optional("terminals", new ListShape(Terminal), "What is wired inside the box; devices mounted there only."),
            Optional("contacts", Contacts, "Terminals of the contacts that drop a circuit."),
            Optional("heat", Of(Dimension.Power), "Loss given off inside the control box."),
            Optional("rail", Of(Dimension.Length), "Width on the mounting rail."),
            Optional("air", Of(Dimension.FreeAirFlow), "Free air at the machine's rated speed."),
            Optional("ingress", SanitationShape.Ingress, "Ingress markings."),
            Optional("materials", new ListShape(Line), "Materials that face the washing."),
            Optional("finish", SanitationShape.Finish, "What its outside is like."),
            Optional("washing", SanitationShape.Care, "What a cleaning crew has to know of it."),
            Optional("mass", Of(Dimension.Mass), "Mass of one."),
            Optional("price", Of(Dimension.Money), "Price of one."),
            Optional("lead-time", Of(Dimension.Time), "Usual lead time."),
            Optional("lifecycle", WordShape.Of<Lifecycle>(), "active, last-orders or ended; active if left out."),
            Optional("alternates", new ListShape(ADevice), "Devices that may take its place."),
        ]
    );
}
