using Configurator.Core.Logic;
using Configurator.Core.Logic.Compiling;
using Configurator.Core.Model;
using Configurator.Core.Tests.Logic.Compiling;

namespace Configurator.Core.Tests.Logic.Orders;

/// <summary>Where rules are too entangled to compile, a search answers everything but the count.</summary>
public class SearchAloneTests
{
    private const int Enough = 200;

    private static readonly CompileLimits TooLow = new(1, 1, 1);
    private int _searched;

    [Fact]
    public void All_answers_but_the_count_are_the_same_without_a_diagram()
    {
        Cases.Check(RandomMachines.WithOrder(10, 1024), 21, 500, Check, RandomMachines.Words);
        Assert.True(
            _searched >= Enough,
            $"all but {_searched} machines were so simple that they were compiled all the same"
        );
    }

    [Fact]
    public void The_nearest_complete_orders_are_the_same_without_a_diagram() =>
        Cases.Check(
            RandomMachines.WithCompleteOrder(10, 1024),
            22,
            300,
            both => new Agreement(Uncompiled(both.Machine), new(both.Machine)).OnNearest(both.Order, isComplete: true),
            RandomMachines.Words
        );

    private void Check((Machine Machine, PartialOrder Order) both)
    {
        var logic = Uncompiled(both.Machine);
        if (!logic.IsCounted)
        {
            _searched++;
            Assert.Null(logic.Count(both.Order));
        }

        var agreement = new Agreement(logic, new(both.Machine));
        agreement.OnPossible(both.Order);
        agreement.OnStates(both.Order);
        agreement.OnExplanation(both.Order);
        agreement.OnNearest(both.Order, isComplete: false);
        agreement.OnHealth();
    }

    private static OrderLogic Uncompiled(Machine machine) => OrderLogic.Of(machine, TooLow);
}
