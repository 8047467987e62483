using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>Spreads the fits of a machine over its stations: one instance each.</summary>
internal static class InstanceBinder
{
    /// <summary>The machine with its instances; those that find no place are left out, and what brings them is not
    /// whole.</summary>
    public static Machine WithInstances(
        Machine machine,
        Names<Device> devices,
        Names<Station> stations,
        ICollection<Diagnostic> report
    )
    {
        CheckNames(machine, report);
        CheckFeeders(machine, report);
        CheckStops(machine, report);
        var standard = SpreadAll(machine.Id.Value, null, machine.Standard);
        var brought = machine
            .Options.Values.Select(option =>
                (Option: option, Instances: SpreadAll(machine.Id.Value, option, option.Fits))
            )
            .ToList();
        var faulty = brought.Where(pair => !pair.Instances.IsWhole).Select(pair => pair.Option.Id.Value);
        return machine with
        {
            FaultyOptions = machine.FaultyOptions.Union(faulty),
            IsWhole = machine.IsWhole && standard.IsWhole,
            Instances =
            [
                .. standard
                    .All.Concat(brought.SelectMany(pair => pair.Instances.All))
                    .DistinctBy(instance => instance.Key)
                    .OrderBy(instance => instance.Key),
            ],
        };

        Spread SpreadAll(MachineId id, Option? option, ImmutableArray<Fit> fits)
        {
            var before = report.Count;
            ImmutableArray<FitInstance> all =
            [
                .. fits.SelectMany(fit => SpreadOne(id, option, fit, devices, stations, report)),
            ];
            return new(all, report.Count == before && fits.Sum(fit => fit.StationsOn(id).Length) == all.Length);
        }
    }

    private sealed record Spread(ImmutableArray<FitInstance> All, bool IsWhole);

    private static IEnumerable<FitInstance> SpreadOne(
        MachineId machine,
        Option? option,
        Fit fit,
        Names<Device> devices,
        Names<Station> stations,
        ICollection<Diagnostic> report
    )
    {
        var device = devices.Known[fit.DeviceOn(machine).Value.Value];
        var at = fit.StationsOn(machine);
        CheckQuantity(option, fit, at.Length, report);
        for (var i = 0; i < at.Length; i++)
        {
            if (stations.Find(at[i].Select(id => id.Value), report) is { } station)
            {
                yield return new(
                    new(option?.Id.Value.Value ?? InstanceKey.Standard, fit.Name.Value, i + 1),
                    option,
                    fit,
                    device,
                    station
                );
            }
        }
    }

    /// <summary>A fit per quantity needs a station for each, and an option that has a quantity.</summary>
    private static void CheckQuantity(Option? option, Fit fit, int stations, ICollection<Diagnostic> report)
    {
        if (
            fit.Per == FitPer.Quantity
            && option is null or { IsWhole: true }
            && (option?.Quantity?.To ?? 0) != stations
        )
        {
            var most = option?.Quantity is { } range ? FormattableString.Invariant($"up to {range.To}") : "no quantity";
            report.Add(
                BindingDiagnostics.QuantityImpossible(
                    fit.Name.Select(name => option?.Id.Value.Value ?? name.Value),
                    FormattableString.Invariant(
                        $"has {most}, but its fit `{fit.Name.Value}` has {stations} station{(stations == 1 ? "" : "s")}"
                    ),
                    "name one station for each that can be ordered"
                )
            );
        }
    }

    /// <summary>What feeds a fit of the standard machine may come with an option; nothing is said where one of these
    /// has a fault.</summary>
    private static void CheckFeeders(Machine machine, ICollection<Diagnostic> report)
    {
        if (machine.FaultyOptions.IsEmpty && machine.IsWhole)
        {
            FitBinder.FindFeeders(
                machine.Standard,
                machine.Standard.Concat(machine.Options.Values.SelectMany(option => option.Fits)),
                report
            );
        }
    }

    /// <summary>Stop functions that fits and circuits name are those of the machine.</summary>
    private static void CheckStops(Machine machine, ICollection<Diagnostic> report)
    {
        var stops = Names<StopFunction>.Of($"stop function on `{machine.Id.Value}`", machine.Control.Stops, stop =>
            stop.Name.Value
        );
        var fits = machine.Standard.Concat(machine.Options.Values.SelectMany(option => option.Fits));
        var named = fits.SelectMany(fit => fit.DroppedBy.Concat(new[] { fit.Stop }.OfType<Located<string>>()))
            .Concat((machine.Control.Power?.Circuits ?? []).SelectMany(circuit => circuit.DroppedBy));
        foreach (var name in machine.IsWhole ? named : [])
        {
            stops.Find(name, report);
        }
    }

    /// <summary>Names of fits and masters become designations: each stands once on a machine, hyphens aside.</summary>
    private static void CheckNames(Machine machine, ICollection<Diagnostic> report)
    {
        var fits = machine.Standard.Concat(machine.Options.Values.SelectMany(option => option.Fits));
        var names = machine
            .Control.Masters.Select(master => master.Name.Select(name => name.Value))
            .Concat(fits.Select(fit => fit.Name.Select(name => name.Value)));
        var first = new Dictionary<string, SourceSpan>(StringComparer.Ordinal);
        foreach (var name in names)
        {
            var key = name.Value.Replace("-", "", StringComparison.Ordinal);
            if (!first.TryAdd(key, name.Span))
            {
                report.Add(BindingDiagnostics.Taken($"fit name on `{machine.Id.Value}`", name, first[key]));
            }
        }
    }
}
