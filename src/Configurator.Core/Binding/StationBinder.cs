using System.Collections.Immutable;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Binding;

/// <summary>Binds the stations of a machine to its areas and cable paths.</summary>
internal sealed class StationBinder(ImmutableArray<Area> areas, Route route, ICollection<Diagnostic> report)
{
    private readonly Names<Area> _areas = Names<Area>.Of("area", areas, area => area.Id.Value.Value);
    private readonly Names<RouteNode> _nodes = Names<RouteNode>.Of("node", route.Nodes, node => node.Id.Value);

    public Names<Station> Bind(ImmutableArray<Fields> all)
    {
        var stations = Unique.By(
            "station",
            all.Select(Read).OfType<Station>(),
            station => station.Id.Select(id => id.Value),
            report
        );
        return Names<Station>.Of("station", stations, station => station.Id.Value.Value);
    }

    private Station? Read(Fields f)
    {
        if (
            f.One<string>("station") is not { } id
            || f.Value<Text>("title") is not { } title
            || f.Value<Quantity>("drop") is not { } drop
            || f.One<string>("area") is not { } areaName
            || f.One<string>("node") is not { } nodeName
        )
        {
            return null;
        }

        var area = _areas.Find(areaName, report);
        var node = _nodes.Find(nodeName, report);
        return area is null || node is null
            ? null
            : new(id.Select(text => new StationId(text)), title, area, node.Id, Micrometres.From(drop));
    }

    /// <summary>A cable path leads from every station to the control box; each from which none does is
    /// reported.</summary>
    public static bool AreReached(Machine machine, ICollection<Diagnostic> report)
    {
        var before = report.Count;
        var box = machine.Control.Box.Station.Node;
        var reached = machine.Route.DistancesFrom(box);
        foreach (var station in machine.Stations.Where(station => !reached.ContainsKey(station.Node)))
        {
            report.Add(BindingDiagnostics.NoPath("station", station.Id.Value.Value, box.Value, station.Id.Span));
        }

        return report.Count == before;
    }
}
