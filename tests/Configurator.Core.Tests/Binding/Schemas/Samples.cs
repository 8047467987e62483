using System.Collections.Immutable;

namespace Configurator.Core.Tests.Binding.Schemas;

/// <summary>Values as they stand in definitions, each right somewhere and wrong elsewhere.</summary>
internal static class Samples
{
    public static ImmutableArray<string> Values { get; } =
    [
        // words, ids, codes
        "lid", "lid-mark-sensor", "s2", "Lid", "lid_mark", "-lid", "lid-", "lid--mark", "2-lids", "número",
        new('a', 64), new('a', 65), "A", "B", "AB", "ABC", "ABCD", "BX", "BN", "b", "P4", "P4-101", "P4-", "P4_1",
        "IP67", "IP69K", "IP6X", "ip67", "en", "no", "eng", "true", "false", "yes", "on", "none", "None", "direct",
        "standard", "switching", "io-link", "com3", "com4", "uint16", "exactly-one", "food", "foam", "option", "port",
        "quantity", "iec-81346", "flat", "metric", "both", "sensor", "drive", "unused", "supply", "sensor-supply",
        "40 mohm", "3 deg", "caustic", "foam-and-scrub", "blades", "electricity", "locked", "m12-a-4", "m12-z-4",
        "m8-3", "terminals", "BooleanT", "angled", "last-orders", "https://docs.example.org/", "http://a.example:8080/m/", "ftp://a.example/", "front:3", "breakers/1:3", "breakers/0:3", "front:0", "front:12", "front:123", "cup-presence/cup-eye/1", "mark-eye/2",

        // numbers and dates
        "0", "1", "7", "12", "007", "99", "100", "999", "1000", "32767", "65535", "65536", "1000000", "1000001", "-1",
        "-32768", "-32769", "99999999999", "0.5", "1.5", "-0.5", ".5", "1e5", "2026", "2026-10-02", "2026-13-02",
        "2026-10-32", "02.10.2026", "2026-1-2",

        // nothing, quoted, over several lines
        "", "\"\"", "\" \"", "\"\\t\"", "\"2026\"", "\"true\"", "'600 mm'", "\"600 mm \"", "|-\n  two\n  lines",

        // quantities
        "600 mm", "0 mm", "0.5 mm", "-3 mm", "600mm", "600  mm", "600 MM", ".5 mm", "5. mm", "+5 mm", "1e3 mm", "mm",
        "1,5 mm", "1 2 mm", "350 mA", "1.2 A", "24 V", "12 W", "0.4 ms", "15 d", "30 1/min", "30 min", "12 m/min",
        "6 bar", "87 psi", "18 l/min", "72 degC", "-4 degF", "-5 K", "1.2 kg", "2.5 mm2", "18 AWG", "11 AWG", "0 AWG",
        "18.5 AWG", "-18 AWG", "40 percent", "-40 percent", "40 %", "0.6 N m", "0.6 Nm", "180 EUR", "-180 EUR", "180 USD", "180 GBP",

        // lists
        "[]", "[lid]", "[lid, film]", "[Lid]", "[1]", "[[lid]]", "[600 mm]", "[BN, BU]", "[IP67]", "[drive]",
        "[{all: [lid]}]", "[{option: lid, because: So it is}]",

        // maps of languages, tables
        "{}", "{en: Lid}", "{en: Lid, es: Tapa}", "{english: Lid}", "{EN: Lid}", "{en: 2026}", "{en: true}",
        "{en: [Lid]}", "{en: ''}", "{lid: 1}", "{lid: 101}", "{lid: 600 mm}", "{a/b/1: direct}", "{a/b/1: front:3}",
        "{a/b: direct}", "{mark-eye/2: {threshold: 40 percent}}", "{mark-eye: {threshold: [1]}}", "{Eye: {dwell: 1}}",

        // conditions
        "{option: lid}", "{option: Lid}", "{option: [lid]}", "{at-least: 2}", "{because: So it is}",
        "{option: lid, at-least: 2}", "{option: lid, at-least: -1}", "{option: lid, at-least: two}", "{all: lid}",
        "{option: lid, at-most: 0}", "{option: lid, exactly: 2}", "{option: lid, all: [lid]}", "{all: []}",
        "{option: lid, because: So it is}", "{option: lid, because: {en: So}}", "{option: lid, because: {english: So}}",
        "{option: lid, at-least: 2, because: So it is}", "{option: lid, becuase: So it is}", "{all: [lid, film]}",
        "{all: [lid], at-least: 2}", "{any: [lid, [film, foil]]}", "{none: [{any: [lid]}, film]}",
        "{all: [lid], none: [film]}", "{all: [lid], because: So it is}", "{all: [{option: lid, because: So it is}]}",
    ];

    public static ImmutableArray<string> Keys { get; } =
    [
        "lid", "lid-mark", "Lid", "lid_mark", "-lid", "lid-", "2-lids", "12", new('a', 64), new('a', 65), "mark-eye/2",
        "mark-eye/0", "mark-eye/1000", "a/b/1", "a/b/01", "a/b", "a/b/c/1", "direct/b/1", "en", " ", "lid mark",
    ];
}
