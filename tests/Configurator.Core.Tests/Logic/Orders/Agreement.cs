using System.Numerics;
using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Core.Tests.Logic.Orders;

/// <summary>Every answer about the orders of a machine, held against trying everything.</summary>
internal sealed class Agreement(OrderLogic logic, Oracle oracle)
{
    public static Agreement On(Machine machine) => new(OrderLogic.Of(machine), new(machine));

    public void OnCount(PartialOrder order)
    {
        Assert.True(logic.IsCounted);
        Assert.Equal(oracle.Kept.Count(), logic.Count(PartialOrder.Empty));
        Assert.Equal(oracle.Within(order).Count(), logic.Count(order));
    }

    public void OnPossible(PartialOrder order) => Assert.Equal(oracle.Within(order).Any(), logic.IsPossible(order));

    public void OnStates(PartialOrder order)
    {
        var left = oracle.Within(order).ToList();
        var states = logic.States(order);
        Assert.Equal(oracle.Options, states.Keys);
        Assert.All(states, option => Assert.Equal(oracle.NumbersIn(left, option.Key), option.Value.Possible));
    }

    public void OnExplanation(PartialOrder order)
    {
        var explanation = logic.Explain(order);
        Assert.Equal(oracle.Within(order).Any(), explanation is null);
        if (explanation is not null)
        {
            new Proofs(oracle).IsSmallest(order, explanation);
        }
    }

    public void OnNearest(PartialOrder order, bool isComplete) =>
        new Repairs(oracle, order, isComplete).Are(logic.Nearest(order, isComplete));

    public void OnHealth()
    {
        var health = RuleHealth.Of(logic);
        Assert.Equal(!oracle.Kept.Any(), health.IsEmpty);
        if (health.IsEmpty)
        {
            new Proofs(oracle).IsSmallest(PartialOrder.Empty, new([], health.WhyEmpty));
            return;
        }

        OnNever(health);
        OnAlways(health);
        OnRedundant(health);
        OnSingleWayOut(health);
    }

    private void OnNever(RuleHealth health)
    {
        Assert.Equal(
            oracle.Options.Where(option => Left(option).Max() == 0),
            health.NeverOrderable.Select(proof => proof.Option)
        );
        Assert.All(
            health.NeverOrderable,
            proof => new Proofs(oracle).IsSmallest(proof.Option, NumberRange.AtLeastOne, proof.Because)
        );
    }

    private void OnAlways(RuleHealth health)
    {
        Assert.Equal(
            oracle.Options.Where(option => Left(option).Min() > 0),
            health.AlwaysIncluded.Select(proof => proof.Option)
        );
        Assert.All(
            health.AlwaysIncluded,
            proof => new Proofs(oracle).IsSmallest(proof.Option, NumberRange.None, proof.Because)
        );
    }

    /// <summary>What is left implies what was left out and nothing of itself; no proof has a rule too many.</summary>
    private void OnRedundant(RuleHealth health)
    {
        var proofs = new Proofs(oracle);
        var redundant = oracle.Bits(health.Redundant.Select(proof => proof.Rule));
        var rest = ((1UL << oracle.Rules.Length) - 1) & ~redundant;
        Assert.True(proofs.Implies(rest, redundant), "a rule called redundant says something");
        Assert.All(
            Singles(rest),
            rule => Assert.False(proofs.Implies(rest & ~rule, rule), "a rule that says nothing is left")
        );
        Assert.All(health.Redundant, proof => proofs.IsNecessary(proof.Rule, proof.Because));
    }

    private void OnSingleWayOut(RuleHealth health)
    {
        bool CanBeTaken(OptionId option) => oracle.Options.Contains(option) && Left(option).Max() > 0;
        Assert.Equal(
            oracle
                .Machine.Choices.Where(choice => choice is { When: null, Take: not Take.AtMostOne })
                .Select(choice =>
                    (choice.Id, Members: choice.Of.Select(option => option.Value).Where(CanBeTaken).ToList())
                )
                .Where(choice => choice.Members.Count == 1)
                .Select(choice => (choice.Id, choice.Members[0])),
            health.SingleWayOut.Select(proof => (proof.Choice.Id, proof.Only))
        );
    }

    private IEnumerable<int> Left(OptionId option) => oracle.NumbersIn(oracle.Kept, option);

    private static IEnumerable<ulong> Singles(ulong bits) =>
        Enumerable.Range(0, BitOperations.Log2(bits | 1) + 1).Select(i => 1UL << i).Where(bit => (bits & bit) != 0);
}
