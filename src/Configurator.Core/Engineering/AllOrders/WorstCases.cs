using Configurator.Core.Engineering.Box;
using Configurator.Core.Engineering.Hygiene;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Engineering.Power;
using Configurator.Core.Engineering.Timing;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.AllOrders;

/// <summary>
/// Sums over fits whose heaviest configurations are the worst cases of every check: where each of them passes, no other
/// configuration can fail.
/// </summary>
internal static class WorstCases
{
    public static IEnumerable<WeightedSum> Of(Machine machine) =>
        Ports(machine)
            .Concat(Carriers(machine))
            .Concat(Hubs(machine))
            .Concat(Trunk(machine))
            .Concat(Box(machine))
            .Concat(TrunkSums.Of(machine))
            .Concat(SupplyChecks.Sums(machine))
            .Concat(Safety(machine))
            .Concat(BoxPointChecks.Sums(machine))
            .Concat(BoxChannelChecks.Sums(machine))
            .Concat(ProcessImage.Sums(machine))
            .Concat(CableSums.Of(machine))
            .Where(sum => !sum.Terms.IsEmpty);

    /// <summary>How many can be plugged into one port at once, and what they draw there.</summary>
    private static IEnumerable<WeightedSum> Ports(Machine machine) =>
        FitConditions
            .Sound(machine)
            .Select(instance => (Instance: instance, Home: machine.Plan.HomeOf(instance.Key)))
            .Where(pair => pair.Home is { IsDirect: false })
            .GroupBy(pair => (pair.Home!.Value.Master, pair.Home.Value.Port))
            .SelectMany(port =>
                new[]
                {
                    FitSums.Of(port.Select(pair => (pair.Instance, 1L))),
                    FitSums.Of(port.SelectMany(pair => Drawing(machine, pair.Instance))),
                    FitSums.Of(port.Select(pair => (pair.Instance, Small(pair.Instance.Device.ExtraCurrent)))),
                }
            );

    /// <summary>What a master or hub has to give in all, and how many of its ports are taken.</summary>
    private static IEnumerable<WeightedSum> Carriers(Machine machine)
    {
        foreach (var carrier in machine.Carriers.Keys)
        {
            var plugged = FitConditions.At(machine, carrier).ToList();
            yield return FitSums.Of(plugged.SelectMany(instance => Drawing(machine, instance)));
            yield return FitSums.Of(plugged.Select(instance => (instance, Small(instance.Device.ExtraCurrent))));
            yield return new(
                0,
                [
                    .. plugged
                        .GroupBy(instance => machine.Plan.HomeOf(instance.Key)!.Value.Port)
                        .Select(port => new WeightedTerm(
                            new AnyOf([.. port.Select(FitConditions.Of)], port.First().Fit.Name.Span),
                            1
                        )),
                ]
            );
        }
    }

    /// <summary>Something at home on a hub without the hub.</summary>
    private static IEnumerable<WeightedSum> Hubs(Machine machine)
    {
        foreach (var hub in FitConditions.Sound(machine))
        {
            if (FittedMachine.AsCarrier(hub) is { } carrier)
            {
                foreach (var guest in FitConditions.At(machine, carrier))
                {
                    yield return FitSums.Of([(guest, 1), (hub, -1)]);
                }
            }
        }
    }

    /// <summary>Each stretch that the trunk can have.</summary>
    private static IEnumerable<WeightedSum> Trunk(Machine machine) =>
        TrunkStep.Of(machine).Select(step => new WeightedSum(0, [new(step.When, 1)]));

    /// <summary>Cables into the box, and signals to its fast inputs.</summary>
    private static IEnumerable<WeightedSum> Box(Machine machine)
    {
        var direct = FitConditions.Sound(machine).Where(instance => instance.Fit.Wiring == Wiring.Direct).ToList();
        yield return FitSums.Of(direct.Select(instance => (instance, 1L)));
        yield return FitSums.Of(
            direct
                .Where(instance => instance.Device.Connection is ConnectionKind.Switching or ConnectionKind.IoLink)
                .Select(instance => (instance, 1L))
        );
    }

    /// <summary>Safety inputs and outputs of the box.</summary>
    private static IEnumerable<WeightedSum> Safety(Machine machine)
    {
        var needing = FitConditions.Sound(machine).Where(instance => instance.Device.Safety is not null).ToList();
        yield return FitSums.Of(needing.Select(instance => (instance, (long)instance.Device.Safety!.Inputs)));
        yield return FitSums.Of(needing.Select(instance => (instance, (long)instance.Device.Safety!.Outputs)));
    }

    /// <summary>What an instance draws from its port; a hub with all that hangs on it.</summary>
    private static IEnumerable<(FitInstance, long)> Drawing(Machine machine, FitInstance instance) =>
        FitConditions
            .Behind(machine, instance)
            .Prepend(instance)
            .Select(drawing => (drawing, Small(drawing.Device.Current)));

    private static long Small(Quantity? current) => current is null ? 0 : Microamperes.From(current).Value;
}
