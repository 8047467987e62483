using System.Numerics;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Tests.Logic.Orders;

namespace Configurator.Core.Tests.Logic.Known;

public class LimitTests
{
    // Source: sums of binomial coefficients, worked by hand: 1, 1 + 10, 1 + 10 + 45 + 120, and all 2^10.
    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 11)]
    [InlineData(3, 176)]
    [InlineData(10, 1024)]
    public void At_most_so_many_of_ten_options_can_be_chosen_in_as_many_ways_as_binomials_sum_to(
        int atMost,
        int ways
    ) => Assert.Equal(ways, Count(Enumerable.Range(0, 10).Select(i => Machines.Option($"o{i}")), atMost));

    // Source: stars and bars, C(n + k, k) ways to share out at most n among k; here C(9, 4) = 126.
    [Fact]
    public void Five_parts_shared_out_among_four_options_make_as_many_ways_as_stars_and_bars() =>
        Assert.Equal(126, Count(Enumerable.Range(0, 4).Select(i => Machines.Option($"o{i}", 1, 5)), 5));

    // Source: partitions of at most 60 into coins; worked by hand below as a sum over fifties, twenties and tens.
    [Fact]
    public void Weights_count_as_often_as_their_option_is_taken()
    {
        var fifty = Machines.Option("fifty", 1, 1);
        var twenty = Machines.Option("twenty", 1, 3);
        var ten = Machines.Option("ten", 1, 6);
        var limit = Machines.Limit("purse", 60, [(fifty.Id.Value, 50), (twenty.Id.Value, 20), (ten.Id.Value, 10)]);

        // Without the fifty 7 + 5 + 3 + 1 by the number of twenties; with it at most one ten.
        Assert.Equal(
            7 + 5 + 3 + 1 + 2,
            OrderLogic.Of(Machines.Of([fifty, twenty, ten], limits: [limit])).Count(PartialOrder.Empty)
        );
    }

    // Source: the middle binomial sum; at most 30 of 60 are half of all and half of C(60, 30).
    [Fact]
    public void Half_of_sixty_options_can_be_chosen_in_a_known_number_of_ways() =>
        Assert.Equal(
            BigInteger.Pow(2, 59)
                + (BigInteger.Parse("118264581564861424", System.Globalization.CultureInfo.InvariantCulture) / 2),
            Count(Enumerable.Range(0, 60).Select(i => Machines.Option($"o{i:00}")), 30)
        );

    private static BigInteger? Count(IEnumerable<Option> options, int atMost)
    {
        List<Option> all = [.. options];
        return OrderLogic
            .Of(Machines.Of(all, limits: [Machines.Limit("all", atMost, all.Select(option => (option.Id.Value, 1)))]))
            .Count(PartialOrder.Empty);
    }
}
