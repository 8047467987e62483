using System.Globalization;
using Configurator.Core.Diagnostics;
using Configurator.Core.Engineering;
using Configurator.Core.Engineering.AllOrders;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Review;
using Configurator.Core.Review.Kinds;
using Configurator.Core.Review.Topics;
using Configurator.Core.Sources;
using Configurator.Core.Tests.Logic.Compiling;
using Configurator.Core.Tests.Logic.Orders;
using CsCheck;
using System.Collections.Immutable;

namespace Configurator.Core.Tests.Review;

public class OrderCountTests
{
    // Source: Oracle, which tries every way to take the options, on both sides.
    [Fact]
    public void Counts_won_and_lost_are_those_of_trying_every_order() =>
        Cases.Check(
            Gen.Select(RandomMachines.Of(8, 512), RandomMachines.Of(8, 512)),
            71,
            150,
            both =>
            {
                var (before, after) = (Kept(both.Item1), Kept(both.Item2));
                var changes = RuleChanges.Of(new(Side(both.Item1), Side(both.Item2), null), new List<string>()).ToList();
                Check(changes, OrderKinds.OrdersLost, before.Except(after, StringComparer.Ordinal).Count(), "lost", before.Count, after.Count);
                Check(changes, OrderKinds.OrdersWon, after.Except(before, StringComparer.Ordinal).Count(), "new", before.Count, after.Count);
            },
            both => Machines.Words(both.Item1) + Machines.Words(both.Item2)
        );

    private static void Check(List<Change> changes, ChangeKind kind, int count, string word, int before, int after)
    {
        var told = changes.SingleOrDefault(change => change.Kind == kind);
        Assert.Equal(count == 0, told is null);
        if (told is not null)
        {
            Assert.StartsWith($"{Print(count)} {word}, ", told.Remark, StringComparison.Ordinal);
            Assert.Equal((Print(before), Print(after)), (told.Before, told.After));
            Assert.NotEmpty(told.Details);
        }
    }

    private static string Print(int count) => count.ToString("N0", CultureInfo.InvariantCulture);

    private static HashSet<string> Kept(Machine machine)
    {
        var oracle = new Oracle(machine);
        return
        [
            .. oracle.Kept.Select(way => string.Join(' ', oracle.Options
                .Where(option => oracle.CountOf(way, option) > 0)
                .Select(option => FormattableString.Invariant($"{option}={oracle.CountOf(way, option)}")))),
        ];
    }

    private static ReviewSide Side(Machine machine)
    {
        var proved = Prover.Prove(new(
            SiteSettings.Default,
            ImmutableSortedDictionary<DeviceId, Device>.Empty,
            machine.Options,
            ImmutableSortedDictionary<MachineId, Machine>.Empty.Add(machine.Id.Value, machine)));
        return new("side", SourceSet.Of([]), new(new EngineeredCatalogue(
            proved.Value, [], ImmutableSortedDictionary<MachineId, AllOrdersReport>.Empty), ImmutableArray<Diagnostic>.Empty));
    }
}
