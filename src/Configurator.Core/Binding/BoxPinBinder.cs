using System.Collections.Immutable;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>Binds the numbers of inputs, outputs and ports of the box that a port plan keeps.</summary>
internal static class BoxPinBinder
{
    /// <summary>What names no instance of the machine is reported and left out.</summary>
    public static ImmutableSortedDictionary<InstanceKey, Located<BoxPins>> Read(
        Machine machine,
        Fields plan,
        ICollection<Diagnostic> report
    )
    {
        var instances = Names<FitInstance>.Of("fit instance", machine.Instances, instance => instance.Key.ToString());
        var given = plan.Table<Fields>("box");
        var others = instances.Known.Keys.Except(given.Select(line => line.Key.Value), StringComparer.Ordinal).ToList();
        var points = ImmutableSortedDictionary.CreateBuilder<InstanceKey, Located<BoxPins>>();
        foreach (
            var (key, fields) in given.Where(line =>
                machine.IsWhole && !PortPlanBinder.IsOfUnknownFit(machine, instances, line.Key)
            )
        )
        {
            if (PortPlanBinder.Find(instances, key, others, report) is { } instance)
            {
                points[instance.Key] = new(new(Numbers(fields.Value)), key.Span);
            }
        }

        return points.ToImmutable();
    }

    private static ImmutableSortedDictionary<BoxPoint, ImmutableArray<int>> Numbers(Fields fields) =>
        Enum.GetValues<BoxPoint>()
            .Select(point =>
                KeyValuePair.Create(
                    point,
                    ImmutableArray.CreateRange(
                        fields.Many<int>(BoxPointNames.Key(point)).Select(number => number.Value)
                    )
                )
            )
            .Where(own => !own.Value.IsEmpty)
            .ToImmutableSortedDictionary();
}
