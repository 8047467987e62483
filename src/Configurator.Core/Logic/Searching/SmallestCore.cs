namespace Configurator.Core.Logic.Searching;

/// <summary>
/// The smallest set of switches that cannot all be on. Every contradiction shares a member with every set of switches
/// whose removal would mend things; so a smallest set that meets all such sets found so far is either contradictory,
/// and
/// then a smallest one, or shows a further set.
/// </summary>
/// <remarks>Source: Ignatiev, Previti, Liffiton and Marques-Silva, Smallest MUS extraction with minimal hitting sets,
/// 2015.</remarks>
internal static class SmallestCore
{
    private const int RoundsMax = 400;

    /// <summary>Null where all switches can be on. Beyond its rounds the set found is minimal, but perhaps not
    /// smallest.</summary>
    public static List<int>? Find(Solver solver, IReadOnlyList<int> switches)
    {
        if (solver.Solve([.. switches]))
        {
            return null;
        }

        var minimal = Minimal(solver, [.. solver.Core]);
        var mends = new List<HashSet<int>>();
        for (var round = 0; round < RoundsMax; round++)
        {
            var candidate = HittingSet.Smallest(mends, minimal.Count, solver.Spend);
            if (candidate is null || candidate.Count >= minimal.Count)
            {
                return minimal;
            }

            if (!solver.Solve([.. candidate]))
            {
                return Minimal(solver, candidate);
            }

            mends.Add(Mend(solver, candidate, switches));
        }

        return minimal;
    }

    /// <summary>Leaves members out one by one for as long as the contradiction stays.</summary>
    public static List<int> Minimal(Solver solver, List<int> core)
    {
        foreach (var member in core.Order().ToList())
        {
            var without = core.Where(other => other != member).ToList();
            if (core.Contains(member) && !solver.Solve([.. without]))
            {
                core = [.. without.Where(solver.Core.Contains)];
            }
        }

        return [.. core.Order()];
    }

    /// <summary>Switches on as many as go together with the candidate; what stays off must be met by every
    /// contradiction.</summary>
    private static HashSet<int> Mend(Solver solver, List<int> candidate, IReadOnlyList<int> switches)
    {
        var on = new List<int>(candidate);
        var off = new HashSet<int>();
        foreach (var other in switches.Where(other => !candidate.Contains(other)))
        {
            if (solver.Solve([.. on, other]))
            {
                on.Add(other);
            }
            else
            {
                off.Add(other);
            }
        }

        return off;
    }
}
