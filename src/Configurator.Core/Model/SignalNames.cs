namespace Configurator.Core.Model;

/// <summary>Last parts of the tags of signals to which no definition gives a name.</summary>
public static class SignalNames
{
    /// <summary>The only signal of a device, plain, at pin 4 or at an input of the box.</summary>
    public const string Plain = "signal";

    /// <summary>The second signal of a device, plain, at pin 2.</summary>
    public const string PinTwo = "pin2";

    /// <summary>Octets that nobody describes.</summary>
    public const string RawInput = "raw-in";

    public const string RawOutput = "raw-out";

    public static string SafetyInput(int number) => FormattableString.Invariant($"channel{number}");

    public static string SafetyOutput(int number) => FormattableString.Invariant($"output{number}");

    /// <summary>What a device tells by a plain input of the box.</summary>
    public static string State(int number) => FormattableString.Invariant($"state{number}");

    /// <summary>What a device is told by a plain output of the box.</summary>
    public static string Command(int number) => FormattableString.Invariant($"command{number}");

    /// <summary>Every name that a signal of a device may have, however it is wired.</summary>
    public static IEnumerable<string> Of(Device device) =>
        (device.IoLink is { } data ? OfData(data) : [])
            .Concat(Enumerable.Range(1, device.Safety?.Inputs ?? 0).Select(SafetyInput))
            .Concat(Enumerable.Range(1, device.Safety?.Outputs ?? 0).Select(SafetyOutput))
            .Concat(Wires(device, CoreTarget.Input).Select(State))
            .Concat(Wires(device, CoreTarget.Output).Select(Command))
            .Append(Plain);

    private static IEnumerable<int> Wires(Device device, CoreTarget target) =>
        Enumerable.Range(1, device.WiresTo(target).Length);

    private static IEnumerable<string> OfData(IoLinkData data) =>
        data.ProcessData is { } items
            ? items.Inputs.Concat(items.Outputs).Select(item => item.Name.Value)
            : [RawInput, RawOutput];
}
