using Configurator.Core.Documents;
using Configurator.Core.Engineering;
using Configurator.Core.Model;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Topics;

/// <summary>Records of accepted deviations: new, changed, ending, ended, removed.</summary>
internal static class RecordChanges
{
    /// <summary>So long before its end a record is told of, as when definitions are checked.</summary>
    private const int DaysOfNotice = 30;

    public static IEnumerable<Change> Of(ReviewContext context, ICollection<string> limits)
    {
        var before = Records(context.Before.Catalogue, context.Renames.Of, context.Renames.OfFinding)
            .DistinctBy(record => record.Name)
            .ToDictionary(record => record.Name);
        var after = Records(context.After.Catalogue, machine => machine, finding => finding)
            .DistinctBy(record => record.Name)
            .ToDictionary(record => record.Name);
        if (context.On is null && after.Count > 0)
        {
            limits.Add("without `--date` nothing is said of accepted deviations that have ended or end soon");
        }

        return before
            .Keys.Union(after.Keys)
            .OrderBy(name => name.Machine)
            .ThenBy(name => name.Owner, StringComparer.Ordinal)
            .ThenBy(name => name.Finding, StringComparer.Ordinal)
            .SelectMany(name => Of(before.GetValueOrDefault(name), after.GetValueOrDefault(name), context.On))
            .Select(change => WithFinding(context, change, after.Values));
    }

    /// <summary>What it is that fails and is accepted.</summary>
    private static Change WithFinding(ReviewContext context, Change change, IEnumerable<OwnedRecord> records)
    {
        var record = records.FirstOrDefault(owned => Subject(owned) == change.Subject)?.Record;
        var accepted = context
            .After.Engineered.Configurations.SelectMany(configuration => configuration.Report.Findings)
            .FirstOrDefault(finding => record is not null && finding.Accepted == record);
        return accepted is null ? change : change with { Remark = FindingDiagnostics.Message(accepted) };
    }

    private static string Subject(OwnedRecord owned) => $"`{owned.Name.Finding}` of `{owned.Name.Owner}`";

    private static IEnumerable<Change> Of(OwnedRecord? was, OwnedRecord? now, DateOnly? on)
    {
        if (now is null)
        {
            yield return Tell(RecordKinds.RecordRemoved, was!, isBefore: true) with
            {
                Before = Say(was!),
            };
            yield break;
        }

        if (was is null)
        {
            yield return Tell(RecordKinds.RecordAdded, now) with
            {
                After = Say(now),
            };
        }
        else if (Say(was) != Say(now))
        {
            yield return Tell(RecordKinds.RecordChanged, now) with
            {
                Before = Say(was),
                After = Say(now),
            };
        }

        if (on is { } day && Acceptance.HasEnded(now.Record, day))
        {
            yield return Tell(RecordKinds.RecordEnded, now) with
            {
                After = Say(now),
            };
        }
        else if (on is { } today && now.Record.Until < today.AddDays(DaysOfNotice))
        {
            yield return Tell(RecordKinds.RecordEnding, now) with
            {
                After = Say(now),
            };
        }
    }

    private static Change Tell(ChangeKind kind, OwnedRecord owned, bool isBefore = false) =>
        new(kind, Subject(owned), [new(owned.Record.Finding.Span, isBefore)]) { Machine = owned.Name.Machine };

    private static string Say(OwnedRecord owned) =>
        $"until {DocumentContext.Print(owned.Record.Until)} by {owned.Record.By.In(Text.BaseLanguage)}: {owned.Record.Because.In(Text.BaseLanguage)}";

    private static IEnumerable<OwnedRecord> Records(
        Catalogue catalogue,
        Func<MachineId, MachineId> machineName,
        Func<string, string> findingName
    ) =>
        catalogue
            .Machines.Values.SelectMany(machine =>
                machine.Accepted.Select(record =>
                    (machine.Id.Value, Owner: machineName(machine.Id.Value).Value, record)
                )
            )
            .Concat(
                catalogue.Configurations.SelectMany(published =>
                    published.Accepted.Select(record => (published.Machine, Owner: published.Id.Value.Value, record))
                )
            )
            .Select(one => new OwnedRecord(
                new(machineName(one.Item1), one.Owner, findingName(one.record.Finding.Value)),
                one.record
            ));

    private sealed record OwnedRecord(RecordName Name, AcceptedDeviation Record);

    /// <param name="Owner">A machine or a published configuration.</param>
    private readonly record struct RecordName(MachineId Machine, string Owner, string Finding);
}
