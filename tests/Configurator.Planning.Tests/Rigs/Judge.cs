using Configurator.Core.Tests.Engineering.Rigs;

namespace Configurator.Planning.Tests.Rigs;

/// <summary>Says of a whole placement what it comes to, and whether it keeps every rule.</summary>
internal sealed class Judge(RigFacts facts)
{
    /// <summary>Source: the planner's stated rule, a splitter counts as one of the shortest cables.</summary>
    private const long SplitterMillimetres = 2000;

    private readonly RigCurrents _currents = new(facts);

    /// <param name="moves">Homes that are not where they were.</param>
    public PlanValue Value(Placement placement, long moves = 0)
    {
        var (cable, unplaced) = (0L, 0L);
        var ports = new HashSet<(int Group, int Port)>();
        for (var fit = 0; fit < placement.Group.Length; fit++)
        {
            var group = placement.Group[fit];
            if (group == Placement.Nowhere)
            {
                unplaced++;
                continue;
            }

            cable += (facts.Cable[fit, group]!.Value * 1000L) + (placement.IsPinTwo[fit] ? SplitterMillimetres : 0);
            ports.Add((group, placement.Port[fit]));
        }

        var (spare, extensions, orders) = OfMasters(placement, ports);
        return new(unplaced, spare, extensions, moves, facts.Rig.Direct + 2, orders, cable, ports.Count);
    }

    /// <summary>What is wrong with it; null where nothing is.</summary>
    public string? Fault(Placement placement) =>
        OfHomes(placement) ?? OfSharing(placement) ?? (_currents.Keep(placement) ? null : "too much current");

    public bool KeepsBound(Placement placement, Placement? staying = null) => _currents.KeepBound(placement, staying);

    public bool KeepsCurrents(Placement placement) => _currents.Keep(placement);

    /// <summary>May both be at one port: by taking turns, or as two plain signals of one option behind a
    /// splitter?</summary>
    public bool MayPair(int fit, int other, int group) =>
        facts.Rig.Fits[fit].Source == facts.Rig.Fits[other].Source
        && facts.Conditions[fit] == facts.Conditions[other]
        && facts.Pairs[fit, group]
        && facts.Pairs[other, group];

    private (long Spare, long Extensions, long Orders) OfMasters(
        Placement placement,
        HashSet<(int Group, int Port)> ports
    )
    {
        var (spare, extensions, orders) = (0L, 0L, 0L);
        for (var carrier = 0; carrier < facts.Rig.Masters.Length; carrier++)
        {
            var master = facts.Rig.Masters[carrier];
            var given = ports.Count(port => facts.Groups[port.Group].Carrier == carrier);
            spare += Math.Max(0, given - (master.ClassA + master.ClassB - facts.Rig.Spare));
            if (master.IsExtension && given > 0)
            {
                extensions++;
                orders += OrdersWith(placement, carrier);
            }
        }

        return (spare, extensions, orders);
    }

    private int OrdersWith(Placement placement, int carrier)
    {
        var any = new ulong[facts.FittedIn[0].Length];
        for (var fit = 0; fit < placement.Group.Length; fit++)
        {
            if (placement.Group[fit] >= 0 && facts.Groups[placement.Group[fit]].Carrier == carrier)
            {
                for (var word = 0; word < any.Length; word++)
                {
                    any[word] |= facts.FittedIn[fit][word];
                }
            }
        }

        return RigFacts.CountOf(any);
    }

    private string? OfHomes(Placement placement)
    {
        for (var fit = 0; fit < placement.Group.Length; fit++)
        {
            var group = placement.Group[fit];
            if (group == Placement.Nowhere)
            {
                continue;
            }

            if (facts.Cable[fit, group] is null)
            {
                return $"{facts.Rig.Fits[fit].Key} cannot live at {facts.Groups[group]}";
            }

            var hub = facts.Groups[group].Carrier - facts.Rig.Masters.Length;
            if (hub >= 0 && placement.Group[facts.Hubs[hub]] == Placement.Nowhere)
            {
                return $"{facts.Rig.Fits[fit].Key} is at a hub that has no port";
            }
        }

        return null;
    }

    private string? OfSharing(Placement placement)
    {
        for (var fit = 0; fit < placement.Group.Length; fit++)
        {
            var (group, tenants) = (placement.Group[fit], Tenants(placement, fit));
            var beside = group < 0 ? [] : tenants.Where(other => facts.Together(fit, other)).ToList();
            if (beside.Count > 1)
            {
                return $"{facts.Rig.Fits[fit].Key} has {beside.Count} beside it";
            }

            if (
                beside.Count == 1
                && (!MayPair(fit, beside[0], group) || placement.IsPinTwo[fit] == placement.IsPinTwo[beside[0]])
            )
            {
                return $"{facts.Rig.Fits[fit].Key} cannot share with {facts.Rig.Fits[beside[0]].Key}";
            }
        }

        return null;
    }

    private static IEnumerable<int> Tenants(Placement placement, int fit) =>
        Enumerable
            .Range(0, placement.Group.Length)
            .Where(other =>
                other != fit
                && placement.Group[other] == placement.Group[fit]
                && placement.Port[other] == placement.Port[fit]
            );
}
