using Configurator.Core.Binding.Shapes;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using static Configurator.Core.Binding.Kinds.Common;

namespace Configurator.Core.Binding.Kinds;

/// <summary>What an option definition may say, and what a fit may.</summary>
internal static class OptionShape
{
    private static readonly RecordShape Difference = new(
        "difference of a fit",
        [
            Optional("device", ADevice, "The device that this machine takes instead."),
            Optional("stations", new ListShape(AStation), "The stations on this machine."),
        ]
    );

    public static readonly RecordShape Fit = new(
        "fit",
        [
            Required("fit", Id, "Its name for ever, unique on each machine; designations come from it."),
            Required("device", ADevice, "The device that is mounted."),
            Required("stations", new ListShape(AStation), "Where: one instance at each."),
            Required("purpose", AText, "What it does for the machine."),
            Optional(
                "per",
                WordShape.Of<FitPer>(),
                "option: all instances come with it; quantity: the k-th comes when it is taken k times."
            ),
            Optional("when", ACondition, "Fitted only where this holds as well."),
            Optional(
                "wiring",
                WordShape.Of<Wiring>(),
                "port (if left out), direct (own cable into the box) or inside (mounted in the box)."
            ),
            Optional("settings", new ListShape(Id), "Parameters that every recipe must supply."),
            Optional("set", new TableShape(Id, Setting), "Parameters that are the same in every recipe."),
            Optional("position-error", Of(Dimension.Length), "What the position of its signal may be off."),
            Optional(
                "simultaneity",
                Of(Dimension.Share),
                "How much of its actuator current flows at one time with that of others; all of it if left out."
            ),
            Optional("moves-at", Of(Dimension.Speed), "Speed of what it sees; the machine's `speed` if left out."),
            Optional("answer-within", Of(Dimension.Time), "From event to the controller's answer, at most."),
            Optional(
                "fed-by",
                new ListShape(Id),
                "What drives, switches or feeds it from inside the box: the first of these fits that is there."
            ),
            Optional("stop", Id, "The stop function of the machine that it gives."),
            Optional("dropped-by", new ListShape(Id), "Stop functions of the machine that drop its safety outputs."),
            Optional("network", Flag, "It has a network cable of its own from the box, beside its other one."),
            Optional("on", new TableShape(AMachine, Difference), "What differs on some machines."),
        ]
    );

    private static readonly RecordShape Quantity = new(
        "quantity",
        [
            Required("from", new CountShape(1, 60), "Smallest number that can be ordered."),
            Required("to", new CountShape(1, 60), "Largest number that can be ordered."),
            Required("counts", AText, "What is counted."),
        ]
    );

    public static readonly RecordShape Option = new(
        "option",
        [
            Required("option", Id, "Its id; equal to the file's name."),
            Required("title", AText, "What it is called in an order."),
            Required("summary", AText, "One sentence for a salesperson."),
            Optional("formerly", FormerIds, "Ids it had before."),
            Required("offered-on", new ListShape(AMachine), "Machines it can be ordered on."),
            Optional("quantity", Quantity, "How many can be ordered; once if left out."),
            Optional("requires", new ListShape(new RequirementShape()), "Conditions that must hold where it is taken."),
            Optional("not-with", new ListShape(new LinkShape()), "Options that cannot be ordered together with it."),
            Optional("comes-with", new ListShape(new LinkShape()), "Options that are added without asking."),
            Optional("price", Of(Dimension.Money), "List price without its devices."),
            Optional("lead-time", Of(Dimension.Time), "From order to delivery, where this option is the slowest."),
            Optional("released", ARelease, "Who released it for sale; not released if left out."),
            Optional(
                "markets",
                new ListShape(AnOption),
                "Options that stand for the markets it is released for; all markets if left out."
            ),
            Optional("rate-at-most", Of(Dimension.Rate), "Cycles that its station can do, at most."),
            Optional("raises-rate", Of(Dimension.Share), "By how much it raises the rated cycles of the machine."),
            Optional("fits", new ListShape(Fit), "What it mounts."),
            Optional("washing", SanitationShape.Care, "What a cleaning crew has to know of it."),
            Optional(
                "touches-box",
                new ListShape(WordShape.Of<BoxTouch>()),
                "What it honestly adds to the control box."
            ),
        ]
    );
}
