using Configurator.Core.Documents.Blocks;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Documents;

/// <summary>What each reader expects to find stands in a column of the documents.</summary>
/// <remarks>Source: tests/Data/reference/document_set.csv (documents of the trade after IEC 60204-1 clause 17, IEC 61082 and
/// IEC 62027; common practice). What is left out is named with its reason.</remarks>
public class DocumentSetTests
{
    /// <summary>Where a reader finds it: table and column of the demonstration. A table whose id ends with a dash stands for
    /// all that start so.</summary>
    private static readonly Dictionary<string, string[]> Found = new(StringComparer.Ordinal)
    {
        ["configuration sheet"] =
        [
            "options: order / Option", "excluded combinations: excluded / Option", "open points: all-findings / Verdict",
            "revision: history / Revision", "date: history / Date", "approvals: history / By",
        ],
        ["bill of materials"] =
        [
            "item: parts-list / Part", "reference designation: parts-list / Designation", "quantity: parts-list / Quantity",
            "function: safety-devices / Purpose", "rating: parts-list / Part", "location: parts-list / Location",
        ],
        ["I/O list"] =
        [
            "tag: signals / Tag", "description: signals / Purpose", "type: signals / Type", "signal: signals / Signal",
            "range: signals / Range", "module: signals / Port", "channel: signals / Port", "address: signals / Octet",
            "fail state: port-settings / When communication is lost",
        ],
        ["IO-Link port map"] =
        [
            "master: port-settings / Port", "port: port-settings / Port", "class: ports- / Class", "device: ports- / Device",
            "designation: ports- / Designation", "mode: ports- / Mode", "COM: ports- / Mode", "PD in/out octets: ports- / Process data in/out",
            "cycle: port-settings / Port cycle", "data storage: port-settings / Backup and restore", "pin-2 use: port-settings / Pin 2",
        ],
        ["process data map"] =
        [
            "device: signals / Designation", "octet: signals / Octet", "bit offset: signals / Bit offset", "length: signals / Type",
            "type: signals / Type", "scale: signals / One count", "unit: signals / Unit", "meaning: signals / Signal",
        ],
        ["cable schedule"] =
        [
            "cable no.: cable-schedule / Cable", "from: cable-schedule / From item", "to: cable-schedule / To item",
            "cores: cable-schedule / Cores", "size: cable-schedule / Cross-section", "length: cable-schedule / Length",
            "connectors: cable-schedule / Connectors", "jacket: cable-schedule / Jacket", "colour map: cable-schedule / Core marks",
            "zone: cable-schedule / Area",
        ],
        ["terminal and connector list"] =
        [
            "strip/plug: termination-list / At the box", "pin: termination-list / At the device", "core: termination-list / Wire",
            "colour: termination-list / Colour", "signal: termination-list / Carries", "potential: termination-list / Leads on to",
            "target: termination-list / To item",
        ],
        ["wire and label list"] =
        [
            "label text: plug-list / Label", "designation: plug-list / Cable", "position: plug-list / From", "quantity: small-parts / Quantity",
        ],
        ["power budget"] =
        [
            "supply: circuits / Supply", "load: trunk-sensors / Master", "steady A: trunk-sensors / Current", "reserve: limit-bars / Margin",
            "inrush A: limit-bars / Value", "breaker: circuits / Protection", "worst voltage: trunk-sensors / Voltage there",
        ],
        ["voltage-drop sheet"] =
        [
            "segment: trunk-sensors / Master", "length: trunk-sensors / Trunk cable to it", "size: cable-schedule / Cross-section",
            "current: trunk-sensors / Current", "voltage at device: trunk-sensors / Voltage there", "drop: limit-bars / Margin",
            "verdict: all-findings / Verdict",
        ],
        ["hygiene and sanitation sheet"] =
        [
            "zone: parts / Area", "material: parts / Stated", "IP: parts / Stated", "cleaner: agents / Agent", "temperature: agents / In use",
        ],
        ["lockout points list"] =
        [
            "energy: energies / Energy", "method: energies / State", "location: energies / Where, why", "device: energies / Where, why",
            "verification: energies / Where, why",
        ],
        ["acceptance checklist"] =
        [
            "test: test-ports / Test", "method: test-ports / Measure or look", "limit: test-ports / Expected", "measured: test-ports / Measured",
            "signed: test-ports / Name, date",
        ],
        ["change record"] =
        [
            "revision: history / Revision", "date: history / Date", "author: history / By", "reason: history / Change", "approvals: history / By",
        ],
    };

    /// <summary>No column of a table, and why.</summary>
    private static readonly Dictionary<string, string> Elsewhere = new(StringComparer.Ordinal)
    {
        ["configuration sheet: model"] = "the trail above each page leads to the machine",
        ["bill of materials: spare class"] = "nobody states which parts wear",
        ["I/O list: normal state"] = "devices do not state it",
        ["wire and label list: material"] = "the workshop's printer decides",
        ["power budget: diversity"] = "of each fit, in its definition; budgets are computed with it",
        ["hygiene and sanitation sheet: pressure"] = "steps of the sanitation notes, in words",
        ["hygiene and sanitation sheet: what to cover"] = "lists of the sanitation notes",
        ["hygiene and sanitation sheet: sequence"] = "numbered steps of the sanitation notes",
        ["hygiene and sanitation sheet: re-assembly check"] = "steps of the sanitation notes",
        ["change record: documents touched"] = "`review` tells them",
    };

    /// <summary>Documents of other subjects than one configuration's wiring, signals and cleaning.</summary>
    private static readonly string[] OfOtherSubjects =
    [
        "option compatibility report", "parameter table", "heat balance", "pneumatic list", "utility requirement sheet", "floor-space sheet",
        "retrofit plan", "spare-parts list", "as-built confirmation",
    ];

    [Fact]
    public void Every_column_that_a_reader_expects_is_found_or_named_as_missing() => Assert.Equal(
        CheckData.Rows("reference/document_set.csv").Where(row => !OfOtherSubjects.Contains(row["document"]))
            .SelectMany(row => row["columns_expected"].Split(", ").Select(column => $"{row["document"]}: {column}"))
            .Order(StringComparer.Ordinal),
        Found.SelectMany(document => document.Value.Select(place => $"{document.Key}: {place.Split(": ")[0]}")).Concat(Elsewhere.Keys)
            .Order(StringComparer.Ordinal));

    [Fact]
    public void Every_column_that_is_named_exists_and_holds_something()
    {
        var tables = DemoCatalogue.Documents.Sets.SelectMany(set => set.Tables).SelectMany(pair => pair.Tables).ToList();
        Assert.All(Found.Values.SelectMany(places => places).Select(place => place.Split(": ", 2)[1].Split(" / ")), place => Assert.Contains(
            tables.Where(table => table.Id == place[0] || (place[0].EndsWith('-') && table.Id.StartsWith(place[0], StringComparison.Ordinal))),
            table => HoldsSomething(table, place[1])));
    }

    private static bool HoldsSomething(Table table, string title) =>
        table.Columns.Select((column, i) => (column.Title, i)).Where(column => column.Title == title)
            .Any(column => table.Rows.Any(row => !row.Cells[column.i].IsEmpty));
}
