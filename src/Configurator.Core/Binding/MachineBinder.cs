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
        IEnumerable<DefinitionFile> files, Names<Device> devices, Names<Option> options, FaultyNames faulty, ICollection<Diagnostic> report)
    {
        var given = Unique.By("machine", files, file => file.Id, report);
        var names = Names<DefinitionFile>.Of("machine", given, file => file.Id.Value, faulty.Of("machine"));
        var offered = options.Without(options.Known.Where(entry => NamesUnknown(entry.Value, names, report)).Select(entry => entry.Key));
        var read = given.Select(file => (file.Id, Machine: Read(file, devices, offered, report))).ToList();
        return Names<Machine>.Of("machine", read.Select(entry => entry.Machine).OfType<Machine>(), machine => machine.Id.Value.Value,
            faulty.Of("machine").Concat(read.Where(entry => entry.Machine is null).Select(entry => entry.Id.Value)));
    }

    private static bool NamesUnknown(Option option, Names<DefinitionFile> machines, ICollection<Diagnostic> report)
    {
        var before = report.Count;
        foreach (var mention in Mentions(option))
        {
            machines.Find(mention, report);
        }

        return report.Count > before;
    }

    /// <summary>Every machine that an option names.</summary>
    private static IEnumerable<Located<string>> Mentions(Option option) => option.OfferedOn.Select(machine => machine.Select(id => id.Value))
        .Concat(option.Fits.SelectMany(fit => fit.On).Select(on => new Located<string>(on.Key.Value, on.Value.Span)));

    private static Machine? Read(DefinitionFile file, Names<Device> devices, Names<Option> options, ICollection<Diagnostic> report)
    {
        var f = file.Fields;
        var id = file.Id.Select(text => new MachineId(text));
        var offered = options.Known.Values.Where(option => option.OfferedOn.Any(machine => machine.Value == id.Value))
            .ToImmutableSortedDictionary(option => option.Id.Value, option => option);
        var rules = new RuleBinder(id.Value, offered, options, report);
        var choices = rules.Choices(f);
        var machineRules = rules.Rules(f);
        var limits = rules.Limits(f);

        if (ReadLayout(f, report) is not { } layout || ReadControl(f, layout, devices, report) is not { } control
            || f.Value<Text>("title") is not { } title || f.Value<string>("document") is not { } document || f.Value<string>("revision") is not { } revision)
        {
            return null;
        }

        var machine = new Machine(id, title, document, revision)
        {
            Summary = f.Value<Text>("summary") ?? Text.Empty,
            Formerly = f.Many<string>("formerly"),
            Rate = f.Value<Quantity>("rate"),
            Lanes = f.Value("lanes", 1),
            Areas = layout.Areas,
            Route = layout.Route,
            Stations = [.. layout.Stations.Known.Values.OrderBy(station => station.Id.Span)],
            Control = control.Architecture,
            Choices = choices,
            Rules = machineRules,
            Limits = limits,
            Standard = control.Standard,
            Accepted = AcceptedBinder.Bind(f.Records("accepted")),
            Options = offered,
            FaultyOptions = options.Faulty.Select(name => new OptionId(name)).ToImmutableSortedSet(),
        };
        return StationBinder.AreReached(machine, report) ? InstanceBinder.WithInstances(machine, devices, layout.Stations, report) : null;
    }

    private static Layout? ReadLayout(Fields f, ICollection<Diagnostic> report)
    {
        var before = report.Count;
        var areas = Unique.By("area", f.Records("areas").Select(ReadArea).OfType<Area>(), area => area.Id.Select(id => id.Value), report);
        var route = f.Value<Fields>("route") is { } fields ? RouteBinder.Bind(fields, report) : new([], []);
        if (!f.AreSound("areas", "route") || report.Count > before)
        {
            return null;
        }

        var stations = new StationBinder(areas, route, report).Bind(f.Records("stations"));
        return f.AreSound("stations") && report.Count == before ? new(areas, route, stations) : null;
    }

    private static Control? ReadControl(Fields f, Layout layout, Names<Device> devices, ICollection<Diagnostic> report)
    {
        var before = report.Count;
        var architecture = f.Value<Fields>("control") is { } fields ? new ControlBinder(layout.Stations, devices, report).Bind(fields) : null;
        var standard = FitBinder.Bind(f.Records("standard"), devices, report);
        return architecture is not null && standard is { } fits && f.AreSound("control", "standard", "accepted") && report.Count == before
            ? new(architecture, fits)
            : null;
    }

    private static Area? ReadArea(Fields f) =>
        f.One<string>("area") is { } id && f.Value<Text>("title") is { } title
        && f.One<AreaClass>("class") is { } areaClass && f.One<WashMethod>("wash") is { } wash
            ? new(id.Select(text => new AreaId(text)), title, areaClass.Value, wash.Value)
            : null;

    private sealed record Layout(ImmutableArray<Area> Areas, Route Route, Names<Station> Stations);

    private sealed record Control(ControlArchitecture Architecture, ImmutableArray<Fit> Standard);
}
