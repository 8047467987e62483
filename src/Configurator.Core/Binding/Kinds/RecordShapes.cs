using System.Collections.Immutable;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Model;
using static Configurator.Core.Binding.Kinds.Common;

namespace Configurator.Core.Binding.Kinds;

/// <summary>What the records of a machine may say: port plan, configurations, recipes, delivered machines; and the
/// site.</summary>
internal static class RecordShapes
{
    private static readonly TableShape Homes = new(AnInstanceKey, AHome);
    private static readonly TableShape Quantities = new(AnOption, new CountShape(1, 60));

    private static readonly RecordShape Step = new(
        "revision step",
        [
            Required("revision", Revision, "The revision."),
            Required("on", Date, "The day."),
            Required("by", AText, "The role that made it."),
            Required("change", AText, "What changed."),
        ]
    );

    private static readonly ListShape Numbers = new(new CountShape(1, 1000));

    private static readonly RecordShape Box = new(
        "set of numbers in the box",
        [
            .. Enum.GetValues<BoxPoint>()
                .Select(point =>
                    Optional(
                        BoxPointNames.Key(point),
                        Numbers,
                        $"Numbers of each {BoxPointNames.Noun(point)} it takes."
                    )
                ),
        ]
    );

    public static readonly RecordShape PortPlan = new(
        "port plan",
        [
            Required("port-plan", Id, "The machine."),
            Required("homes", Homes, "The home of every instance: one line each."),
            Optional(
                "box",
                new TableShape(AnInstanceKey, Box),
                "Inputs, outputs and ports of the box that instances take: one line each."
            ),
        ]
    );

    public static readonly RecordShape Configuration = new(
        "configuration",
        [
            Required("configuration", Id, "Its id; equal to the file's name."),
            Required("machine", AMachine, "The machine it is for."),
            Required("title", AText, "What it is called."),
            Required(
                "document",
                new PatternShape("a document number such as `P4-101`", "^[A-Z][A-Z0-9]*(-[A-Z0-9]+)*$"),
                "Its document number, used once."
            ),
            Required("options", new ListShape(AnOption), "Options ordered, without those that come with them."),
            Optional("quantities", Quantities, "How many, where more than one."),
            Optional("recipes", new ListShape(Id), "Recipes it must run."),
            Required("revision", Revision, "Its revision."),
            Optional("released", ARelease, "Who approved this revision; a draft if left out."),
            Optional("history", new ListShape(Step), "Earlier revisions, oldest first."),
            Optional("accepted", new ListShape(Accepted), "Deviations accepted here."),
        ]
    );

    public static readonly RecordShape Recipe = new(
        "recipe",
        [
            Required("recipe", Id, "Its id; equal to the file's name."),
            Required("machine", AMachine, "The machine it is for."),
            Required("title", AText, "What it is called."),
            Optional("product", AText, "The product."),
            Optional("film", AText, "Lid film or pouch."),
            Required(
                "settings",
                new TableShape(
                    new PatternShape("a fit, or `FIT/ORDINAL` such as `mark-eye/2`", "^[a-z0-9-]+(/[1-9][0-9]{0,2})?$"),
                    new TableShape(Id, Setting)
                ),
                "Values by fit and parameter."
            ),
        ]
    );

    public static readonly RecordShape AsBuilt = new(
        "as-built record",
        [
            Required("as-built", Id, "Its id; equal to the file's name."),
            Required("machine", AMachine, "The model."),
            Required("title", AText, "What it is called."),
            Required("delivered", Date, "The day of delivery."),
            Required("options", new ListShape(AnOption), "Options delivered."),
            Optional("quantities", Quantities, "How many, where more than one."),
            Required("homes", Homes, "Where each cable really is."),
        ]
    );

    private static readonly WordShape DesignationWords = new(
        ImmutableSortedDictionary.CreateRange<string, object>(
            StringComparer.Ordinal,
            [new("iec-81346", DesignationStyle.Iec81346), new("flat", DesignationStyle.Flat)]
        )
    );

    public static readonly RecordShape Site = new(
        "site",
        [
            Required("site", Id, "Its id."),
            Required("title", AText, "Title of the site."),
            Optional(
                "languages",
                new ListShape(new PatternShape("a language code such as `en`", "^[a-z]{2}$")),
                "Languages of the documents; the first is the main one."
            ),
            Optional("designations", DesignationWords, "iec-81346 or flat tags."),
            Optional("units", WordShape.Of<UnitStyle>(), "Units printed."),
            Optional(
                "base-address",
                new PatternShape(
                    "an address such as `https://docs.example.org/machines/`",
                    "^https?://[a-z0-9.-]+(:[0-9]{1,5})?(/[A-Za-z0-9._~-]+)*/$"
                ),
                "Where the site will stand, for the codes on labels; labels have none if left out."
            ),
        ]
    );
}
