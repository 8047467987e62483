using System.Collections.Immutable;
using System.Numerics;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Tests.Logic.Compiling;
using Configurator.Core.Tests.Logic.Orders;
using CsCheck;
using Check = Configurator.Core.Tests.Support.Check;

namespace Configurator.Core.Tests.Logic.Weighing;

public class OrderMixTests
{
    // Source: Oracle, each configuration weighted by the definition of the mix with fractions.
    [Fact]
    public void Mean_and_shares_by_a_mix_are_what_weighting_every_configuration_gives() =>
        Cases.Check(
            from weighed in RandomSums.Of(9, 1024)
            from shares in Gen.Int[0, 100].Array[weighed.Machine.Options.Count]
            from isDeclared in Gen.Bool.Array[weighed.Machine.Options.Count]
            select (
                Case: weighed,
                Mix: weighed.Machine.Options.Keys.Select((option, i) => (option, shares[i])).Where((_, i) => isDeclared[i]).ToArray()
            ),
            91,
            500,
            both => Compare(both.Case, [.. both.Mix.Select(share => Share(share.option, share.Item2))]),
            both => both.Case.Words + string.Join(' ', both.Mix)
        );

    // Source: by hand. Two free options; a is in 30 of 100 orders and weighs 10, so the mean is 3.
    [Fact]
    public void A_free_option_is_in_as_many_configurations_as_its_share_says()
    {
        var weigher = Weigher.Of(OrderLogic.Of(Machines.Of([Machines.Option("a"), Machines.Option("b")])));
        var sum = new WeightedSum(0, [new(Machines.Taken("a"), 10)]);
        Assert.Equal((Rational)5, weigher.Mean(sum, PartialOrder.Empty));
        Assert.Equal((Rational)3, weigher.Mean(sum, PartialOrder.Empty, [Share(new("a"), 30)]));
    }

    [Fact]
    public void A_mix_is_read_from_the_machine()
    {
        var machine = Check.Small.Machine("standard:\n", "order-mix:\n  - {option: film, share: 60 percent}\nstandard:\n").TheMachine;
        Assert.Equal(("film", "60 percent"), (machine.OrderMix[0].Option.Value.Value, machine.OrderMix[0].Share.Written));
    }

    [Theory]
    [InlineData("{option: film, share: [|101 percent|]}", "CFG2013 `101 percent` is more than all of them\nto fix: write a share from 0 to 100 percent")]
    [InlineData("{option: film, share: [|-1 percent|]}", "CFG2013 `-1 percent` is below zero\nto fix: write a value of zero or more")]
    public void A_share_lies_between_nothing_and_all(string share, string said) =>
        Check.Small.Machine("standard:\n", $"order-mix:\n  - {share}\nstandard:\n").Says(said);

    private static void Compare(WeighingCase weighed, ImmutableArray<OrderShare> mix)
    {
        var oracle = new Oracle(weighed.Machine);
        var (sum, order) = (weighed.Sums[0], weighed.Order);
        var ways = oracle
            .Within(order)
            .Select(way => (Weight: sum.Of(option => oracle.CountOf(way, option)), Measure: Measure(oracle, way, mix)))
            .ToList();
        var all = ways.Aggregate((Rational)0, (total, way) => total + way.Measure);
        var mean = ways.Aggregate((Rational)0, (total, way) => total + (way.Measure * way.Weight));
        var weigher = Weigher.Of(OrderLogic.Of(weighed.Machine));
        Assert.Equal(all == 0 ? null : mean / all, weigher.Mean(sum, order, mix));
        var histogram = weigher.Histogram(sum, order, mix)!.Value;
        var measured = histogram.Aggregate(BigInteger.Zero, (total, one) => total + one.Configurations);
        Assert.Equal(
            ways.GroupBy(way => way.Weight)
                .Select(group => (group.Key, Share: group.Aggregate((Rational)0, (total, way) => total + way.Measure)))
                .Where(group => group.Share != 0)
                .OrderBy(group => group.Key)
                .Select(group => (group.Key, group.Share / all)),
            histogram.Select(one => (one.Weight, new Rational(one.Configurations, measured)))
        );
    }

    /// <summary>As the definition of the mix says it.</summary>
    private static Rational Measure(Oracle oracle, Way way, ImmutableArray<OrderShare> mix) =>
        mix.Aggregate(
            (Rational)1,
            (product, share) =>
            {
                var range = oracle.Machine.Options[share.Option.Value].Quantity;
                var numbers = range is null ? 1 : range.To - range.From + 1;
                var part = share.Share.InBase / 100;
                return product * (oracle.CountOf(way, share.Option.Value) > 0 ? part / numbers : 1 - part);
            }
        );

    private static OrderShare Share(OptionId option, int percent) =>
        new(new(option, default), new(percent, UnitTable.Find("percent")!, percent, FormattableString.Invariant($"{percent} percent")));
}
