using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Loads;

/// <summary>When devices are mounted, as conditions on the order.</summary>
public static class FitConditions
{
    public static Condition Always { get; } = new AllOf([], default);

    /// <summary>What fits it is ordered, often enough, and its own condition holds.</summary>
    public static Condition Of(FitInstance instance)
    {
        ImmutableArray<Condition> parts =
        [
            .. instance.Option is { } option ? [Brought(option, instance)] : ImmutableArray<Condition>.Empty,
            .. instance.Fit.When is { } when ? [when] : ImmutableArray<Condition>.Empty,
        ];
        return parts is [var only] ? only : new AllOf(parts, instance.Fit.Name.Span);
    }

    /// <summary>An extension is mounted when any fit at home there is.</summary>
    public static Condition Of(Machine machine, Master master) =>
        !master.IsExtension ? Always : Any(At(machine, master.Name.Value));

    /// <summary>Some of them is mounted.</summary>
    public static Condition Any(IEnumerable<FitInstance> instances)
    {
        ImmutableArray<Condition> each =
        [
            .. instances.Select(Of).DistinctBy(Logic.ConditionKey.Of, StringComparer.Ordinal),
        ];
        return each is [var only] ? only
            : each.Any(one => one is AllOf { Of.IsEmpty: true }) ? Always
            : new AnyOf(each, default);
    }

    /// <summary>Instances at home on a master or hub.</summary>
    public static IEnumerable<FitInstance> At(Machine machine, MasterName carrier) =>
        Sound(machine).Where(instance => machine.Plan.HomeOf(instance.Key)?.Master == carrier);

    /// <summary>Instances at home on this one where it is a hub; none on any other.</summary>
    public static IEnumerable<FitInstance> Behind(Machine machine, FitInstance instance) =>
        FittedMachine.AsCarrier(instance) is { } hub ? At(machine, hub).Where(guest => guest.Key != instance.Key) : [];

    /// <summary>Instances whose definitions have no fault: all that <see cref="FittedMachine"/> mounts.</summary>
    public static IEnumerable<FitInstance> Sound(Machine machine) =>
        machine.Instances.Where(instance => FittedMachine.IsSound(machine, instance));

    private static OptionCount Brought(Option option, FitInstance instance) =>
        new(
            option.Id.Value,
            instance.Fit.Per == FitPer.Quantity ? instance.Key.Ordinal : 1,
            null,
            instance.Fit.Name.Span
        );
}
