using System.Collections.Immutable;
using Configurator.Core.Tests.Engineering.Rigs;

namespace Configurator.Planning.Tests.Rigs;

/// <summary>Adds up currents twice: in every configuration, which is the rule; and after the planner's stated bound, of
/// conditions that never hold together only the largest, which is safe and may be too strict.</summary>
internal sealed class RigCurrents
{
    private const int NoLimit = int.MaxValue;
    private readonly RigFacts _facts;
    private readonly ImmutableArray<ImmutableArray<int>> _setOf;
    private readonly ImmutableArray<ImmutableArray<int>> _setOfExtra;

    public RigCurrents(RigFacts facts)
    {
        _facts = facts;
        _setOf = [.. Enumerable.Range(0, facts.Carriers).Select(carrier => Cover(carrier, Own))];
        _setOfExtra = [.. Enumerable.Range(0, facts.Carriers).Select(carrier => Cover(carrier, Extra))];
    }

    public bool Keep(Placement placement)
    {
        for (var i = 0; i < _facts.Configurations.Length; i++)
        {
            if (!KeepIn(placement, i))
            {
                return false;
            }
        }

        return true;
    }

    /// <param name="staying">Homes that cannot change: what they come to by themselves is no fault, but then nothing
    /// that draws may join them.</param>
    public bool KeepBound(Placement placement, Placement? staying)
    {
        for (var carrier = 0; carrier < _facts.Carriers; carrier++)
        {
            var master = carrier;
            if (
                IsOver(placement, staying, carrier, _setOf[carrier], fit => Safe(fit, master), Limit(placement, carrier))
                || IsOver(placement, staying, carrier, _setOfExtra[carrier], Extra, _facts.MasterOf(carrier)?.ExtraInAll)
            )
            {
                return false;
            }
        }

        return true;
    }

    private bool IsOver(
        Placement placement,
        Placement? staying,
        int carrier,
        ImmutableArray<int> setOf,
        Func<int, int> draw,
        int? limit
    )
    {
        int AllDrawn(Placement homes) => At(homes, carrier).Sum(draw);
        return staying is not null && Bound(staying, carrier, setOf, draw) > limit
            ? AllDrawn(placement) > AllDrawn(staying)
            : Bound(placement, carrier, setOf, draw) > limit;
    }

    /// <summary>A hub hands on no more than its port gives it.</summary>
    private int? Limit(Placement placement, int carrier)
    {
        if (_facts.MasterOf(carrier) is { } master)
        {
            return master.InAll;
        }

        var hub = _facts.Hubs[carrier - _facts.Rig.Masters.Length];
        return placement.Group[hub] is var group and >= 0
            ? Math.Min(GadgetFacts.HubInAll, PerPort(group) - _facts.Rig.Fits[hub].Facts.Current)
            : GadgetFacts.HubInAll;
    }

    private int PerPort(int group) => _facts.MasterOf(_facts.Groups[group].Carrier)!.PerPort;

    private bool KeepIn(Placement placement, int configuration)
    {
        Span<int> drawn = stackalloc int[_facts.Carriers];
        Span<int> extra = stackalloc int[_facts.Carriers];
        var masters = _facts.Rig.Masters.Length;
        for (var fit = 0; fit < placement.Group.Length; fit++)
        {
            if (
                placement.Group[fit] is var group and >= 0
                && (_facts.FittedIn[fit][configuration / 64] >> (configuration % 64) & 1) == 1
            )
            {
                var carrier = _facts.Groups[group].Carrier;
                drawn[carrier] += Own(fit);
                extra[carrier] += Extra(fit);
                if (carrier >= masters && placement.Group[_facts.Hubs[carrier - masters]] is var at and >= 0)
                {
                    drawn[_facts.Groups[at].Carrier] += Own(fit);
                }
            }
        }

        for (var carrier = 0; carrier < drawn.Length; carrier++)
        {
            if (drawn[carrier] > Limit(placement, carrier) || extra[carrier] > _facts.MasterOf(carrier)?.ExtraInAll)
            {
                return false;
            }
        }

        return true;
    }

    private int Own(int fit) => _facts.Rig.Fits[fit].Facts.Current;

    private int Extra(int fit) => _facts.Rig.Fits[fit].Facts.Extra;

    /// <summary>A hub with all that may hang on it, as far as one port can feed that.</summary>
    private int Safe(int fit, int carrier) =>
        _facts.Rig.Fits[fit].Gadget == Gadget.Hub
            ? Math.Min(Own(fit) + GadgetFacts.HubInAll, _facts.MasterOf(carrier)?.PerPort ?? NoLimit)
            : Own(fit);

    private int Bound(Placement placement, int carrier, ImmutableArray<int> setOf, Func<int, int> draw) =>
        At(placement, carrier)
            .GroupBy(fit => _facts.Conditions[fit])
            .GroupBy(same => setOf[same.Key], same => same.Sum(draw))
            .Sum(set => set.Key < 0 ? 0 : set.Max());

    private IEnumerable<int> At(Placement placement, int carrier) =>
        Enumerable
            .Range(0, placement.Group.Length)
            .Where(fit => placement.Group[fit] >= 0 && _facts.Groups[placement.Group[fit]].Carrier == carrier);

    /// <summary>For each condition its set; those that draw there are taken in order, each into the first set of
    /// which it never meets a member.</summary>
    private ImmutableArray<int> Cover(int carrier, Func<int, int> draw)
    {
        var count = _facts.Rig.Fits.Length;
        int[] setOf = [.. Enumerable.Repeat(-1, count)];
        var sets = new List<List<int>>();
        foreach (
            var fit in Enumerable
                .Range(0, count)
                .Where(fit => draw(fit) > 0 && CanLive(fit, carrier))
                .DistinctBy(fit => _facts.Conditions[fit])
                .OrderBy(fit => _facts.Conditions[fit])
        )
        {
            var set = sets.FindIndex(set => set.TrueForAll(other => !_facts.Together(fit, other)));
            if (set < 0)
            {
                set = sets.Count;
                sets.Add([]);
            }

            sets[set].Add(fit);
            setOf[_facts.Conditions[fit]] = set;
        }

        return [.. setOf];
    }

    private bool CanLive(int fit, int carrier) =>
        Enumerable
            .Range(0, _facts.Groups.Length)
            .Any(group => _facts.Groups[group].Carrier == carrier && _facts.Cable[fit, group] is not null);
}
