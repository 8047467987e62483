using Configurator.Core.Logic;
using Configurator.Core.Tests.Logic.Compiling;

namespace Configurator.Core.Tests.Logic.Orders;

// Source of every expected answer: trying all ways to take the options (Oracle).
public class BruteForceTests
{
    [Fact]
    public void The_configurations_left_by_an_order_are_counted_exactly() =>
        Check(1, (agreement, order) => agreement.OnCount(order));

    [Fact]
    public void An_order_is_possible_exactly_when_some_configuration_fits_it() =>
        Check(2, (agreement, order) => agreement.OnPossible(order));

    [Fact]
    public void An_option_is_left_exactly_the_numbers_in_which_some_configuration_takes_it() =>
        Check(3, (agreement, order) => agreement.OnStates(order));

    [Fact]
    public void An_impossible_order_is_explained_by_a_contradiction_with_the_fewest_members_there_are() =>
        Check(4, (agreement, order) => agreement.OnExplanation(order));

    [Fact]
    public void The_nearest_orders_are_the_smallest_sets_of_picks_to_change() =>
        Check(5, (agreement, order) => agreement.OnNearest(order, isComplete: false));

    [Fact]
    public void The_nearest_complete_orders_are_the_smallest_sets_of_changes_and_what_comes_along_is_free() =>
        Cases.Check(
            RandomMachines.WithCompleteOrder(10, 2048),
            6,
            800,
            both => Agreement.On(both.Machine).OnNearest(both.Order, isComplete: true),
            RandomMachines.Words
        );

    [Fact]
    public void What_is_odd_about_rules_is_named_and_proved_and_nothing_else_is() =>
        Cases.Check(RandomMachines.Of(12, 4096), 7, 800, machine => Agreement.On(machine).OnHealth(), Machines.Words);

    private static void Check(uint stream, Action<Agreement, PartialOrder> check) =>
        Cases.Check(
            RandomMachines.WithOrder(12, 4096),
            stream,
            800,
            both => check(Agreement.On(both.Machine), both.Order),
            RandomMachines.Words
        );
}
