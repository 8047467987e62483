using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Model;

namespace Configurator.Core.Documents;

/// <summary>
/// Names of things on labels and in lists. They come from the fit's name and the device's class, never from counting,
/// so
/// that a device is called the same on every machine and for ever.
/// </summary>
/// <remarks>
/// Source: IEC 81346-1 (<c>=</c> function, <c>+</c> location, <c>-</c> product) and the class letters of IEC 81346-2.
/// </remarks>
public sealed record Designations(DesignationStyle Style)
{
    private const string ControlCable = "WG";
    private const string PowerCable = "WD";
    private const string NetworkCable = "WF";
    private const string TerminalGroup = "XG";
    private const string SplitterLetters = "XS";
    private const string PowerSocket = "XD";
    private const string NetworkSocket = "XF";

    /// <summary><c>=MARKEYE-BX1</c>, or <c>MARKEYE-BX1</c> as a flat tag.</summary>
    public string Of(FitInstance instance) =>
        Product(instance.Key.Fit.Value, instance.Device.Letters, instance.Key.Ordinal);

    public string Of(Master master) => Product(master.Name.Value.Value, master.Device.Letters, 1);

    public string CableOf(FitInstance instance) =>
        Product(
            instance.Key.Fit.Value,
            instance.Device.Kind is DeviceKind.Motor or DeviceKind.Actuator
            && instance.Device.Connection == ConnectionKind.Wired
                ? PowerCable
                : ControlCable,
            instance.Key.Ordinal
        );

    public string TrunkCableOf(Master master, bool isPower) =>
        Product(master.Name.Value.Value, isPower ? PowerCable : NetworkCable, 1);

    /// <summary>Where the trunk enters a master, or leaves it for the next one: <c>=FRONT-KF1:XD1</c> and
    /// <c>:XD2</c>, on the network <c>:XF1</c> and <c>:XF2</c>.</summary>
    public string TrunkPort(Master master, bool isPower, bool isInlet) =>
        $"{Of(master)}:{(isPower ? PowerSocket : NetworkSocket)}{(isInlet ? "1" : "2")}";

    /// <summary>Where the trunk leaves a master, power and network.</summary>
    public ImmutableArray<string> OutletsOf(Master master) =>
        [TrunkPort(master, isPower: true, isInlet: false), TrunkPort(master, isPower: false, isInlet: false)];

    /// <summary>A network cable of its own, and its socket in the wall of the box and at the device.</summary>
    public string NetworkCableOf(FitInstance instance) =>
        Product(instance.Key.Fit.Value, NetworkCable, instance.Key.Ordinal);

    public string NetworkSocketOf(FitInstance instance) =>
        Product(instance.Key.Fit.Value, NetworkSocket, instance.Key.Ordinal);

    public string NetworkPortOf(FitInstance instance) => $"{Of(instance)}:{NetworkSocket}1";

    /// <summary>The splitter that brings a second signal to a port.</summary>
    public string SplitterOf(FitInstance second) => Product(second.Key.Fit.Value, SplitterLetters, second.Key.Ordinal);

    /// <summary>The socket of the control box where the trunk begins.</summary>
    public string TrunkSocket(bool isPower) => Product("trunk", isPower ? PowerSocket : NetworkSocket, 1);

    /// <summary>The terminals in the control box where a directly wired fit ends.</summary>
    public string TerminalsOf(FitInstance instance) =>
        Product(instance.Key.Fit.Value, TerminalGroup, instance.Key.Ordinal);

    /// <summary><c>+LIDUNWIND</c>, or the bare name as a flat tag.</summary>
    public string Of(Station station) =>
        (Style == DesignationStyle.Iec81346 ? "+" : "") + Compact(station.Id.Value.Value);

    /// <summary>A port of a master or hub: <c>=FRONT-KF1:3</c>.</summary>
    public string Port(Machine machine, Home home)
    {
        var carrier = home.Master ?? throw new ArgumentException("a direct home has no port", nameof(home));
        var owner = machine.Control.Find(carrier) is { } master
            ? Of(master)
            : Of(
                machine.Instances.First(instance =>
                    instance.Key.Fit.Value == carrier.Value && instance.Key.Ordinal == 1
                )
            );
        return string.Create(CultureInfo.InvariantCulture, $"{owner}:{home.Port}{(home.IsPinTwo ? " pin 2" : "")}");
    }

    private string Product(string name, string letters, int ordinal) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{(Style == DesignationStyle.Iec81346 ? "=" : "")}{Compact(name)}-{letters}{ordinal}"
        );

    private static string Compact(string name) => name.Replace("-", "", StringComparison.Ordinal).ToUpperInvariant();
}
