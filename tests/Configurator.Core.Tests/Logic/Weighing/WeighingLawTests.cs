using System.Numerics;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;
using Configurator.Core.Tests.Logic.Compiling;
using CsCheck;

namespace Configurator.Core.Tests.Logic.Weighing;

// Laws need no second algorithm, so the machines may have more options than anybody could try out.
public class WeighingLawTests
{
    private const int Machines = 150;

    private static readonly Gen<WeighingCase> Cases26 = RandomSums.Of(26, 1L << 34);

    // Law: each configuration has one weight.
    [Fact]
    public void The_histogram_sums_to_the_number_of_configurations_and_ends_at_the_extremes() =>
        Check(
            81,
            weighed =>
            {
                var (weigher, sum) = (Weigher.Of(OrderLogic.Of(weighed.Machine)), weighed.Sums[0]);
                if (weigher.Histogram(sum, weighed.Order) is not { } histogram)
                {
                    return;
                }

                Assert.Equal(OrderLogic.Of(weighed.Machine).Count(weighed.Order), Count(histogram));
                Assert.Equal(weigher.Heaviest(sum, weighed.Order)?.Weight, histogram.LastOrNull());
                Assert.Equal(weigher.Lightest(sum, weighed.Order)?.Weight, histogram.FirstOrNull());
            }
        );

    // Law: what is over the higher limit is over the lower one.
    [Fact]
    public void Raising_a_limit_never_makes_more_configurations_break_it() =>
        Check(
            82,
            weighed =>
            {
                var weigher = Weigher.Of(OrderLogic.Of(weighed.Machine));
                var (low, high) = (weighed.Limits.Min(), weighed.Limits.Max());
                Assert.True(
                    !(
                        weigher.Over(weighed.Sums[0], low, weighed.Order).Configurations
                        < weigher.Over(weighed.Sums[0], high, weighed.Order).Configurations
                    )
                );
            }
        );

    // Law: fewer rules, more configurations.
    [Fact]
    public void Dropping_a_rule_never_lowers_a_maximum() =>
        Check(
            83,
            weighed =>
            {
                var fewer = weighed.Machine with { Rules = [.. weighed.Machine.Rules.Skip(1)] };
                var (sum, order) = (weighed.Sums[0], weighed.Order);
                Assert.True(
                    (Weigher.Of(OrderLogic.Of(fewer)).Heaviest(sum, order)?.Weight ?? long.MinValue)
                        >= (Weigher.Of(OrderLogic.Of(weighed.Machine)).Heaviest(sum, order)?.Weight ?? long.MinValue)
                );
            }
        );

    // Law: some option number is in the heaviest configuration, and none is above it.
    [Fact]
    public void The_largest_margin_of_every_option_is_the_maximum() =>
        Check(
            84,
            weighed =>
            {
                var weigher = Weigher.Of(OrderLogic.Of(weighed.Machine));
                var most = weigher.Heaviest(weighed.Sums[0], weighed.Order)?.Weight;
                Assert.All(
                    weigher.Margins(weighed.Sums[0], weighed.Order)!.Value,
                    margin => Assert.Equal(most, margin.HeaviestAt.Values.Max())
                );
            }
        );

    // Law: a variable that follows from the options counts nothing twice.
    [Fact]
    public void Naming_conditions_changes_no_count() =>
        Check(
            85,
            weighed =>
            {
                var logic = OrderLogic.Of(weighed.Machine);
                var weigher = Weigher.Of(logic, weighed.Sums.SelectMany(sum => sum.Terms).Select(term => term.When));
                Assert.Equal(logic.Count(weighed.Order), weigher.Count(new AllOf([], default), weighed.Order));
            }
        );

    // Law: of several heaviest ones the witness has the fewest options, so leaving all loads out leaves the fewest.
    [Fact]
    public void A_witness_has_no_option_that_could_be_left_out() =>
        Check(
            86,
            weighed =>
            {
                var weigher = Weigher.Of(OrderLogic.Of(weighed.Machine));
                if (weigher.Heaviest(weighed.Sums[0], weighed.Order) is not { } heaviest)
                {
                    return;
                }

                var taken = heaviest.Witness.Quantities.Keys;
                var others = weighed.Machine.Options.Keys.Except(taken);
                var fewer = others.Aggregate(weighed.Order, (order, option) => order.With(option, NumberRange.None));
                Assert.All(
                    taken.Where(option => !weighed.Order.Picks.ContainsKey(option)),
                    option =>
                        Assert.False(
                            weigher.Heaviest(weighed.Sums[0], fewer.With(option, NumberRange.None))?.Weight
                                >= heaviest.Weight
                        )
                );
            }
        );

    private static BigInteger Count(IEnumerable<WeightClass> histogram) =>
        histogram.Aggregate(BigInteger.Zero, (count, one) => count + one.Configurations);

    private static void Check(uint stream, Action<WeighingCase> check) =>
        Cases.Check(Cases26, stream, Machines, check, weighed => weighed.Words);
}

internal static class Ends
{
    public static long? FirstOrNull(this IEnumerable<WeightClass> histogram) =>
        histogram.Select(one => (long?)one.Weight).FirstOrDefault();

    public static long? LastOrNull(this IEnumerable<WeightClass> histogram) =>
        histogram.Select(one => (long?)one.Weight).LastOrDefault();
}
