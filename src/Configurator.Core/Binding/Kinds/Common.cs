using System.Collections.Immutable;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Binding.Kinds;

/// <summary>Shapes that several kinds share.</summary>
internal static class Common
{
    public static readonly TextShape AText = new();
    public static readonly IdShape AMachine = new("a machine's id");
    public static readonly IdShape AnOption = new("an option's id");
    public static readonly IdShape ADevice = new("a device's id");
    public static readonly IdShape AStation = new("a station's id");
    public static readonly IdShape Id = new("an id such as `lid-mark-sensor`");
    public static readonly IdShape AWord = new("a word such as `on` or `high-side`", MayBeReserved: true);
    public static readonly LineShape Line = new("a line of text");
    public static readonly FlagShape Flag = new();
    public static readonly DateShape Date = new();
    public static readonly CountShape Count = new(0, 1_000_000);
    public static readonly ConditionShape ACondition = new();
    public static readonly SettingShape Setting = new();
    public static readonly PatternShape Revision = new("a revision such as `B`", "^[A-Z]{1,3}$|^[0-9]{1,3}$");
    public static readonly PatternShape AnInstanceKey = new(
        "`SOURCE/FIT/ORDINAL`, such as `cup-presence/cup-eye/1`",
        "^[a-z0-9-]+/[a-z0-9-]+/[1-9][0-9]{0,2}$"
    );
    public static readonly PatternShape AHome = new(
        "`MASTER:PORT` such as `front:3`, `MASTER:PORT/pin-2` behind a splitter, or `direct`",
        "^[a-z0-9-]+:[1-9][0-9]?(/pin-2)?$|^direct$"
    );

    public static readonly WordShape APortClass = new(
        ImmutableSortedDictionary.CreateRange<string, object>(
            StringComparer.Ordinal,
            [new("A", Model.PortClass.A), new("B", Model.PortClass.B), new("switching", Model.PortClass.Switching)]
        )
    );

    public static readonly ListShape FormerIds = new(Id);

    public static readonly RecordShape Accepted = new(
        "accepted deviation",
        [
            Required("finding", new LineShape("a finding's id"), "The id of the failed finding, as `check` prints it."),
            Required("by", AText, "The role that accepts it."),
            Required("because", AText, "Why it may stay."),
            Required("until", Date, "The last day on which it is accepted."),
        ]
    );

    public static readonly RecordShape ARelease = new(
        "release",
        [Required("by", AText, "The role that approved it."), Required("on", Date, "The day.")]
    );

    public static Field Required(string key, Shape shape, string doc) => new(key, shape, doc) { IsRequired = true };

    public static Field Optional(string key, Shape shape, string doc) => new(key, shape, doc);

    public static QuantityShape Of(Dimension dimension) =>
        new(
            dimension,
            dimension switch
            {
                Dimension.Length => "600 mm",
                Dimension.Current => "350 mA",
                Dimension.Voltage => "24 V",
                Dimension.Power => "12 W",
                Dimension.Resistance => "40 mohm",
                Dimension.Time => "0.4 ms",
                Dimension.Rate => "30 1/min",
                Dimension.Speed => "12 m/min",
                Dimension.Pressure => "6 bar",
                Dimension.FreeAirFlow => "18 l/min",
                Dimension.Temperature => "72 degC",
                Dimension.Mass => "1.2 kg",
                Dimension.CrossSection => "2.5 mm2",
                Dimension.Share => "40 percent",
                Dimension.Angle => "3 deg",
                Dimension.Torque => "0.6 N m",
                _ => "180 EUR",
            }
        );
}
