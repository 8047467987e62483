using Configurator.Core.Logic;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Tests.Logic.Compiling;
using Configurator.Core.Tests.Logic.Orders;
using CsCheck;

namespace Configurator.Core.Tests.Logic.Weighing;

public class SampleTests
{
    // Source: reference values of SplitMix64 with seed 1234567, in its authors' public test vector.
    [Fact]
    public void The_generator_gives_its_published_sequence()
    {
        var random = new RandomNumbers(1234567);
        Assert.Equal(
            [6457827717110365317UL, 3203168211198807973UL, 9817491932198370423UL],
            new[] { random.Next(), random.Next(), random.Next() }
        );
    }

    // Source: Oracle. Whatever is drawn keeps all rules and fits the order.
    [Fact]
    public void Configurations_drawn_keep_all_rules_and_fit_the_order() =>
        Cases.Check(
            RandomMachines.WithOrder(10, 2048),
            51,
            800,
            both =>
            {
                var oracle = new Oracle(both.Machine);
                var drawn = Weigher.Of(OrderLogic.Of(both.Machine)).Sample(both.Order, 5, seed: 1)!.Value;
                var allowed = oracle.Within(both.Order).Select(way => oracle.IndexOf(way.Counts)).ToHashSet();
                Assert.Equal(allowed.Count == 0 ? 0 : 5, drawn.Length);
                Assert.All(
                    drawn,
                    one => Assert.Contains(oracle.IndexOf([.. oracle.Options.Select(one.QuantityOf)]), allowed)
                );
            },
            RandomMachines.Words
        );

    // Source: chi-square distribution. With f degrees of freedom it exceeds f + 4 sqrt(2 f) less than once in a thousand
    // times for f above 20; the seed is fixed, so the test cannot fail by chance later.
    [Fact]
    public void Each_configuration_is_drawn_equally_often()
    {
        const int Each = 100;
        var machine = RandomMachines
            .Of(9, 512)
            .Where(machine => new Oracle(machine).Kept.Count() is > 40 and < 120)
            .Generate(new PCG(7, 7), null, out _);
        var oracle = new Oracle(machine);
        var kept = oracle.Kept.Count();
        var drawn = Weigher.Of(OrderLogic.Of(machine)).Sample(PartialOrder.Empty, kept * Each, seed: 11)!.Value;
        var seen = drawn.CountBy(one => oracle.IndexOf([.. oracle.Options.Select(one.QuantityOf)])).ToList();
        Assert.Equal(kept, seen.Count);
        var chiSquare = seen.Sum(way => Math.Pow(way.Value - Each, 2) / Each);
        Assert.InRange(chiSquare, 0, kept - 1 + (4 * Math.Sqrt(2 * (kept - 1))));
    }

    [Fact]
    public void The_same_seed_gives_the_same_configurations_and_another_one_others()
    {
        var weigher = Weigher.Of(OrderLogic.Of(Machines.Of(Enumerable.Range(0, 12).Select(i => Machines.Option($"o{i}")))));
        string Drawn(ulong seed) =>
            string.Join(
                '\n',
                weigher
                    .Sample(PartialOrder.Empty, 20, seed)!
                    .Value.Select(one => string.Join(' ', one.Quantities.Keys))
            );
        Assert.Equal(Drawn(3), Drawn(3));
        Assert.NotEqual(Drawn(3), Drawn(4));
    }
}
