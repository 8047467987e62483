using Configurator.Core.Binding.Shapes;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using static Configurator.Core.Binding.Kinds.Common;

namespace Configurator.Core.Binding.Kinds;

/// <summary>What definitions may say of washing.</summary>
internal static class SanitationShape
{
    public static readonly ListShape Ingress = new(
        new PatternShape("an ingress marking such as `IP67`", "^IP[0-9X]{1,2}K?[A-Z]?$|^IP69K$")
    );

    public static readonly RecordShape Finish = new(
        "finish",
        [
            Required("roughness", Of(Dimension.Length), "Surface roughness Ra outside, such as `0.8 um`."),
            Required("radius", Of(Dimension.Length), "Smallest radius of inner corners."),
            Required(
                "fasteners",
                WordShape.Of<Fasteners>(),
                "none, domed (sealed heads) or exposed (threads in view)."
            ),
        ]
    );

    private static readonly RecordShape EnergyCare = new(
        "energy",
        [
            Required("energy", WordShape.Of<Energy>(), "Which."),
            Required("state", WordShape.Of<EnergyState>(), "locked, let-down (vented, cooled, blocked) or kept-on."),
            Optional("why", AText, "Why, or where it is locked, in a few words."),
        ]
    );

    public static readonly RecordShape Care = new(
        "set of washing notes",
        [
            Optional("hazards", new ListShape(WordShape.Of<Hazard>()), "What can hurt someone; each has its caution."),
            Optional("energies", new ListShape(EnergyCare), "Its energies while washing."),
            Optional("cover", new ListShape(AText), "What to cover, one short order each."),
            Optional("never-cover", new ListShape(AText), "What not to cover."),
            Optional("remove", new ListShape(AText), "What to take off or open."),
            Optional("inspect", new ListShape(AText), "Where to look after the wash."),
            Optional("bars", new ListShape(AText), "Raised parts that bars hold, such as `seal heads`."),
            Optional("power-on", new ListShape(AText), "What to do with the main switch on, the air valve shut."),
            Optional("restart", new ListShape(AText), "What to try with the air on and the bars in, before a start."),
            Optional("first-run", new ListShape(AText), "What to see in the first run, every guard shut."),
            Optional(
                "media",
                new ListShape(AText),
                "What stays locked until the machine has run empty, and when it opens."
            ),
        ]
    );

    private static readonly RecordShape Agent = new(
        "agent",
        [
            Required("agent", Id, "Its id."),
            Required("title", AText, "What it is called on the sanitation sheet."),
            Required("kind", WordShape.Of<AgentKind>(), "The sort of agent that resistance tables know."),
            Required("step", WordShape.Of<CleaningStep>(), "The step it is used in; several may serve one."),
            Optional("concentration", Of(Dimension.Share), "In use, such as `2 percent` or `200 ppm`."),
            Required("temperature", Of(Dimension.Temperature), "In use."),
            Optional("contact", Of(Dimension.Time), "How long it stays on."),
            Required("areas", new ListShape(Id), "Areas it is used in."),
            Optional("when", ACondition, "Used only where this holds."),
        ]
    );

    private static readonly RecordShape Change = new(
        "change of washing",
        [
            Required("when", ACondition, "Where this holds,"),
            Required("areas", new ListShape(Id), "these areas"),
            Required("wash", WordShape.Of<WashMethod>(), "are washed in this way."),
        ]
    );

    private static readonly RecordShape Build = new(
        "area as built",
        [
            Required("area", Id, "An area."),
            Optional("stand-off", Of(Dimension.Length), "Of cables and boxes from the surface behind."),
            Optional("cables", Count, "How many cables may end in it."),
        ]
    );

    private static readonly RecordShape Box = new(
        "washing of the box",
        [
            Required("ingress", Ingress, "Ingress markings of the control box, entries fitted."),
            Required("materials", new ListShape(Line), "Its materials that face the washing."),
        ]
    );

    public static readonly RecordShape Sanitation = new(
        "sanitation",
        [
            Optional("cap", ADevice, "Closes every socket without a cable."),
            Required("box", Box, "The control box."),
            Optional("floor", Of(Dimension.Length), "Clear height below the machine."),
            Optional("slope", Of(Dimension.Angle), "Least fall of surfaces that look level."),
            Required("agents", new ListShape(Agent), "Agents that the machine is laid out for."),
            Optional("changes", new ListShape(Change), "What changes how areas are washed."),
            Optional("areas", new ListShape(Build), "How cables and boxes are mounted."),
            Optional("washing", Care, "What the crew has to know of the standard machine."),
        ]
    );
}
