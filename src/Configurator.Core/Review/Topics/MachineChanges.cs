using Configurator.Core.Documents;
using Configurator.Core.Logic;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Topics;

/// <summary>Machines that only one side has.</summary>
internal static class MachineChanges
{
    public static IEnumerable<Change> Of(ReviewContext context)
    {
        var kept = context.Machines.Select(pair => pair.Before.Id.Value).ToHashSet();
        var known = context.Machines.Select(pair => pair.Id).ToHashSet();
        return context
            .Before.Catalogue.Machines.Values.Where(machine => !kept.Contains(machine.Id.Value))
            .Select(machine => new Change(
                OrderKinds.MachineRemoved,
                $"`{machine.Id.Value}`",
                [ReviewPlace.Before(machine.Id.Span)]
            )
            {
                Machine = machine.Id.Value,
                Level = context.After.Errors > 0 ? Diagnostics.Severity.Note : OrderKinds.MachineRemoved.Level,
                Remark = context.After.Errors > 0 ? "or its definition can no longer be read" : "",
                PagesBefore = [PagePaths.Of(machine.Id.Value)],
            })
            .Concat(
                context
                    .After.Catalogue.Machines.Values.Where(machine => !known.Contains(machine.Id.Value))
                    .Select(machine => new Change(
                        OrderKinds.MachineAdded,
                        $"`{machine.Id.Value}`",
                        [ReviewPlace.After(machine.Id.Span)]
                    )
                    {
                        Machine = machine.Id.Value,
                        After = RuleChanges.Count(
                            context
                                .After.Engineered.Proved.Logic.GetValueOrDefault(machine.Id.Value)
                                ?.Logic.Count(PartialOrder.Empty)
                        ),
                        PagesAfter = [PagePaths.Of(machine.Id.Value)],
                    })
            );
    }
}
