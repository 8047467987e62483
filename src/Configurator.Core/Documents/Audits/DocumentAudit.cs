using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Diagnostics;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering.Ports;

namespace Configurator.Core.Documents.Audits;

/// <summary>
/// Holds the finished lists of a configuration against each other and against what is fitted: every core belongs to a
/// cable, every cable to a port and a device, every fitted device stands once where it belongs, and parts add up.
/// It reads the tables as a reader does, by their cells.
/// </summary>
public static class DocumentAudit
{
    public static ImmutableArray<Diagnostic> Check(Designations names, DocumentSet set) =>
        [.. Faults(names, set).Select(fault => AuditDiagnostics.ListsDisagree(set, fault))];

    private static IEnumerable<string> Faults(Designations names, DocumentSet set) =>
        [
            .. Cables(set),
            .. Cores(names, set),
            .. Devices(names, set),
            .. Ports(names, set),
            .. Parts(names, set),
            .. Labels(set),
            .. PlaceAudit.Faults(names, set),
        ];

    /// <summary>Each cable of the machine once in the schedule, with both ends, and in the list that it is made
    /// from.</summary>
    private static IEnumerable<string> Cables(DocumentSet set)
    {
        var schedule = Column(set, "cable-schedule", 0).ToList();
        var runs = set.Engineered.Report.Cables;
        if (schedule.Count != runs.Length)
        {
            yield return Inv($"the cable schedule has {schedule.Count} rows, the machine {runs.Length} cables");
        }

        foreach (var twice in Repeated(schedule))
        {
            yield return $"cable `{twice}` stands twice in the schedule";
        }

        foreach (var row in Rows(set, "cable-schedule").Where(row => row.Cells[1].IsEmpty || row.Cells[2].IsEmpty))
        {
            yield return $"cable `{row.Cells[0].Text}` has an end that leads nowhere";
        }

        var made = Column(set, "plug-list", 0)
            .Concat(Column(set, "termination-list", 0).Select(CableOf))
            .ToHashSet(StringComparer.Ordinal);
        foreach (var missing in schedule.Where(cable => !made.Contains(cable)))
        {
            yield return $"cable `{missing}` is in the schedule, but in no list that it is made from";
        }

        var plugs = Column(set, "plug-list", 0).ToList();
        var moulded = runs.Count(run => run.Cordset is not null);
        if (plugs.Count != moulded)
        {
            yield return Inv($"the plug list has {plugs.Count} rows, {moulded} cables come ready-made");
        }
    }

    /// <summary>Each core of a cable that is wired by hand, and the shield where it has one.</summary>
    private static IEnumerable<string> Cores(Designations names, DocumentSet set)
    {
        var shielded = set
            .Engineered.Report.Cables.OfType<DeviceCable>()
            .Where(cable => cable is { Cordset: null, Instance.Device.Leads.IsShielded: true })
            .Select(cable => names.CableOf(cable.Instance));
        var shields = Column(set, "termination-list", 0).Where(wire => !IsCore(wire)).Select(CableOf);
        foreach (var missing in shielded.Except(shields, StringComparer.Ordinal))
        {
            yield return $"the shield of `{missing}` is clamped nowhere";
        }

        var schedule = Rows(set, "cable-schedule").ToLookup(row => row.Cells[0].Text, StringComparer.Ordinal);
        foreach (
            var cable in Rows(set, "termination-list")
                .GroupBy(row => CableOf(row.Cells[0].Text), StringComparer.Ordinal)
        )
        {
            if (schedule[cable.Key].FirstOrDefault() is not { } row)
            {
                yield return $"cores of `{cable.Key}` are to be wired, but there is no such cable";
                continue;
            }

            var cores = cable.Count(core => IsCore(core.Cells[0].Text));
            if (row.Cells[6].Text is { Length: > 0 } stated && stated != cores.ToString(CultureInfo.InvariantCulture))
            {
                yield return Inv($"cable `{cable.Key}` has {stated} cores, {cores} are wired");
            }
        }

        foreach (
            var twice in Repeated(
                Column(set, "termination-list", 1).Where(terminal => terminal.Contains(':', StringComparison.Ordinal))
            )
        )
        {
            yield return $"two cores end at terminal `{twice}`";
        }
    }

    /// <summary>Each device outside the box has its own cable.</summary>
    private static IEnumerable<string> Devices(Designations names, DocumentSet set)
    {
        var ends = Column(set, "cable-schedule", 2).ToLookup(name => name, StringComparer.Ordinal);
        foreach (var (instance, home) in set.Engineered.Report.Fitted.Cabled)
        {
            var name = names.Of(instance);
            var expected = home is null ? 0 : 1;
            if (ends[name].Count() != expected)
            {
                yield return Inv($"{ends[name].Count()} cables lead to `{name}`, it has {expected}");
            }
        }
    }

    /// <summary>Each device once in the port map.</summary>
    private static IEnumerable<string> Ports(Designations names, DocumentSet set)
    {
        var mapped = set
            .Tables.SelectMany(pair => pair.Tables)
            .Where(table => table.Id.StartsWith("ports-", StringComparison.Ordinal))
            .SelectMany(table => table.Rows.Select(row => row.Cells[2].Text))
            .Concat(Column(set, "direct", 0))
            .ToLookup(name => name, StringComparer.Ordinal);
        foreach (var (instance, home) in set.Engineered.Report.Fitted.Cabled)
        {
            var name = names.Of(instance);
            var expected = home is null ? 0 : 1;
            if (mapped[name].Count() != expected)
            {
                yield return Inv($"`{name}` stands {mapped[name].Count()} times in the port map");
            }
        }
    }

    private static IEnumerable<string> Parts(Designations names, DocumentSet set)
    {
        var fitted = set.Engineered.Report.Fitted;
        var mounted = fitted
            .Fitted.Select(names.Of)
            .Concat(fitted.Masters.Select(names.Of))
            .Concat(
                fitted.Machine.Sanitation?.Cap is null
                    ? []
                    : fitted
                        .OpenPorts.Select(port => names.Port(fitted.Machine, port))
                        .Concat(fitted.LastMaster is { } last ? names.OutletsOf(last) : [])
            )
            .ToList();
        foreach (var fault in Of("parts-list", mounted).Concat(Of("stock-cables", [.. Column(set, "plug-list", 0)])))
        {
            yield return fault;
        }

        foreach (var both in Listed("parts-list").Intersect(Listed("stock-cables"), StringComparer.Ordinal))
        {
            yield return $"a part and a cable are both called `{both}`";
        }

        IEnumerable<string> Listed(string list) =>
            Rows(set, list).SelectMany(row => row.Cells[4].Text.Split(' ', StringSplitOptions.RemoveEmptyEntries));

        IEnumerable<string> Of(string list, IReadOnlyCollection<string> expected)
        {
            var listed = Listed(list).ToList();
            foreach (var missing in expected.Except(listed, StringComparer.Ordinal))
            {
                yield return $"`{missing}` is not in the list `{list}`";
            }

            foreach (var twice in Repeated(listed))
            {
                yield return $"`{twice}` stands twice in the list `{list}`";
            }

            foreach (var row in Rows(set, list).Where(row => !IsCounted(row)))
            {
                yield return $"`{row.Cells[0].Text}` in the list `{list}` names another number of parts than it counts";
            }
        }
    }

    /// <summary>Parts without a designation, such as caps, are only counted.</summary>
    private static bool IsCounted(Row row) =>
        row.Cells[4].IsEmpty
        || row.Cells[4]
            .Text.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Length.ToString(CultureInfo.InvariantCulture) == row.Cells[1].Text;

    private static IEnumerable<string> Labels(DocumentSet set)
    {
        const int Each = 2;
        var labels = set
            .Pages.SelectMany(page => page.Sections)
            .SelectMany(section => section.Blocks)
            .OfType<LabelSheet>()
            .SelectMany(sheet => sheet.Labels)
            .ToLookup(label => label.Name, StringComparer.Ordinal);
        return Column(set, "cable-schedule", 0)
            .Where(cable => labels[cable].Count() != Each)
            .Select(cable => Inv($"cable `{cable}` has {labels[cable].Count()} labels and two ends"));
    }

    private static IEnumerable<Row> Rows(DocumentSet set, string table) => set.Find(table)?.Rows ?? [];

    private static IEnumerable<string> Column(DocumentSet set, string table, int column) =>
        Rows(set, table).Select(row => row.Cells[column].Text);

    private static IEnumerable<string> Repeated(IEnumerable<string> names) =>
        names.GroupBy(name => name, StringComparer.Ordinal).Where(same => same.Skip(1).Any()).Select(same => same.Key);

    /// <summary>A wire is called after its cable: <c>=MARKEYE-WG1/3</c>.</summary>
    private static string CableOf(string wire) => wire.LastIndexOf('/') is var at and > 0 ? wire[..at] : wire;

    private static bool IsCore(string wire) =>
        int.TryParse(wire[(wire.LastIndexOf('/') + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out _);

    private static string Inv(FormattableString text) => FormattableString.Invariant(text);
}
