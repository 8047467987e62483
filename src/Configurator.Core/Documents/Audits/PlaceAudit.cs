using Configurator.Core.Model;

namespace Configurator.Core.Documents.Audits;

/// <summary>No two wires of the finished lists end at one place of the controller, the safety controller, the relay
/// that drops torque or the network switch.</summary>
internal static class PlaceAudit
{
    private const int LeadsOn = 9;

    public static IEnumerable<string> Faults(Designations names, DocumentSet set)
    {
        var owners = Owners(set.Engineered.Report.Fitted).Select(names.Of).ToList();
        return Places(set)
            .Where(place => owners.Exists(owner => IsOf(owner, place)))
            .GroupBy(place => place, StringComparer.Ordinal)
            .Where(same => same.Skip(1).Any())
            .Select(same => $"two wires end at `{same.Key}`");
    }

    private static IEnumerable<string> Places(DocumentSet set) =>
        (set.Find("termination-list")?.Rows ?? [])
            .Select(row => row.Cells[LeadsOn].Text)
            .Concat(
                (set.Find("inside-box")?.Rows ?? []).SelectMany(row => new[] { row.Cells[0].Text, row.Cells[1].Text })
            );

    private static IEnumerable<FitInstance> Owners(Engineering.FittedMachine fitted)
    {
        var box = fitted.Machine.Control.Box;
        string?[] named = [box.Safety?.Controller?.Value, box.Safety?.TorqueOff?.Value, box.Network?.Switch.Value];
        return fitted.Fitted.Where(instance =>
            instance is { Option: null, Fit.Wiring: Wiring.Inside }
            && (instance.Device.Kind == DeviceKind.Controller || named.Contains(instance.Key.Fit.Value))
        );
    }

    /// <summary>Terminals follow a colon, numbered inputs and outputs a blank.</summary>
    private static bool IsOf(string owner, string place) =>
        place.Length > owner.Length
        && place.StartsWith(owner, StringComparison.Ordinal)
        && (place[owner.Length] is ':' or ' ');
}
