using System.Collections.Immutable;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>The most severe washing that any order brings to a part, proved with the rules of its machine.</summary>
/// <param name="About">Names the part as its findings do.</param>
/// <param name="Shown">What its marking shows of what that washing asks for.</param>
public sealed record WorstWash(string About, AreaId Area, WashMethod Method, Shown Shown)
{
    /// <summary>One for each part that some order mounts.</summary>
    /// <param name="witnesses">Configurations already found: what one of them keeps needs no further proof.</param>
    internal static IEnumerable<WorstWash> Of(Machine machine, Weigher weigher, ImmutableArray<Configuration> witnesses)
    {
        if (machine.Sanitation is null)
        {
            return [];
        }

        var known = new Dictionary<string, bool>(StringComparer.Ordinal);
        return
        [
            .. WashedParts
                .Of(machine, machine.Plan)
                .Where(part => part.HasMarking && IsPossible(part.When))
                .Select(Worst),
        ];

        WorstWash Worst(WashedPart part)
        {
            var method = Washing
                .Changes(machine, part.Area)
                .Where(change => IsPossible(new AllOf([part.When, change.When], default)))
                .Select(change => change.Wash)
                .Append(part.Area.Wash)
                .Max();
            return new(part.About, part.Area.Id.Value, method, IngressChecks.Worst(part, method));
        }

        // A condition that weighs 1 is as heavy as that in the heaviest order exactly where some order keeps it.
        bool IsPossible(Condition condition)
        {
            var key = ConditionKey.Of(condition);
            if (!known.TryGetValue(key, out var isPossible))
            {
                isPossible =
                    witnesses.Any(witness => condition.Holds(witness.QuantityOf))
                    || weigher.Heaviest(new(0, [new(condition, 1)]), PartialOrder.Empty) is { Weight: > 0 };
                known[key] = isPossible;
            }

            return isPossible;
        }
    }
}
