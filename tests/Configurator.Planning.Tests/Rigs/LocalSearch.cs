using Configurator.Core.Tests.Definitions;
using Configurator.Core.Tests.Engineering.Rigs;

namespace Configurator.Planning.Tests.Rigs;

/// <summary>Improves a plan at random: one fit goes elsewhere, or two change places. Keeps what is no worse.</summary>
internal sealed class LocalSearch(RigFacts facts, int number)
{
    private readonly Dice _dice = new(number);
    private readonly Judge _judge = new(facts);

    /// <param name="start">A plan without fault.</param>
    public PlanValue Improve(Placement start, int steps)
    {
        var (now, value) = (start, _judge.Value(start));
        for (var step = 0; step < steps; step++)
        {
            var next = now.Copy();
            Change(next);
            if (
                CanLive(next)
                && _judge.Value(next) is var found
                && found.CompareTo(value) <= 0
                && _judge.Fault(next) is null
                && _judge.KeepsBound(next)
            )
            {
                (now, value) = (next, found);
            }
        }

        return value;
    }

    /// <summary>Each fit in turn at the first port where it may be; those that find none stay without.</summary>
    public Placement Greedy()
    {
        var placement = new Placement(facts.Rig.Fits.Length);
        foreach (var fit in Enumerable.Range(0, facts.Rig.Fits.Length).OrderBy(_ => _dice.Below(1_000_000)))
        {
            foreach (var (group, port) in Seats(fit))
            {
                placement.Put(fit, group, port, isPinTwo: false);
                if (_judge.Fault(placement) is null && _judge.KeepsBound(placement))
                {
                    break;
                }

                placement.Put(fit, Placement.Nowhere, 0, isPinTwo: false);
            }
        }

        return placement;
    }

    private bool CanLive(Placement placement) =>
        Enumerable
            .Range(0, placement.Group.Length)
            .All(fit => placement.Group[fit] is var group && (group < 0 || facts.Cable[fit, group] is not null));

    private IEnumerable<(int Group, int Port)> Seats(int fit) =>
        Enumerable
            .Range(0, facts.Groups.Length)
            .Where(group => facts.Cable[fit, group] is not null)
            .SelectMany(group =>
                Enumerable.Range(facts.Groups[group].First, facts.Groups[group].Ports).Select(port => (group, port))
            );

    private void Change(Placement placement)
    {
        var fit = _dice.Below(facts.Rig.Fits.Length);
        if (_dice.Chance(40))
        {
            Swap(placement, fit, _dice.Below(facts.Rig.Fits.Length));
        }
        else if (Seats(fit).ToList() is { Count: > 0 } seats)
        {
            var (group, port) = _dice.Pick(seats);
            placement.Put(fit, group, port, isPinTwo: false);
        }
    }

    private static void Swap(Placement placement, int one, int other)
    {
        var (group, port, isPinTwo) = (placement.Group[one], placement.Port[one], placement.IsPinTwo[one]);
        placement.Put(one, placement.Group[other], placement.Port[other], placement.IsPinTwo[other]);
        placement.Put(other, group, port, isPinTwo);
    }
}
