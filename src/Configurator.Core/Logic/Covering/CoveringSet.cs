using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Logic.Covering;

/// <summary>
/// A small set of configurations in which every two options stand together in every way that the rules allow: taken and
/// not taken, and each number with each. Engineering and testing these finds whatever two options do to each other.
/// </summary>
/// <param name="Pairs">Pairs of values that some configuration has; all are covered. A choice of one out of many counts
/// as one parameter with a value for each member.</param>
/// <param name="AtLeast">No smaller set covers them all.</param>
public sealed record CoveringSet(ImmutableArray<Configuration> Configurations, int Pairs, int AtLeast)
{
    /// <summary>Values looked at while improving; a second or less on a catalogue of fifty options.</summary>
    public const long QuickWork = 20_000_000;

    private const ulong Seed = 1;

    /// <summary>Null where not computed: the rules are too entangled to compile. The same set every time.</summary>
    public static CoveringSet? Of(OrderLogic logic, long work)
    {
        if (logic.Compiled.Diagram is not { } diagram)
        {
            return null;
        }

        if (diagram.IsEmpty)
        {
            return new([], 0, 0);
        }

        var space = new RulesSpace(logic.Compiled, diagram);
        var pairs = space.AllowedPairs();
        return new(
            [
                .. Cover
                    .Find(() => new RulesSpace(logic.Compiled, diagram), Seed, work)
                    .Select(row => space.Configuration(logic.Machine.Id.Value, row)),
            ],
            pairs.All.Count(),
            pairs.RowsMin
        );
    }
}
