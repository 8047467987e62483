using System.Collections.Immutable;
using Configurator.Core.Engineering.Power;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Loads;

/// <summary>Loads of a whole machine as sums over everything that an order can mount: a fixed part for what is always
/// there, and a part for each fit, under the condition that mounts it.</summary>
public static class MachineLoads
{
    /// <summary>Those that some fit of the machine adds to, prices in each currency that occurs.</summary>
    public static ImmutableArray<Load> Of(Machine machine) =>
        [
            .. Load
                .All.Add(Load.Cable)
                .Add(Load.Extensions)
                .AddRange(Currencies(machine).Select(Load.Price))
                .Where(load => Of(machine, load) is { } sum && (sum.Fixed != 0 || !sum.Terms.IsEmpty)),
        ];

    /// <summary>All that can be weighed by name: these, and the volts lost on the way to each master.</summary>
    public static ImmutableArray<Load> Named(Machine machine) => [.. Of(machine), .. TrunkDrops.Of(machine)];

    /// <summary>In the load's small unit, for the homes of the machine's port plan.</summary>
    public static WeightedSum Of(Machine machine, Load load)
    {
        var terms = Terms(machine, load)
            .Where(term => term.Weight != 0)
            .GroupBy(term => Logic.ConditionKey.Of(term.When), StringComparer.Ordinal)
            .Select(group => new WeightedTerm(group.First().When, group.Sum(term => term.Weight)))
            .ToLookup(term => term.When is AllOf { Of.IsEmpty: true });
        return new(terms[true].Sum(term => term.Weight), [.. terms[false]]);
    }

    private static IEnumerable<WeightedTerm> Terms(Machine machine, Load load) =>
        load.Id switch
        {
            "cable" => CableLoads.Of(machine),
            "extensions" => Extensions(machine, _ => 1),
            "ports-a" or "ports-b" or "ports-hub" => Ports(machine, load),
            _ when TrunkDrops.IsDrop(load) => TrunkDrops.Terms(machine, load),
            _ when Load.IsPrice(load) => Prices(machine, load),
            "box-cables" => Fits(machine, instance => OptionLoads.Of(machine, instance, load))
                .Concat(CableLoads.TrunkEntries(machine)),
            _ => Fits(machine, instance => OptionLoads.Of(machine, instance, load)),
        };

    /// <summary>Options as often as they are taken, and every device that the standard machine lacks.</summary>
    private static IEnumerable<WeightedTerm> Prices(Machine machine, Load load) =>
        machine
            .Options.Values.SelectMany(option =>
                Enumerable
                    .Range(1, option.Quantity?.To ?? 1)
                    .Select(count => new WeightedTerm(
                        new OptionCount(option.Id.Value, count, null, option.Id.Span),
                        Amount(option.Price, load)
                    ))
            )
            .Concat(Fits(machine, instance => instance.Option is null ? 0 : Amount(instance.Device.Price, load)))
            .Concat(Extensions(machine, master => Amount(master.Device.Price, load)));

    /// <summary>A port counts once, whichever of the fits at home there are mounted: two plain signals can share one by
    /// a splitter, fits that never go together by taking turns.</summary>
    private static IEnumerable<WeightedTerm> Ports(Machine machine, Load load) =>
        FitConditions
            .Sound(machine)
            .Where(instance => OptionLoads.Of(machine, instance, load) != 0)
            .GroupBy(instance => machine.Plan.HomeOf(instance.Key) is { } home ? (home.Master, home.Port) : default)
            .Select(port => new WeightedTerm(FitConditions.Any(port), 1));

    private static IEnumerable<WeightedTerm> Fits(Machine machine, Func<FitInstance, long> weight) =>
        FitConditions.Sound(machine).Select(instance => new WeightedTerm(FitConditions.Of(instance), weight(instance)));

    private static IEnumerable<WeightedTerm> Extensions(Machine machine, Func<Master, long> weight) =>
        machine
            .Control.Masters.Where(master => master.IsExtension)
            .Select(master => new WeightedTerm(FitConditions.Of(machine, master), weight(master)));

    private static IEnumerable<string> Currencies(Machine machine) =>
        machine
            .Options.Values.Select(option => option.Price)
            .Concat(machine.Instances.Select(instance => instance.Device.Price))
            .OfType<Quantity>()
            .Select(price => price.Unit.Symbol)
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal);

    private static long Amount(Quantity? price, Load load) =>
        price?.Unit.Symbol == load.Unit ? (long)(price.InBase * load.SmallPerUnit).Ceiling() : 0;
}
