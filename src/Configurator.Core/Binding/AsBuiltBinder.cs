using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;

namespace Configurator.Core.Binding;

/// <summary>Binds the records of delivered machines.</summary>
internal static class AsBuiltBinder
{
    public static ImmutableArray<AsBuilt> Bind(
        IEnumerable<DefinitionFile> files,
        Names<Machine> machines,
        Names<Option> options,
        ICollection<Diagnostic> report
    ) =>
        Unique.By(
            "as-built record",
            files.Select(file => Read(file, machines, options, report)).OfType<AsBuilt>(),
            record => record.Id.Select(id => id.Value),
            report
        );

    private static AsBuilt? Read(
        DefinitionFile file,
        Names<Machine> machines,
        Names<Option> options,
        ICollection<Diagnostic> report
    )
    {
        var f = file.Fields;
        if (
            f.One<string>("machine") is not { } machineName
            || machines.Find(machineName, report) is not { } machine
            || f.Value<Text>("title") is not { } title
            || f.One<DateOnly>("delivered") is not { } delivered
        )
        {
            return null;
        }

        var lines = new OrderBinder(machine, options, report).Read(f);
        var homes = PortPlanBinder.Read(machine, f, file.Id.Span, report);
        return lines is null
            ? null
            : new(
                file.Id.Select(id => new AsBuiltId(id)),
                machine.Id.Value,
                title,
                delivered.Value,
                lines.On(machine.Id.Value),
                homes
            );
    }
}
