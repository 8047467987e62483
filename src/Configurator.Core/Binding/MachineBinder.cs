using System.Collections.Immutable;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>Binds machines, each with the options offered on it.</summary>
internal static class MachineBinder
{
    public static Names<Machine> Bind(
        IEnumerable<DefinitionFile> files,
        Names<Device> devices,
        Names<Option> options,
        FaultyNames faulty,
        ICollection<Diagnostic> report
    )
    {
        var given = Unique.By("machine", files, file => file.Id, report);
        var names = Names<DefinitionFile>.Of("machine", given, file => file.Id.Value, faulty.Of("machine"));
        var judged = options with
        {
            Known = options.Known.ToImmutableSortedDictionary(
                entry => entry.Key,
                entry => OfKnown(entry.Value, names, report),
                StringComparer.Ordinal
            ),
        };
        var read = given.Select(file => (file.Id, Machine: Read(file, devices, judged, report))).ToList();
        return Names<Machine>.Of(
            "machine",
            read.Select(entry => entry.Machine).OfType<Machine>(),
            machine => machine.Id.Value.Value,
            faulty.Of("machine").Concat(read.Where(entry => entry.Machine is null).Select(entry => entry.Id.Value))
        );
    }

    /// <summary>The option, not whole where it names a machine that does not exist; each of those is
    /// reported.</summary>
    private static Option OfKnown(Option option, Names<DefinitionFile> machines, ICollection<Diagnostic> report) =>
        Mentions(option)
            .Select(mention => machines.Find(mention, report) is not null || machines.Knows(mention.Value))
            .ToList()
            .TrueForAll(isKnown => isKnown)
            ? option
            : option with
            {
                IsWhole = false,
            };

    /// <summary>Every machine that an option names.</summary>
    private static IEnumerable<Located<string>> Mentions(Option option) =>
        option
            .OfferedOn.Select(machine => machine.Select(id => id.Value))
            .Concat(
                option.Fits.SelectMany(fit => fit.On).Select(on => new Located<string>(on.Key.Value, on.Value.Span))
            );

    private static Machine? Read(
        DefinitionFile file,
        Names<Device> devices,
        Names<Option> options,
        ICollection<Diagnostic> report
    )
    {
        var f = file.Fields;
        var id = file.Id.Select(text => new MachineId(text));
        var offered = options
            .Known.Values.Where(option => option.OfferedOn.Any(machine => machine.Value == id.Value))
            .ToImmutableSortedDictionary(option => option.Id.Value, option => option);
        var rules = new RuleBinder(id.Value, offered, options, report);
        var choices = rules.Choices(f);
        var machineRules = rules.Rules(f);
        var limits = rules.Limits(f);
        var mix = rules.OrderMix(f);

        var layout = ReadLayout(f, report);
        var before = report.Count;
        var control = f.Value<Fields>("control") is { } fields
            ? new ControlBinder(layout.Stations, devices, layout.IsWhole ? report : []).Bind(fields)
            : null;
        var sanitation = f.Value<Fields>("sanitation") is { } washing
            ? new SanitationBinder(
                Names<Area>.Of("area", layout.Areas, area => area.Id.Value.Value),
                devices,
                rules,
                layout.IsWhole ? report : []
            ).Bind(washing)
            : null;
        var standard = FitBinder.Bind(f.Records("standard"), devices, report);
        FieldPowerBinder.FindParts(control, f, report);
        var machine = new Machine(
            id,
            f.Value<Text>("title") ?? Text.Of(id.Value.Value),
            f.Value<string>("document") ?? "",
            f.Value<string>("revision") ?? ""
        )
        {
            Summary = f.Value<Text>("summary") ?? Text.Empty,
            Formerly = f.Many<string>("formerly"),
            Rate = f.Value<Quantity>("rate"),
            Pitch = f.Value<Quantity>("pitch"),
            Speed = f.Value<Quantity>("speed"),
            Lanes = f.Value("lanes", 1),
            Areas = layout.Areas,
            Route = layout.Route,
            Stations = [.. layout.Stations.Known.Values.OrderBy(station => station.Id.Span)],
            Control = control ?? ControlArchitecture.Unknown,
            Sanitation = sanitation,
            Library = devices.Known.Values.ToImmutableSortedDictionary(device => device.Id.Value, device => device),
            Choices = choices,
            Rules = machineRules,
            Limits = limits,
            OrderMix = mix,
            Standard = standard,
            Accepted = AcceptedBinder.Bind(f.Records("accepted")),
            Options = offered,
            FaultyOptions = options
                .Faulty.Concat(options.Known.Where(entry => !entry.Value.IsWhole).Select(entry => entry.Key))
                .Select(name => new OptionId(name))
                .ToImmutableSortedSet(),
            IsWhole =
                layout.IsWhole
                && control is not null
                && control.Masters.All(master => master.Device.IsWhole)
                && standard.Length == f.Records("standard").Length
                && f.AreSound("control", "sanitation", "standard", "accepted", "rate", "pitch", "speed")
                && report.Count == before,
        };
        var isReached = !machine.IsWhole || StationBinder.AreReached(machine, report);
        return InstanceBinder.WithInstances(
            machine with
            {
                IsWhole = machine.IsWhole && isReached,
            },
            devices,
            layout.Stations,
            layout.IsWhole ? report : []
        );
    }

    private static Layout ReadLayout(Fields f, ICollection<Diagnostic> report)
    {
        var before = report.Count;
        var areas = Unique.By(
            "area",
            f.Records("areas").Select(ReadArea).OfType<Area>(),
            area => area.Id.Select(id => id.Value),
            report
        );
        var route = f.Value<Fields>("route") is { } fields ? RouteBinder.Bind(fields, report) : new([], []);
        var isSound = f.AreSound("areas", "route") && report.Count == before;
        var given = f.Records("stations").Select(station => station.Value<string>("station")).OfType<string>();
        var stations = new StationBinder(areas, route, isSound ? report : []).Bind(f.Records("stations"));
        return new(
            areas,
            route,
            stations with
            {
                Faulty = [.. given.Where(name => !stations.Known.ContainsKey(name))],
            },
            isSound && f.AreSound("stations") && report.Count == before
        );
    }

    private static Area? ReadArea(Fields f) =>
        f.One<string>("area") is { } id
        && f.Value<Text>("title") is { } title
        && f.One<AreaClass>("class") is { } areaClass
        && f.One<WashMethod>("wash") is { } wash
            ? new(id.Select(text => new AreaId(text)), title, areaClass.Value, wash.Value)
            : null;

    /// <param name="IsWhole">Nothing of it was faulty. Stations that could not be placed are known by name.</param>
    private sealed record Layout(ImmutableArray<Area> Areas, Route Route, Names<Station> Stations, bool IsWhole);
}
