using Configurator.Core.Logic;
using Configurator.Core.Logic.Covering;
using Configurator.Core.Tests.Logic.Compiling;
using Configurator.Core.Tests.Logic.Orders;

namespace Configurator.Core.Tests.Logic.Covering;

public class CoveringSetTests
{
    // Source: Oracle. Two options in two numbers each stand together in the set exactly where some configuration has them.
    [Fact]
    public void Every_pair_of_options_that_some_configuration_has_is_in_the_set() =>
        Cases.Check(
            RandomMachines.Of(9, 1024),
            71,
            200,
            machine =>
            {
                var oracle = new Oracle(machine);
                var covering = CoveringSet.Of(OrderLogic.Of(machine), work: 5_000)!;
                var rows = covering
                    .Configurations.Select(one => oracle.Options.Select(one.QuantityOf).ToArray())
                    .ToList();
                var kept = oracle.Kept.Select(way => way.Counts).ToList();
                Assert.Equal(Pairs(kept), Pairs(rows));
                Assert.All(rows, row => Assert.Contains(kept, way => way.SequenceEqual(row)));
                Assert.True(covering.AtLeast <= rows.Count);
            },
            Machines.Words
        );

    private static HashSet<(int, int, int, int)> Pairs(List<int[]> rows) =>
        [
            .. rows.SelectMany(row =>
                from one in Enumerable.Range(0, row.Length)
                from other in Enumerable.Range(one, row.Length - one)
                select (one, row[one], other, row[other])
            ),
        ];
}
