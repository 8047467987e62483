using System.Collections.Immutable;
using Configurator.Core.Engineering;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Planning;

/// <summary>Reads from a machine and its rules what has to be placed and where it could be.</summary>
internal static class ProblemBuilder
{
    /// <param name="homes">Homes so far; empty to plan from scratch.</param>
    /// <param name="waived">What does not hold while looking for what would help.</param>
    public static PlanProblem Of(
        OrderLogic logic,
        ImmutableSortedDictionary<InstanceKey, Home> homes,
        SpotFault waived = SpotFault.None
    )
    {
        var machine = logic.Machine;
        ImmutableArray<FitInstance> fits =
        [
            .. FitConditions
                .Sound(machine)
                .Where(instance => instance.Fit.Wiring == Wiring.Port)
                .OrderBy(fit => fit.Key),
        ];
        ImmutableArray<Condition> conditions =
        [
            .. fits.Select(FitConditions.Of).DistinctBy(ConditionKey.Of, StringComparer.Ordinal),
        ];
        var indexOf = conditions
            .Select(ConditionKey.Of)
            .Select((key, i) => (key, i))
            .ToDictionary(StringComparer.Ordinal);
        var carriers = Carriers(machine, fits);
        var groups = Groups(machine, carriers);
        ImmutableArray<PlanItem> items =
        [
            .. fits.Select(
                (fit, i) =>
                    new PlanItem(
                        i,
                        fit,
                        indexOf[ConditionKey.Of(FitConditions.Of(fit))],
                        Small(fit.Device.Current),
                        CurrentMax(fit),
                        Small(fit.Device.ExtraCurrent),
                        OldHome(fit, homes, groups)
                    )
            ),
        ];
        return new(
            items,
            groups,
            carriers,
            Facts(logic, conditions),
            Cables(machine, items, groups, waived),
            Pairs(machine, items, groups),
            SplitterCable(machine),
            BoxCables(machine)
        );
    }

    private static Dictionary<string, int> ToDictionary(
        this IEnumerable<(string Key, int Index)> pairs,
        StringComparer comparer
    ) => pairs.ToDictionary(pair => pair.Key, pair => pair.Index, comparer);

    private static ImmutableArray<PlanCarrier> Carriers(Machine machine, ImmutableArray<FitInstance> fits)
    {
        var extensions = machine.Control.Masters.Where(master => master.IsExtension).ToList();
        var masters = machine.Control.Masters.Select(master =>
            (Name: master.Name.Value, master.Ports, Hub: (int?)null)
        );
        var hubs = fits.Select((fit, i) => (Fit: fit, Index: i))
            .Where(hub => FittedMachine.AsCarrier(hub.Fit) is not null && hub.Fit.Key.Ordinal == 1)
            .Select(hub =>
                (Name: FittedMachine.AsCarrier(hub.Fit)!.Value, Ports: hub.Fit.Device.Ports!, Hub: (int?)hub.Index)
            );
        return
        [
            .. masters
                .Concat(hubs)
                .Select(
                    (carrier, i) =>
                        new PlanCarrier(
                            i,
                            carrier.Name,
                            carrier.Ports.Numbers.Count(),
                            carrier.Hub is null ? machine.Control.SparePorts : 0,
                            PlanSpot.CurrentOf(carrier.Ports).Value,
                            carrier.Ports.CurrentInAll is { } all ? Microamperes.From(all).Value : null,
                            carrier.Ports.ExtraInAll is { } extra ? Microamperes.From(extra).Value : null,
                            extensions.FindIndex(master => master.Name.Value == carrier.Name) is var at and >= 0
                                ? at
                                : null,
                            carrier.Hub
                        )
                ),
        ];
    }

    private static ImmutableArray<PlanGroup> Groups(Machine machine, ImmutableArray<PlanCarrier> carriers)
    {
        var groups = ImmutableArray.CreateBuilder<PlanGroup>();
        foreach (var carrier in carriers)
        {
            var ports = machine.Carriers[carrier.Name];
            foreach (var offered in Enum.GetValues<PortClass>())
            {
                ImmutableArray<int> numbers = [.. ports.Numbers.Where(port => ports.ClassOf(port) == offered)];
                if (!numbers.IsEmpty)
                {
                    groups.Add(
                        new(groups.Count, carrier.Index, carrier.Name, offered, numbers, carrier.Extension, carrier.Hub)
                    );
                }
            }
        }

        return groups.ToImmutable();
    }

    /// <summary>A home that names a port that is there; whether it is a good one is for the checks to say.</summary>
    private static Home? OldHome(
        FitInstance fit,
        ImmutableSortedDictionary<InstanceKey, Home> homes,
        ImmutableArray<PlanGroup> groups
    ) =>
        homes.TryGetValue(fit.Key, out var home)
        && groups.Any(group => group.Name == home.Master && group.Ports.Contains(home.Port))
            ? home
            : null;

    private static long?[,] Cables(
        Machine machine,
        ImmutableArray<PlanItem> items,
        ImmutableArray<PlanGroup> groups,
        SpotFault waived
    )
    {
        var cables = new long?[items.Length, groups.Length];
        foreach (var item in items)
        {
            foreach (var group in groups)
            {
                var spot = PlanSpot.Of(machine, item.Instance, group.Name, group.Class);
                cables[item.Index, group.Index] =
                    spot.IsPossible ? spot.Cable.Value / 1000
                    : spot.Fault == waived ? 0
                    : null;
            }
        }

        return cables;
    }

    private static bool[,] Pairs(Machine machine, ImmutableArray<PlanItem> items, ImmutableArray<PlanGroup> groups)
    {
        var pairs = new bool[items.Length, groups.Length];
        foreach (var item in items)
        {
            foreach (var group in groups)
            {
                pairs[item.Index, group.Index] =
                    group.Class == PortClass.A
                    && Splitting.CanPair(machine, machine.Carriers[group.Name], item.Instance.Device);
            }
        }

        return pairs;
    }

    private static ConditionFacts Facts(OrderLogic logic, ImmutableArray<Condition> conditions)
    {
        var proof = ConditionProof.Of(logic, conditions);
        var together = new bool[conditions.Length, conditions.Length];
        var implies = new bool[conditions.Length, conditions.Length];
        for (var one = 0; one < conditions.Length; one++)
        {
            for (var other = 0; other < conditions.Length; other++)
            {
                together[one, other] = other < one ? together[other, one] : proof.IsPossible([one, other], []);
                implies[one, other] = !proof.IsPossible([one], [other]);
            }
        }

        var total = proof.CountByMix([], []);
        return new(
            together,
            implies,
            any => total is null ? any.Count : total.Value - proof.CountByMix([], any)!.Value,
            total ?? conditions.Length
        )
        {
            IsCounted = total is not null,
            IsByMix = proof.HasMix,
        };
    }

    /// <summary>A hub takes what it draws itself and may hand on; the sum is on the safe side.</summary>
    private static long CurrentMax(FitInstance fit) =>
        FittedMachine.AsCarrier(fit) is null ? Small(fit.Device.Current)
        : fit.Device.Ports!.CurrentInAll is { } inAll ? Small(fit.Device.Current) + Small(inAll)
        : long.MaxValue;

    private static long Small(Quantity? current) => current is null ? 0 : Microamperes.From(current).Value;

    private static long SplitterCable(Machine machine) =>
        machine.Control.Cordsets.IoLink.Cordset is { Lengths: [var shortest, ..] }
            ? Micrometres.From(shortest).Value / 1000
            : 0;

    private static int BoxCables(Machine machine) =>
        FitConditions.Sound(machine).Count(instance => instance.Fit.Wiring == Wiring.Direct)
        + (machine.Control.Masters.IsEmpty ? 0 : 2);
}
