using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Core.Tests.Logic.Orders;

// Every expected repair is worked by hand from the rules in the test.
public class NearestTests
{
    private static readonly Option Printer = Machines.Option("printer");
    private static readonly Option Roll = Machines.Option("roll", 1, 3);
    private static readonly Option Reel = Machines.Option("reel");

    [Fact]
    public void What_comes_along_in_its_smallest_number_is_no_change() =>
        Check(Machines.Of([With(Printer, "roll"), Roll]), Complete("printer"), "");

    [Fact]
    public void More_than_comes_along_by_itself_is_a_change() =>
        Check(
            Machines.Of(
                [With(Printer, "roll"), Roll],
                rules:
                [
                    Machines.Rule(
                        "two-rolls",
                        new OptionCount(Roll.Id.Value, 2, null, default),
                        Machines.Taken("printer")
                    ),
                ]
            ),
            Complete("printer"),
            "roll 0 -> 2",
            "printer 1 -> 0"
        );

    [Fact]
    public void Options_that_only_come_with_each_other_do_not_come_by_themselves() =>
        Check(
            Machines.Of(
                [With(Reel, "roll"), With(Roll, "reel")],
                rules: [Machines.Rule("a-reel", Machines.Taken("reel"))]
            ),
            Complete(),
            "roll 0 -> 1",
            "reel 0 -> 1"
        );

    [Fact]
    public void An_option_that_comes_with_itself_does_not_come_by_itself() =>
        Check(
            Machines.Of([With(Reel, "reel")], rules: [Machines.Rule("a-reel", Machines.Taken("reel"))]),
            Complete(),
            "reel 0 -> 1"
        );

    [Fact]
    public void An_order_that_works_is_its_own_nearest() => Check(Machines.Of([Printer, Reel]), Complete("reel"), "");

    [Fact]
    public void Nothing_is_near_where_no_order_works() =>
        Check(
            Machines.Of(
                [Printer],
                rules:
                [
                    Machines.Rule("one", Machines.Taken("printer")),
                    Machines.Rule("none", new NoneOf([Machines.Taken("printer")], default)),
                ]
            ),
            Complete("printer")
        );

    [Fact]
    public void An_option_that_is_not_offered_is_dropped() =>
        Check(Machines.Of([Printer]), Complete("printer", "plotter"), "plotter 1 -> 0");

    // Seven ways to drop one of two that exclude each other would be more than anybody reads.
    [Fact]
    public void At_most_five_are_shown()
    {
        var options = Enumerable.Range(0, 7).Select(i => Machines.Option($"o{i}")).ToList();
        var logic = OrderLogic.Of(
            Machines.Of(options, limits: [Machines.Limit("six", 6, options.Select(option => (option.Id.Value, 1)))])
        );
        Assert.Equal(
            5,
            logic.Nearest(Complete([.. options.Select(option => option.Id.Value.Value)]), isComplete: true).Length
        );
    }

    /// <summary>The repairs in any order, each as its changes.</summary>
    private static void Check(Machine machine, PartialOrder order, params string[] repairs) =>
        Assert.Equal(
            repairs.Order(StringComparer.Ordinal),
            OrderLogic
                .Of(machine)
                .Nearest(order, isComplete: true)
                .Select(repair => string.Join(", ", repair.Changes.Select(Words)))
                .Order(StringComparer.Ordinal)
        );

    private static string Words(OrderChange change) => $"{change.Option} {change.Before.From} -> {change.After}";

    private static PartialOrder Complete(params string[] options) =>
        options.Aggregate(PartialOrder.Empty, (order, option) => order.With(new(option), new(1, 1)));

    private static Option With(Option option, string other) => option with { ComesWith = [Machines.Link(new(other))] };
}
