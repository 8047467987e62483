using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Loads;

/// <summary>A stretch that the trunk can have: from the box or a master to the next one mounted.</summary>
/// <param name="When">Both are mounted, and none between them.</param>
internal sealed record TrunkStep(Station From, Master Next, Condition When)
{
    public static IEnumerable<TrunkStep> Of(Machine machine)
    {
        var masters = machine.Control.Masters;
        for (var next = 0; next < masters.Length; next++)
        {
            for (var before = next - 1; before >= -1; before--)
            {
                var from = before < 0 ? machine.Control.Box.Station : masters[before].Station;
                yield return new(from, masters[next], Follows(machine, before, next));
                if (before >= 0 && !masters[before].IsExtension)
                {
                    break;
                }
            }
        }
    }

    private static AllOf Follows(Machine machine, int before, int next)
    {
        var masters = machine.Control.Masters;
        return new(
            [
                FitConditions.Of(machine, masters[next]),
                .. before < 0 ? [] : ImmutableArray.Create(FitConditions.Of(machine, masters[before])),
                .. masters[(before + 1)..next]
                    .Select(Condition (between) => new NoneOf([FitConditions.Of(machine, between)], default)),
            ],
            default
        );
    }
}
