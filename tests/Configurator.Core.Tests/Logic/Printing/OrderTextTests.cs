using System.Text.Json;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Printing;
using Configurator.Core.Model;
using Configurator.Core.Tests.Logic.Orders;

namespace Configurator.Core.Tests.Logic.Printing;

/// <summary>What a salesperson reads of an order that cannot be. Every expected line is worked by hand from the rules in
/// the test.</summary>
public class OrderTextTests
{
    private static readonly Option Heads = Machines.Option("heads", 1, 4);
    private static readonly Option Stirrer = Machines.Option("stirrer");
    private static readonly Option Film = Machines.Option("film");
    private static readonly Option Foil = Machines.Option("foil");

    [Fact]
    public void A_number_that_an_option_cannot_be_taken_in_is_the_reason() => Assert.Contains(
        "\nbecause\n  “heads” can be taken 1 to 4 times; 6 are ordered\n\nthe nearest orders that work\n  1. take 4 times “heads”\n",
        Text(Machines.Of([Heads]), PartialOrder.Empty.With(new("heads"), new(6, 6))),
        StringComparison.Ordinal);

    [Fact]
    public void An_option_that_is_taken_once_cannot_be_taken_twice() => Assert.Contains(
        "  “stirrer” can be taken once; 2 are ordered\n",
        Text(Machines.Of([Stirrer]), PartialOrder.Empty.With(new("stirrer"), new(2, 2))),
        StringComparison.Ordinal);

    [Fact]
    public void A_number_that_can_be_ordered_is_no_reason_of_its_own() =>
        Assert.DoesNotContain("can be taken", Text(Lids(), Ordered("film", "foil")), StringComparison.Ordinal);

    // Without the foil one of two others is the lid; without the stirrer the foil is.
    [Fact]
    public void A_near_order_says_what_is_then_still_to_be_chosen()
    {
        var text = Text(
            Machines.Of(
                [Film, Foil, Machines.Option("net"), Stirrer],
                [Machines.Choice("lid", Take.ExactlyOne, [new("film"), new("foil"), new("net")])],
                [Machines.Rule("apart", Machines.NotTogether("foil", "stirrer"))]),
            Ordered("foil", "stirrer"));

        Assert.Contains(". leave out “foil”\n     then still choose “lid”: “film”, “net”\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain(". leave out “stirrer”\n     then", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_every_near_order_leaves_open_stands_once_at_the_end()
    {
        var text = Text(Lids(), Ordered("film", "foil"));

        Assert.EndsWith("\n\nwith each of them still to be chosen\n  “size”: “large”, “small”\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain("then still choose", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Programs_read_the_same()
    {
        var beyond = Json(Machines.Of([Heads]), PartialOrder.Empty.With(new("heads"), new(6, 6)));
        var fault = beyond.GetProperty("explanation").GetProperty("numbers")[0];
        Assert.Equal((1, 4, 6), (Number(fault, "from"), Number(fault, "to"), Number(fault, "ordered")));

        var near = Json(Lids(), Ordered("film", "foil")).GetProperty("nearest")[0];
        Assert.Matches("^(film|foil)$", near.GetProperty("changes")[0].GetProperty("option").GetString());
        Assert.Equal("size", near.GetProperty("open-choices")[0].GetProperty("choice").GetString());
    }

    /// <summary>One lid, and a size that nobody has chosen.</summary>
    private static Machine Lids() => Machines.Of(
        [Film, Foil, Machines.Option("large"), Machines.Option("small")],
        [
            Machines.Choice("lid", Take.ExactlyOne, [new("film"), new("foil")]),
            Machines.Choice("size", Take.ExactlyOne, [new("large"), new("small")]),
        ]);

    private static PartialOrder Ordered(params string[] options) =>
        options.Aggregate(PartialOrder.Empty, (order, option) => order.With(new(option), NumberRange.AtLeastOne));

    private static string Text(Machine machine, PartialOrder order)
    {
        var logic = OrderLogic.Of(machine);
        return OrderText.Of(logic, OrderAnswer.Of(logic, order));
    }

    private static JsonElement Json(Machine machine, PartialOrder order)
    {
        var logic = OrderLogic.Of(machine);
        using var read = JsonDocument.Parse(OrderJson.Of(logic, OrderAnswer.Of(logic, order)));
        return read.RootElement.Clone();
    }

    private static int Number(JsonElement element, string name) => element.GetProperty(name).GetInt32();
}
