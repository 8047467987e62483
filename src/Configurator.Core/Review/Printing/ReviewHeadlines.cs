using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Printing;

/// <summary>The review in a few sentences: what a colleague would say across the desk.</summary>
public static class ReviewHeadlines
{
    private const int SentencesMax = 8;

    /// <summary>One for each kind of change that weighs more than a note, then the most telling notes; most expensive
    /// first.</summary>
    public static ImmutableArray<string> Of(ReviewReport report) =>
        [
            .. report
                .Changes.GroupBy(change => change.Kind)
                .Where(kind =>
                    kind.Any(change => change.Level > Diagnostics.Severity.Note) || Telling.Contains(kind.Key)
                )
                .OrderByDescending(kind => kind.Max(change => change.Level))
                .Take(SentencesMax)
                .Select(kind => Of(kind.Key, [.. kind], report)),
            .. StillPossible(report),
        ];

    /// <summary>The good news, where orders were lost.</summary>
    private static IEnumerable<string> StillPossible(ReviewReport report) =>
        report.Published > 0
        && report.Changes.Any(change => change.Kind == OrderKinds.OrdersLost)
        && !report.Changes.Any(change =>
            change.Kind == PublishedKinds.ConfigurationInvalid || change.Kind == PublishedKinds.ConfigurationRemoved
        )
            ? [FormattableString.Invariant($"Every published configuration is still possible: {report.Published}")]
            : [];

    /// <summary>Topics in which nothing changed, as one sentence without full stop; empty where all did.</summary>
    public static string Unchanged(ReviewReport report)
    {
        var topics = Enum.GetValues<ReviewTopic>()
            .Where(topic => !report.On(topic).Any() && !report.Uncompared.Contains(topic))
            .Select(TopicTitles.Unchanged)
            .ToList();
        return topics.Count == 0 ? "" : $"Unchanged: {string.Join("; ", topics)}";
    }

    private static readonly ImmutableHashSet<ChangeKind> Telling =
    [
        OrderKinds.OrdersWon,
        OrderKinds.OptionAdded,
        PublishedKinds.ConfigurationAdded,
        PublishedKinds.FindingMended,
        HomeKinds.BoxCableAdded,
        HardwareKinds.DeviceRedefined,
        HardwareKinds.DeviceChanged,
        SettingKinds.SettingChanged,
        SettingKinds.SanitationChanged,
    ];

    private const int SubjectsMax = 4;

    private static bool NamesSubjects(ChangeKind kind) =>
        kind.Topic == ReviewTopic.Published
        || kind == HardwareKinds.CoresChanged
        || kind == HardwareKinds.SignalsChanged
        || kind == HardwareKinds.DeviceRedefined;

    private static string Share(ChangeKind kind, ReviewReport report) =>
        kind == HomeKinds.HomeMoved && report.Homes > 0 ? FormattableString.Invariant($" of {report.Homes}") : "";

    private static string Of(ChangeKind kind, ImmutableArray<Change> changes, ReviewReport report)
    {
        var machines = changes.Select(change => change.Machine).Distinct().OfType<Model.MachineId>().ToList();
        var on = machines.Count switch
        {
            _ when NamesSubjects(kind) && changes.Length <= SubjectsMax =>
                $" ({string.Join(", ", changes.Select(change => change.Subject).Distinct(StringComparer.Ordinal))})",
            0 => "",
            <= 3 => $" ({string.Join(", ", machines.Select(machine => $"`{machine}`"))})",
            _ => FormattableString.Invariant($" ({machines.Count} machines)"),
        };
        return kind == OrderKinds.OrdersLost || kind == OrderKinds.OrdersWon
            ? $"{kind.Title}: {string.Join("; ", changes.Take(3).Select(change => $"{change.Subject} {change.Remark}"))}"
            : string.Create(CultureInfo.InvariantCulture, $"{kind.Title}: {changes.Length}{Share(kind, report)}{on}");
    }
}
