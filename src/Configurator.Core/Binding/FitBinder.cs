using System.Collections.Immutable;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>Binds fits; their stations are resolved by each machine, for each has its own.</summary>
internal static class FitBinder
{
    /// <summary>Those whose device is known and whose form is sound.</summary>
    public static ImmutableArray<Fit> Bind(
        ImmutableArray<Fields> all,
        Names<Device> devices,
        ICollection<Diagnostic> report
    ) => [.. all.Select(f => Read(f, devices, report)).OfType<Fit>()];

    /// <summary>What feeds any of these is one of those.</summary>
    public static void FindFeeders(IEnumerable<Fit> fed, IEnumerable<Fit> among, ICollection<Diagnostic> report)
    {
        var names = Names<Fit>.Of("fit", among, fit => fit.Name.Value.Value);
        foreach (var feeder in fed.SelectMany(fit => fit.FedBy))
        {
            names.Find(feeder, report);
        }
    }

    private static Fit? Read(Fields f, Names<Device> devices, ICollection<Diagnostic> report)
    {
        if (ReadForm(f, devices, report) is not { } fit)
        {
            return null;
        }

        TagChecks.OfFit(
            fit,
            Devices(f, fit.Device.Select(id => id.Value)).Select(named => devices.Known[named.Value]),
            report
        );
        return fit;
    }

    private static Fit? ReadForm(Fields f, Names<Device> devices, ICollection<Diagnostic> report)
    {
        if (
            f.One<string>("fit") is not { } name
            || f.One<string>("device") is not { } device
            || Devices(f, device).Select(named => devices.Find(named, report)).ToList().Contains(null)
            || !f.IsWhole
        )
        {
            return null;
        }

        if (devices.Known[device.Value] is { IsWhole: true } whole)
        {
            CheckParameters(f, whole, report);
        }

        return new(name.Select(text => new FitName(text)), device.Select(id => new DeviceId(id)), Stations(f))
        {
            Purpose = f.Value<Text>("purpose") ?? Text.Empty,
            Per = f.Value("per", FitPer.Option),
            When = f.Value<Condition>("when"),
            Wiring = f.Value("wiring", Wiring.Port),
            Settings = f.Many<string>("settings"),
            Set = f.Table<string>("set")
                .ToImmutableSortedDictionary(entry => entry.Key.Value, entry => entry.Value, StringComparer.Ordinal),
            PositionError = f.Value<Quantity>("position-error"),
            Simultaneity = f.Value<Quantity>("simultaneity"),
            MovesAt = f.Value<Quantity>("moves-at"),
            AnswerWithin = f.Value<Quantity>("answer-within"),
            FedBy = f.Many<string>("fed-by"),
            DroppedBy = f.Many<string>("dropped-by"),
            Stop = f.One<string>("stop"),
            HasNetwork = f.Value("network", otherwise: false),
            On = f.Table<Fields>("on")
                .ToImmutableSortedDictionary(
                    entry => new MachineId(entry.Key.Value),
                    entry => Difference(entry.Key.Span, entry.Value.Value)
                ),
        };
    }

    private static IEnumerable<Located<string>> Devices(Fields f, Located<string> usual) =>
        [
            usual,
            .. f.Table<Fields>("on").Select(entry => entry.Value.Value.One<string>("device")).OfType<Located<string>>(),
        ];

    private static ImmutableArray<Located<StationId>> Stations(Fields f) =>
        [.. f.Many<string>("stations").Select(station => station.Select(id => new StationId(id)))];

    private static FitDifference Difference(SourceSpan span, Fields f) =>
        new(f.One<string>("device")?.Select(id => new DeviceId(id)), f.Has("stations") ? Stations(f) : null, span);

    /// <summary>Settings name parameters that the device has, and fixed values have their form.</summary>
    private static void CheckParameters(Fields f, Device device, ICollection<Diagnostic> report)
    {
        var parameters = Names<Parameter>.Of($"parameter of `{device.Id.Value}`", device.Parameters, parameter =>
            parameter.Name.Value
        );
        foreach (var setting in f.Many<string>("settings"))
        {
            parameters.Find(setting, report);
        }

        foreach (var (name, value) in f.Table<string>("set"))
        {
            if (parameters.Find(name, report) is { } parameter)
            {
                ParameterBinder.Value(parameter, value, report);
            }
        }
    }
}
