using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering;

/// <summary>What is mounted on a machine built to a configuration, and where each cable goes.</summary>
/// <param name="Pins">Homes that hold here: the port plan's, or those of a delivered machine.</param>
/// <param name="Fitted">Instances mounted, by key.</param>
/// <param name="Masters">Masters mounted, in trunk order: an extension only when something fitted is at home
/// there.</param>
public sealed record FittedMachine(
    Machine Machine,
    Configuration Configuration,
    PortPlan Pins,
    ImmutableArray<FitInstance> Fitted,
    ImmutableArray<Master> Masters
)
{
    public static FittedMachine Of(Machine machine, Configuration configuration, PortPlan pins)
    {
        ImmutableArray<FitInstance> fitted =
        [
            .. machine.Instances.Where(instance => instance.IsFitted(configuration) && IsSound(machine, instance)),
        ];
        var used = fitted.Select(instance => pins.HomeOf(instance.Key)?.Master).OfType<MasterName>().ToHashSet();
        return new(
            machine,
            configuration,
            pins,
            fitted,
            [.. machine.Control.Masters.Where(master => !master.IsExtension || used.Contains(master.Name.Value))]
        );
    }

    /// <summary>What was faulty in the definitions is left out: it can only take loads away, so what fails still
    /// fails.</summary>
    internal static bool IsSound(Machine machine, FitInstance instance) =>
        instance.Device.IsWhole
        && (instance.Option is not { } option || !machine.FaultyOptions.Contains(option.Id.Value));

    /// <summary>Instances that need a cable of their own, each with its home; null where the plan gives none.</summary>
    public IEnumerable<(FitInstance Instance, Home? Home)> Cabled =>
        Fitted
            .Where(instance => instance.Fit.Wiring != Wiring.Inside)
            .Select(instance => (instance, Pins.HomeOf(instance.Key)));

    /// <summary>As something fitted, or as a master.</summary>
    public bool Mounts(DeviceId device) =>
        Fitted.Any(instance => instance.Device.Id.Value == device)
        || Masters.Any(master => master.Device.Id.Value == device);

    /// <summary>Instances plugged into the ports of that master or hub.</summary>
    public IEnumerable<(FitInstance Instance, Home Home)> PluggedInto(MasterName carrier) =>
        Cabled.Where(pair => pair.Home?.Master == carrier).Select(pair => (pair.Instance, pair.Home!.Value));

    /// <summary>The hub that this instance is, as a carrier of ports; null for every other device.</summary>
    public static MasterName? AsCarrier(FitInstance instance) =>
        instance.Device is { Kind: DeviceKind.Hub, Ports: not null } ? new(instance.Key.Fit.Value) : null;

    /// <summary>What is plugged into this instance where it is a hub; nothing for any other.</summary>
    public IEnumerable<FitInstance> Behind(FitInstance instance) =>
        AsCarrier(instance) is { } hub
            ? PluggedInto(hub).Select(pair => pair.Instance).Where(guest => guest.Key != instance.Key)
            : [];

    /// <summary>Ports of mounted masters and hubs that nothing is plugged into.</summary>
    public IEnumerable<Home> OpenPorts =>
        Masters
            .Select(master => (Name: master.Name.Value, master.Ports))
            .Concat(
                Fitted
                    .Where(instance => AsCarrier(instance) is not null)
                    .Select(instance => (Name: AsCarrier(instance)!.Value, Ports: instance.Device.Ports!))
            )
            .SelectMany(carrier =>
                carrier
                    .Ports.Numbers.Except(PluggedInto(carrier.Name).Select(pair => pair.Home.Port))
                    .Select(port => new Home(carrier.Name, port))
            );

    /// <summary>The master at the end of the trunk, whose outlets lead nowhere; null where none is mounted.</summary>
    public Master? LastMaster => Masters.IsEmpty ? null : Masters[^1];

    /// <summary>Where the ports of a carrier are: a master's station or a hub's; null where it is not
    /// mounted.</summary>
    public Station? StationOf(MasterName carrier) =>
        Masters.FirstOrDefault(master => master.Name.Value == carrier)?.Station
        ?? Fitted.FirstOrDefault(instance => AsCarrier(instance) == carrier)?.Station;
}
