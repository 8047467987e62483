using System.Collections.Immutable;
using System.Numerics;
using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Core.Tests.Logic.Orders;

/// <summary>
/// Holds explanations against the oracle. Rules and picks contradict each other exactly when every way to take the
/// options breaks one of them.
/// </summary>
internal sealed class Proofs(Oracle oracle)
{
    /// <summary>Contradictory, every member necessary, and none has fewer members.</summary>
    public void IsSmallest(PartialOrder order, Explanation explanation)
    {
        var broken = Broken(order);
        var members = Bits(order, explanation);
        IsContradiction(broken, members);
        Assert.False(
            BitSets.CanBeMet(broken, BitOperations.PopCount(members) - 1),
            "there is a contradiction with fewer members"
        );
    }

    /// <summary>The rules keep the option from being taken in these numbers; without any one they do not.</summary>
    public void IsSmallest(OptionId option, NumberRange contrary, ImmutableArray<OrderRule> because) =>
        IsSmallest(PartialOrder.Empty.With(option, contrary), new([option], because));

    /// <summary>The rules imply the other one; without any one of them they do not.</summary>
    public void IsNecessary(OrderRule rule, ImmutableArray<OrderRule> because)
    {
        var contrary = oracle.Bits([rule]);
        ImmutableArray<ulong> broken = [.. oracle.All.Select(way => way.Broken).Where(bits => (bits & contrary) != 0)];
        IsContradiction(BitSets.Minimal(broken.Select(bits => bits & ~contrary)), oracle.Bits(because));
    }

    /// <summary>Whoever keeps these rules keeps the other one.</summary>
    public bool Implies(ulong rules, ulong other) =>
        oracle.All.All(way => (way.Broken & rules) != 0 || (way.Broken & other) == 0);

    private static void IsContradiction(ImmutableArray<ulong> broken, ulong members)
    {
        Assert.True(broken.All(bits => (bits & members) != 0), "the members can hold together");
        for (var rest = members; rest != 0; rest &= rest - 1)
        {
            var without = members & ~(rest & (~rest + 1));
            Assert.False(broken.All(bits => (bits & without) != 0), "a member is not needed");
        }
    }

    /// <summary>What each way breaks of rules and, above their bits, of picks.</summary>
    private ImmutableArray<ulong> Broken(PartialOrder order) =>
        BitSets.Minimal(oracle.All.Select(way => way.Broken | (oracle.Broken(way, order) << oracle.Rules.Length)));

    private ulong Bits(PartialOrder order, Explanation explanation) =>
        oracle.Bits(explanation.Rules)
        | explanation.Picks.Aggregate(
            0UL,
            (bits, pick) => bits | (1UL << (oracle.Rules.Length + IndexOf(order, pick)))
        );

    private static int IndexOf(PartialOrder order, OptionId pick) => order.Picks.Keys.ToImmutableArray().IndexOf(pick);
}
