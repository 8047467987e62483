using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Planning;

/// <summary>Gives the fits of a draft their ports: what is kept stays, the rest goes to the free ports in the order of
/// the keys, so that the same draft always gives the same plan.</summary>
internal static class PortNumbering
{
    public static ImmutableSortedDictionary<InstanceKey, Home> Homes(PlanProblem problem, PlanDraft draft)
    {
        var homes = ImmutableSortedDictionary.CreateBuilder<InstanceKey, Home>();
        foreach (var item in draft.Kept)
        {
            homes[item.Key] = item.Old!.Value;
        }

        foreach (var joined in draft.Joined)
        {
            homes[joined.Item.Key] = new(joined.Port.Group.Name, joined.Port.Port);
        }

        foreach (var group in problem.Groups)
        {
            var taken = homes.Values.Where(home => home.Master == group.Name).Select(home => home.Port).ToHashSet();
            var free = new Queue<int>(group.Ports.Where(port => !taken.Contains(port)));
            foreach (
                var tenants in draft
                    .Placed.Where(shared => shared.Group == group)
                    .SelectMany(shared => Columns(problem, shared))
                    .OrderBy(column => column.Min(tenant => tenant.Item.Key))
            )
            {
                var port = free.Dequeue();
                foreach (var (item, isPinTwo) in tenants)
                {
                    homes[item.Key] = new(group.Name, port, isPinTwo);
                }
            }
        }

        return homes.ToImmutable();
    }

    /// <summary>The ports of fits that take turns, each with its tenants: of each condition one, or two behind a
    /// splitter.</summary>
    private static IEnumerable<List<(PlanItem Item, bool IsPinTwo)>> Columns(PlanProblem problem, SharedPorts shared)
    {
        var columns = new List<List<(PlanItem, bool)>>();
        foreach (var share in shared.Items.GroupBy(item => item.Condition))
        {
            var column = 0;
            bool CanPair(PlanItem item) => problem.CanPair(item, shared.Group);
            foreach (var tenants in Seats([.. share.OrderBy(item => item.Key)], shared.Ports, CanPair))
            {
                if (column == columns.Count)
                {
                    columns.Add([]);
                }

                columns[column++].AddRange(tenants);
            }
        }

        return columns;
    }

    /// <summary>One a port, and only as many pairs as are needed to get by with so many ports.</summary>
    private static IEnumerable<(PlanItem Item, bool IsPinTwo)[]> Seats(
        List<PlanItem> share,
        int ports,
        Predicate<PlanItem> canPair
    )
    {
        var pairs = share.Count - ports;
        var paired = new HashSet<PlanItem>();
        foreach (var item in share)
        {
            if (paired.Contains(item))
            {
                continue;
            }

            if (pairs > 0 && canPair(item) && Partner(item, share, paired, canPair) is { } partner)
            {
                pairs--;
                paired.UnionWith([item, partner]);
                yield return [(item, false), (partner, true)];
            }
            else
            {
                yield return [(item, false)];
            }
        }
    }

    private static PlanItem? Partner(
        PlanItem item,
        List<PlanItem> share,
        HashSet<PlanItem> paired,
        Predicate<PlanItem> canPair
    ) =>
        share.Find(other =>
            other.Key.CompareTo(item.Key) > 0
            && other.Key.Source == item.Key.Source
            && !paired.Contains(other)
            && canPair(other)
        );
}
