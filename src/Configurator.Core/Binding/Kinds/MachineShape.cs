using Configurator.Core.Binding.Shapes;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using static Configurator.Core.Binding.Kinds.Common;

namespace Configurator.Core.Binding.Kinds;

/// <summary>What a machine definition may say.</summary>
internal static class MachineShape
{
    private static readonly QuantityShape Coordinate = Of(Dimension.Length) with { MayBeNegative = true };

    private static readonly RecordShape Area = new(
        "area",
        [
            Required("area", Id, "Its id."),
            Required("title", AText, "What it is called."),
            Required("class", WordShape.Of<AreaClass>(), "food, splash or non-food, after the hygiene standards."),
            Required("wash", WordShape.Of<WashMethod>(), "How it is washed."),
        ]
    );

    private static readonly RecordShape Node = new(
        "node",
        [
            Required("node", Id, "Its id."),
            Required("x", Coordinate, "Along the machine, from the infeed."),
            Required("y", Coordinate, "Across the machine."),
            Required("z", Coordinate, "Above the floor."),
        ]
    );

    private static readonly RecordShape Edge = new(
        "edge",
        [
            Required("from", Id, "A node."),
            Required("to", Id, "Another node."),
            Optional("length", Of(Dimension.Length), "Length of the path; straight if left out."),
        ]
    );

    private static readonly RecordShape Route = new(
        "route",
        [
            Required("nodes", new ListShape(Node), "Points of the cable path."),
            Required("edges", new ListShape(Edge), "Stretches between them."),
        ]
    );

    private static readonly RecordShape Station = new(
        "station",
        [
            Required("station", Id, "Its id."),
            Required("title", AText, "What it is called."),
            Required("area", Id, "The area it lies in."),
            Required("node", Id, "The node where its cables leave the route."),
            Required("drop", Of(Dimension.Length), "From the node to the devices."),
        ]
    );

    private static readonly PatternShape AChannel = new(
        "`FIT/ORDINAL:CHANNEL` of a standard fit, such as `breakers/1:3`",
        "^[a-z0-9-]+/[1-9][0-9]?:[1-9][0-9]?$"
    );

    private static readonly RecordShape SafetyOffer = new(
        "safety offer",
        [
            Required("inputs", Count, "Safety inputs, one a channel."),
            Required("outputs", Count, "Safety outputs."),
            Required("test-pulses", Flag, "Are pulses sent through plain contacts?"),
            Optional("controller", Id, "The standard fit that has these inputs and outputs."),
            Optional("torque-off", Id, "The standard fit that drops safe torque off of every drive."),
            Optional("torque-off-pairs", Count, "How many drives that fit can drop."),
        ]
    );

    private static readonly RecordShape NetworkOffer = new(
        "network offer",
        [
            Required("switch", Id, "The standard fit that is the network switch of the box."),
            Required("ports", Count, "Its ports; port 1 leads to the trunk."),
        ]
    );

    private static readonly RecordShape Box = new(
        "control box",
        [
            Required("station", AStation, "Where it stands."),
            Required("entries", Count, "Cable entries."),
            Required("direct-inputs", Count, "Fast 24 V inputs of the controller."),
            Optional("channel", AChannel, "The breaker channel that feeds 24 V to what is wired directly into it."),
            Optional("protection", Of(Dimension.Current), "Rated current of that channel."),
            Optional(
                "inside-channel",
                AChannel,
                "The breaker channel of what is mounted inside; `channel` if left out."
            ),
            Optional("inside-protection", Of(Dimension.Current), "Rated current of that channel."),
            Optional("inputs", Count, "Plain 24 V inputs of the controller; not counted if left out."),
            Optional("outputs", Count, "Plain 24 V outputs of the controller; not counted if left out."),
            Optional("network", NetworkOffer, "The network switch; its ports are not counted if left out."),
            Optional("diagram", Line, "Document number of the circuit diagram of the box."),
            Optional("terminal-torque", Of(Dimension.Torque), "Of its terminals; spring terminals if left out."),
            Optional("safety", SafetyOffer, "What it offers safety devices; not counted if left out."),
        ]
    );

    private static readonly RecordShape Cordsets = new(
        "choice of cordsets",
        [
            Required("io-link", ADevice, "On class A ports and hubs."),
            Required("class-b", ADevice, "On class B ports."),
            Required("direct", ADevice, "Into the control box."),
        ]
    );

    private static readonly RecordShape Trunk = new(
        "trunk",
        [Required("power", ADevice, "Its power cable."), Required("network", ADevice, "Its network cable.")]
    );

    private static readonly RecordShape Master = new(
        "master",
        [
            Required("master", Id, "Its name; designations come from it."),
            Required("device", ADevice, "The device, one with ports."),
            Required("station", AStation, "Where it is mounted."),
            Optional("extension", Flag, "Fitted only when an order has a fit at home there."),
        ]
    );

    private static readonly RecordShape Timing = new(
        "timing of the control",
        [
            Optional("master", Of(Dimension.Time), "From a master's port to its network side, at most."),
            Optional("network", Of(Dimension.Time), "Update of the network between masters and controller."),
            Optional("task", Of(Dimension.Time), "Cycle of the controller task that answers."),
            Optional("output", Of(Dimension.Time), "From the end of the task to the output, at most."),
            Optional("fast-input", Of(Dimension.Time), "Filter of a fast input."),
            Optional("latch", Of(Dimension.Time), "Resolution with which fast inputs keep the time of an event."),
        ]
    );

    private static readonly RecordShape Circuit = new(
        "circuit",
        [
            Required("circuit", Id, "Its id."),
            Required("feeds", WordShape.Of<CircuitUse>(), "sensor-supply (L+) or actuator-supply (2L+)."),
            Required("supply", Id, "The standard fit that is its supply."),
            Required("protection", Of(Dimension.Current), "Rated current of its protective device."),
            Required("trips-at", Of(Dimension.Current), "Current at which that opens at once, for certain."),
            Optional("dropped-by", new ListShape(Id), "Stop functions that drop it."),
            Optional("switched-by", Id, "The standard fit whose contacts drop it."),
            Optional("channel", AChannel, "The breaker channel that protects it."),
            Optional("stays-alive", Flag, "It has to live through every stop."),
        ]
    );

    private static readonly RecordShape Power = new(
        "field power",
        [
            Required("lowest", Of(Dimension.Voltage), "Voltage at the terminals of the box, at its worst."),
            Required("conductors", Of(Dimension.Temperature), "Temperature of the conductors at the hottest place."),
            Required("source", Of(Dimension.Resistance), "Of supply, protection and wiring in the box, out and back."),
            Required("reserve", Of(Dimension.Share), "Share of each supply that stays unused."),
            Required("circuits", new ListShape(Circuit), "One for each supply on the trunk."),
        ]
    );

    private static readonly RecordShape Stop = new(
        "stop function",
        [Required("stop", Id, "Its id, such as `guards`."), Required("title", AText, "What it is called.")]
    );

    private static readonly RecordShape Control = new(
        "control architecture",
        [
            Required("box", Box, "The control box."),
            Optional("spare-ports", new CountShape(0, 32), "Ports kept free on every master."),
            Optional("slack", Of(Dimension.Length), "Added to every cable before the next stock length."),
            Required("cordsets", Cordsets, "The stock cables that connect devices."),
            Optional("splitter", ADevice, "Brings two plain signals of one option to pins 4 and 2 of a port."),
            Required("trunk", Trunk, "The cables that run from master to master."),
            Optional("power", Power, "How the trunk is fed; nothing of it is checked if left out."),
            Optional("stops", new ListShape(Stop), "Stop functions, as fits and circuits name them."),
            Required("masters", new ListShape(Master), "Field masters in trunk order from the box."),
            Optional("timing", Timing, "What the way of a signal costs in time; needed where a fit states a need."),
        ]
    );

    private static readonly RecordShape Choice = new(
        "choice",
        [
            Required("choice", Id, "Its id."),
            Required("title", AText, "What is chosen."),
            Required("take", WordShape.Of<Take>(), "How many must be taken."),
            Required("of", new ListShape(AnOption), "Out of which."),
            Optional("when", ACondition, "Only where this holds."),
            Optional("because", AText, "The sentence a salesperson reads."),
        ]
    );

    private static readonly RecordShape Rule = new(
        "rule",
        [
            Required("rule", Id, "Its id."),
            Optional("when", ACondition, "Where it applies; always if left out."),
            Optional("need", ACondition, "What must hold there."),
            Optional("never", ACondition, "What must not."),
            Required("because", AText, "The sentence a salesperson reads."),
        ]
    );

    private static readonly RecordShape Share = new(
        "share of a limit",
        [
            Required("option", AnOption, "An option."),
            Optional("each", new CountShape(1, 60), "What each one of it counts for; 1 if left out."),
        ]
    );

    private static readonly RecordShape Limit = new(
        "limit",
        [
            Required("limit", Id, "Its id."),
            Required("title", AText, "What is counted."),
            Required("at-most", new CountShape(0, 60), "How many there may be in all."),
            Required("counts", new ListShape(Share), "What counts."),
            Required("because", AText, "The sentence a salesperson reads."),
        ]
    );

    private static readonly RecordShape Mix = new(
        "share of orders",
        [
            Required("option", AnOption, "An option."),
            Required("share", Of(Dimension.Share), "In how many of a hundred orders it is."),
        ]
    );

    public static readonly RecordShape Machine = new(
        "machine",
        [
            Required("machine", Id, "Its id; equal to the folder's name."),
            Required("title", AText, "What it is called."),
            Required("summary", AText, "One or two sentences on it."),
            Optional("formerly", FormerIds, "Ids it had before."),
            Required(
                "document",
                new PatternShape("capital letters and digits such as `P4`", "^[A-Z][A-Z0-9]{0,7}$"),
                "Prefix of its document numbers."
            ),
            Required("revision", Revision, "Revision of its definition."),
            Optional("rate", Of(Dimension.Rate), "Rated cycles."),
            Optional("pitch", Of(Dimension.Length), "From one product to the next: how far a cycle moves."),
            Optional(
                "speed",
                Of(Dimension.Speed),
                "Fastest that product moves; pitch times rate, the mean, if left out."
            ),
            Optional("lanes", new CountShape(1, 64), "Lanes side by side."),
            Required("areas", new ListShape(Area), "How its parts are washed."),
            Required("route", Route, "The cable paths along the frame."),
            Required("stations", new ListShape(Station), "Its stations, in order along the machine."),
            Required("control", Control, "Its control architecture."),
            Optional(
                "sanitation",
                SanitationShape.Sanitation,
                "How it is cleaned; nothing of it is checked if left out."
            ),
            Optional("choices", new ListShape(Choice), "Sets of options of which so many must be taken."),
            Optional("rules", new ListShape(Rule), "What else must hold."),
            Optional("limits", new ListShape(Limit), "Counts over options that must not be exceeded."),
            Optional("order-mix", new ListShape(Mix), "How often options are ordered, to weight shares with."),
            Optional("standard", new ListShape(OptionShape.Fit), "Fits on every machine of the model."),
            Optional("accepted", new ListShape(Accepted), "Deviations accepted on every machine of the model."),
        ]
    );
}
