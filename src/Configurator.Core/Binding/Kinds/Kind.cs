using System.Collections.Immutable;
using Configurator.Core.Binding.Shapes;

namespace Configurator.Core.Binding.Kinds;

/// <summary>A kind of definition: the key it starts with, what it holds, and where its files lie.</summary>
/// <param name="Place">Path with <c>*</c> for the parts that are ids; the last <c>*</c> is the definition's
/// own.</param>
internal sealed record Kind(string Name, RecordShape Shape, string Place)
{
    public static ImmutableArray<Kind> All { get; } =
    [
        new("machine", MachineShape.Machine, "machines/*/machine.yaml"),
        new("port-plan", RecordShapes.PortPlan, "machines/*/port-plan.yaml"),
        new("configuration", RecordShapes.Configuration, "machines/{machine}/configurations/*.yaml"),
        new("recipe", RecordShapes.Recipe, "machines/{machine}/recipes/*.yaml"),
        new("as-built", RecordShapes.AsBuilt, "machines/{machine}/as-built/*.yaml"),
        new("device", DeviceShape.Device, "options/devices/*.yaml"),
        new("option", OptionShape.Option, "options/{family}/*.yaml"),
        new("site", RecordShapes.Site, "site-templates/site.yaml"),
    ];

    /// <summary>The kind whose place a path is; null where definitions of no kind lie.</summary>
    public static Kind? At(string path) => All.FirstOrDefault(kind => kind.Match(path) is not null);

    /// <summary>The parts of the path where the place has <c>{...}</c> or <c>*</c>; null where the file lies
    /// elsewhere.</summary>
    public ImmutableArray<string>? Match(string path)
    {
        var parts = path.Split('/');
        var wanted = Place.Split('/');
        if (parts.Length != wanted.Length)
        {
            return null;
        }

        var found = ImmutableArray.CreateBuilder<string>();
        for (var i = 0; i < parts.Length; i++)
        {
            if (wanted[i].StartsWith('{') || wanted[i] == "*")
            {
                found.Add(parts[i]);
            }
            else if (wanted[i] == "*.yaml" && parts[i].EndsWith(".yaml", StringComparison.Ordinal))
            {
                found.Add(parts[i][..^".yaml".Length]);
            }
            else if (wanted[i] != parts[i])
            {
                return null;
            }
        }

        return found.DrainToImmutable();
    }
}
