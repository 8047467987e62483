using System.Collections.Immutable;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Binding;

/// <summary>Binds how a machine is cleaned; it may name only areas of the machine and options offered on it.</summary>
internal sealed class SanitationBinder(
    Names<Area> areas,
    Names<Device> devices,
    RuleBinder rules,
    ICollection<Diagnostic> report
)
{
    /// <summary>The whole of it, or null where any part has a fault: nothing is checked against half of it.</summary>
    public Sanitation? Bind(Fields f)
    {
        var before = report.Count;
        var cap = f.One<string>("cap") is { } name ? devices.Find(name, report) : null;
        var agents = Unique.By("agent", f.Records("agents").Select(Agent).OfType<Agent>(), agent => agent.Id, report);
        ImmutableArray<WashChange> changes = [.. f.Records("changes").Select(Change).OfType<WashChange>()];
        ImmutableArray<AreaBuild> built = [.. f.Records("areas").Select(Build).OfType<AreaBuild>()];
        var isSound = f.IsWhole && report.Count == before && f.Has("cap") == (cap is not null);
        return isSound && f.Value<Fields>("box") is { } box
            ? new(f.Span)
            {
                Cap = cap,
                BoxIngress = [.. box.Many<string>("ingress").Select(marking => marking.Value)],
                BoxMaterials = [.. box.Many<string>("materials").Select(material => material.Value)],
                Floor = f.Value<Quantity>("floor"),
                Slope = f.Value<Quantity>("slope"),
                Agents = agents,
                Changes = changes,
                Areas = built,
                Care = CareBinder.Care(f.Value<Fields>("washing")),
            }
            : null;
    }

    private Agent? Agent(Fields f) =>
        f.One<string>("agent") is { } id
        && f.Value<Text>("title") is { } title
        && f.One<AgentKind>("kind") is { } kind
        && f.One<CleaningStep>("step") is { } step
        && f.Value<Quantity>("temperature") is { } temperature
            ? new(
                id,
                title,
                kind.Value,
                step.Value,
                f.Value<Quantity>("concentration"),
                temperature,
                f.Value<Quantity>("contact"),
                Areas(f)
            )
            {
                When = rules.OfferedCondition(f, "when"),
            }
            : null;

    private WashChange? Change(Fields f) =>
        rules.OfferedCondition(f, "when") is { } when && f.One<WashMethod>("wash") is { } wash
            ? new(when, wash.Value, Areas(f))
            : null;

    private AreaBuild? Build(Fields f) =>
        f.One<string>("area") is { } area && areas.Find(area, report) is { } found
            ? new(found.Id.Value, f.Value<Quantity>("stand-off"), f.One<int>("cables")?.Value, area.Span)
            : null;

    private ImmutableArray<AreaId> Areas(Fields f) =>
        [.. f.Many<string>("areas").Select(area => areas.Find(area, report)?.Id.Value).OfType<AreaId>()];
}
