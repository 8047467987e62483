using Configurator.Core.Logic;
using Configurator.Core.Tests.Logic.Compiling;

namespace Configurator.Core.Tests.Logic.Orders;

/// <summary>The same as <see cref="BruteForceTests"/> with more options than fit into a quick run.</summary>
[Trait("Nightly", "1")]
public class BruteForceNightlyTests
{
    private const int Options = 18;
    private const int Ways = 1 << 18;

    [Trait("Length", "nightly")]
    [Fact(Explicit = true)]
    public void Every_answer_about_an_order_of_up_to_18_options_is_what_trying_everything_gives() =>
        Cases.Check(
            RandomMachines.WithOrder(Options, Ways),
            11,
            400,
            both => CheckAll(Agreement.On(both.Machine), both.Order),
            RandomMachines.Words
        );

    [Trait("Length", "nightly")]
    [Fact(Explicit = true)]
    public void The_nearest_complete_orders_of_up_to_18_options_are_the_smallest_sets_of_changes() =>
        Cases.Check(
            RandomMachines.WithCompleteOrder(Options, Ways),
            12,
            200,
            both => Agreement.On(both.Machine).OnNearest(both.Order, isComplete: true),
            RandomMachines.Words
        );

    private static void CheckAll(Agreement agreement, PartialOrder order)
    {
        agreement.OnCount(order);
        agreement.OnPossible(order);
        agreement.OnStates(order);
        agreement.OnExplanation(order);
        agreement.OnNearest(order, isComplete: false);
        agreement.OnHealth();
    }
}
