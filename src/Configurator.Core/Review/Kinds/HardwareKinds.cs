using System.Collections.Immutable;
using Configurator.Core.Diagnostics;

namespace Configurator.Core.Review.Kinds;

/// <summary>What is mounted, and what it comes to.</summary>
public static class HardwareKinds
{
    public static readonly ChangeKind CoresChanged = new(
        "cores-changed",
        ReviewTopic.Hardware,
        Severity.Warning,
        "Cores and terminals",
        "A wireman lands a wire elsewhere, or another cable, at the same device"
    );

    public static readonly ChangeKind SignalsChanged = new(
        "signals-changed",
        ReviewTopic.Hardware,
        Severity.Warning,
        "Signals of the controller",
        "The controller's program must use, or leave, them"
    );

    public static readonly ChangeKind DeviceRedefined = new(
        "device-redefined",
        ReviewTopic.Hardware,
        Severity.Note,
        "Values of devices",
        "The device keeps its name; sums, documents and spares follow the new values"
    );

    public static readonly ChangeKind MasterChanged = new(
        "master-changed",
        ReviewTopic.Hardware,
        Severity.Note,
        "Masters added and removed",
        "An order needs more or fewer of them"
    );

    public static readonly ChangeKind DeviceChanged = new(
        "device-changed",
        ReviewTopic.Hardware,
        Severity.Note,
        "Devices added, removed, swapped",
        "The parts of the machine change"
    );

    public static readonly ChangeKind CableChanged = new(
        "cable-changed",
        ReviewTopic.Hardware,
        Severity.Note,
        "Cables added, removed, changed",
        "Another cable, or another length, is to be bought"
    );

    public static readonly ChangeKind ImageChanged = new(
        "image-changed",
        ReviewTopic.Hardware,
        Severity.Note,
        "Process image",
        "The controller's program reads other octets"
    );

    public static readonly ChangeKind LoadChanged = new(
        "load-changed",
        ReviewTopic.Hardware,
        Severity.Note,
        "Loads, parts and price",
        "Published configurations weigh, draw or cost otherwise"
    );

    public static readonly ChangeKind WorstLoadChanged = new(
        "worst-load-changed",
        ReviewTopic.Hardware,
        Severity.Note,
        "The most that any order comes to",
        "The heaviest of all configurations, published or not"
    );

    public static ImmutableArray<ChangeKind> All { get; } =
    [
        CoresChanged,
        SignalsChanged,
        DeviceRedefined,
        MasterChanged,
        DeviceChanged,
        CableChanged,
        ImageChanged,
        LoadChanged,
        WorstLoadChanged,
    ];
}
