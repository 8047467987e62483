using Configurator.Core.Tests.Engineering.Rigs;

namespace Configurator.Planning.Tests.Rigs;

/// <summary>Tries every way to give the fits ports; ports of one group that nobody had so far are alike, so the next
/// free one stands for all.</summary>
internal sealed class BruteForce
{
    private readonly RigFacts _facts;
    private readonly Judge _judge;
    private readonly Placement? _old;
    private readonly bool _mayMove;
    private readonly Placement _now;
    private readonly int[] _order;
    private readonly List<Seat>[] _seats;
    private int _unplaced;
    private int _unplacedMax;

    /// <param name="old">Homes so far; null to plan from scratch.</param>
    /// <param name="mayMove">Homes so far may be given up.</param>
    public BruteForce(RigFacts facts, Placement? old, bool mayMove)
    {
        (_facts, _judge, _old, _mayMove) = (facts, new(facts), old, mayMove);
        _now = new(facts.Rig.Fits.Length);
        // Hubs stand first: what others may join.
        _order = [.. Enumerable.Range(0, facts.Rig.Fits.Length).OrderBy(fit => facts.Rig.Fits[fit].Gadget != Gadget.Hub)];
        _seats = [.. facts.Groups.Select(_ => new List<Seat>())];
    }

    /// <summary>The best plan that keeps the rule on currents.</summary>
    public PlanValue? Best { get; private set; }

    /// <summary>The best plan that keeps the bound on currents.</summary>
    public PlanValue? BestWithinBound { get; private set; }

    public long Leaves { get; private set; }

    public BruteForce Run()
    {
        // As few as possible without a port is what counts first.
        for (_unplacedMax = 0; BestWithinBound is null; _unplacedMax++)
        {
            Decide(0);
        }

        return this;
    }

    private bool HasOld(int fit) => _old is not null && _old.Group[fit] != Placement.Nowhere;

    /// <summary>First who keeps the home that there is.</summary>
    private void Decide(int fit)
    {
        if (fit == _now.Group.Length)
        {
            Place(0);
            return;
        }

        if (HasOld(fit))
        {
            Keep(fit);
        }

        if (!HasOld(fit) || _mayMove)
        {
            Decide(fit + 1);
        }
    }

    private void Keep(int fit)
    {
        var (group, port) = (_old!.Group[fit], _old.Port[fit]);
        var seat = _seats[group].Find(seat => seat.Port == port);
        if (seat is null)
        {
            seat = new(port, IsOld: true);
            _seats[group].Add(seat);
        }

        Sit(fit, group, seat, _old.IsPinTwo[fit], () => Decide(fit + 1));
        if (seat.Tenants.Count == 0)
        {
            _seats[group].Remove(seat);
        }
    }

    /// <summary>Then where all others go.</summary>
    private void Place(int position)
    {
        if (position == _order.Length)
        {
            Weigh();
            return;
        }

        var fit = _order[position];
        if (_now.Group[fit] != Placement.Nowhere)
        {
            Place(position + 1);
            return;
        }

        for (var group = 0; group < _facts.Groups.Length; group++)
        {
            if (_facts.Cable[fit, group] is not null && HubHasPort(group))
            {
                Share(fit, group, position);
                OpenOne(fit, group, position);
            }
        }

        Leave(position);
    }

    private void Share(int fit, int group, int position)
    {
        foreach (var seat in _seats[group].ToList())
        {
            var beside = seat.Tenants.FindAll(other => _facts.Together(fit, other));
            if (beside.Count == 0)
            {
                Sit(fit, group, seat, isPinTwo: false, () => Place(position + 1));
            }
            else if (!seat.IsOld && beside is [var partner] && _judge.MayPair(fit, partner, group))
            {
                Sit(fit, group, seat, isPinTwo: true, () => Place(position + 1));
            }
        }
    }

    private void OpenOne(int fit, int group, int position)
    {
        if (_seats[group].Count < _facts.Groups[group].Ports)
        {
            var seat = new Seat(NewPort(group), IsOld: false);
            _seats[group].Add(seat);
            Sit(fit, group, seat, isPinTwo: false, () => Place(position + 1));
            _seats[group].Remove(seat);
        }
    }

    /// <summary>A number that no other port has; which one does not matter.</summary>
    private int NewPort(int group) => 1000 + _seats[group].Count;

    private void Leave(int position)
    {
        if (_unplaced < _unplacedMax)
        {
            _unplaced++;
            Place(position + 1);
            _unplaced--;
        }
    }

    private void Sit(int fit, int group, Seat seat, bool isPinTwo, Action next)
    {
        seat.Tenants.Add(fit);
        _now.Put(fit, group, seat.Port, isPinTwo);
        next();
        _now.Put(fit, Placement.Nowhere, 0, isPinTwo: false);
        seat.Tenants.Remove(fit);
    }

    private bool HubHasPort(int group) =>
        _facts.Groups[group].Carrier - _facts.Rig.Masters.Length is var hub
        && (hub < 0 || _now.Group[_facts.Hubs[hub]] != Placement.Nowhere);

    private void Weigh()
    {
        if (_now.Group.Any(group => group != Placement.Nowhere && !HubHasPort(group)))
        {
            return;
        }

        Leaves++;
        var value = _judge.Value(_now, Moves());
        if (value.IsBetterThan(Best) && _judge.KeepsCurrents(_now))
        {
            Best = value;
        }

        if (value.IsBetterThan(BestWithinBound) && _judge.KeepsBound(_now, _mayMove ? null : _old))
        {
            BestWithinBound = value;
        }
    }

    private int Moves() =>
        _old is null
            ? 0
            : Enumerable
                .Range(0, _now.Group.Length)
                .Count(fit =>
                    HasOld(fit) && (_now.Group[fit] != _old.Group[fit] || _now.Port[fit] != _old.Port[fit])
                );

    private sealed record Seat(int Port, bool IsOld)
    {
        public List<int> Tenants { get; } = [];
    }
}
