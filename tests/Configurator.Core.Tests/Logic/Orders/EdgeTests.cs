using System.Numerics;
using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Core.Tests.Logic.Orders;

/// <summary>Machines at the edge of what definitions allow. Expected numbers are worked by hand.</summary>
public class EdgeTests
{
    private static readonly PartialOrder Anything = PartialOrder.Empty.With(new("anything"), NumberRange.AtLeastOne);

    [Fact]
    public void A_machine_without_options_has_one_configuration()
    {
        var logic = OrderLogic.Of(Machines.Of([]));
        Assert.Equal(1, logic.Count(PartialOrder.Empty));
        Assert.Empty(logic.States(PartialOrder.Empty));
    }

    [Fact]
    public void A_machine_without_options_explains_that_nothing_can_be_ordered()
    {
        var logic = OrderLogic.Of(Machines.Of([]));
        Assert.Equal(0, logic.Count(Anything));
        Assert.False(logic.IsPossible(Anything));
        Assert.Equal([new("anything")], logic.Explain(Anything)!.Picks);
        Assert.Equal(PartialOrder.Empty.Picks, Assert.Single(logic.Nearest(Anything, isComplete: true)).Order.Picks);
    }

    // With the switch on one of n, with it off any of 2^n.
    [Theory]
    [InlineData(3)]
    [InlineData(12)]
    [InlineData(60)]
    public void A_choice_under_a_condition_may_have_many_members(int members)
    {
        List<Option> options = [.. Enumerable.Range(0, members).Select(i => Machines.Option($"o{i:00}"))];
        var choice = Machines.Choice(
            "choice",
            Take.ExactlyOne,
            options.Select(option => option.Id.Value),
            Machines.Taken("switch")
        );
        Assert.Equal(
            members + BigInteger.Pow(2, members),
            OrderLogic.Of(Machines.Of([.. options, Machines.Option("switch")], [choice])).Count(PartialOrder.Empty)
        );
    }

    // Switches that turn on in every way but all off, as often as that is one of n, else any of 2^n.
    [Fact]
    public void The_condition_of_a_choice_may_be_a_long_one()
    {
        List<Option> options = [.. Enumerable.Range(0, 20).Select(i => Machines.Option($"o{i:00}"))];
        List<Option> switches = [.. Enumerable.Range(0, 10).Select(i => Machines.Option($"s{i}"))];
        var any = new AnyOf([.. switches.Select(option => Machines.Taken(option.Id.Value))], default);
        var choice = Machines.Choice("choice", Take.ExactlyOne, options.Select(option => option.Id.Value), any);
        Assert.Equal(
            (1023 * 20) + BigInteger.Pow(2, 20),
            OrderLogic.Of(Machines.Of([.. options, .. switches], [choice])).Count(PartialOrder.Empty)
        );
    }

    // Not taken, or taken 1 to 63 times; the second option asks for all 63 of the first.
    [Fact]
    public void An_option_may_be_taken_up_to_sixty_three_times()
    {
        var rule = Machines.Rule("all", new OptionCount(new("many"), 63, null, default), Machines.Taken("whole"));
        var logic = OrderLogic.Of(
            Machines.Of([Machines.Option("many", 1, 63), Machines.Option("whole")], rules: [rule])
        );
        Assert.Equal(64 + 1, logic.Count(PartialOrder.Empty));
        Assert.Equal(
            [63],
            logic.States(PartialOrder.Empty.With(new("whole"), NumberRange.AtLeastOne))[new("many")].Possible
        );
    }

    [Fact]
    public void More_numbers_than_can_be_told_apart_are_refused_and_never_counted_wrongly() =>
        Assert.Throws<InvalidOperationException>(() => OrderLogic.Of(Machines.Of([Machines.Option("many", 1, 64)])));
}
