using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>Names that the controller program gets are no longer than it takes.</summary>
internal static class TagChecks
{
    public static void OfFit(Fit fit, IEnumerable<Device> devices, ICollection<Diagnostic> report)
    {
        var mounted = devices.ToList();
        if (fit.Wiring == Wiring.Inside && mounted.TrueForAll(device => device.Safety is null))
        {
            return;
        }

        var last = Math.Max(1, fit.On.Values.Select(on => on.Stations?.Length ?? 0).Append(fit.Stations.Length).Max());
        var tags = mounted
            .SelectMany(SignalNames.Of)
            .Select(signal => Tags.Of(new(InstanceKey.Standard, fit.Name.Value, last), signal));
        Check(tags.MaxBy(tag => tag.Length)!, fit.Name.Select(name => name.Value), report);
    }

    public static void OfOption(Located<string> option, ICollection<Diagnostic> report) =>
        Check(Tags.Enable(new(option.Value)), option, report);

    public static void OfMaster(Located<string> master, ICollection<Diagnostic> report) =>
        Check(Tags.Structure(new(master.Value), isInput: false), master, report);

    private static void Check(string name, Located<string> from, ICollection<Diagnostic> report)
    {
        if (name.Length > Tags.LengthMax)
        {
            report.Add(ProcessDataDiagnostics.TagTooLong(name, from));
        }
    }
}
