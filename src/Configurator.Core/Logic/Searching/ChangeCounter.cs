namespace Configurator.Core.Logic.Searching;

/// <summary>Counts how many of some literals are true, up to a number, by a sequential counter.</summary>
/// <remarks>Source: Sinz, Towards an optimal CNF encoding of Boolean cardinality constraints, CP 2005.</remarks>
internal sealed class ChangeCounter
{
    private readonly int[] _moreThan;

    /// <param name="most">The largest number that can be asked for.</param>
    public ChangeCounter(Solver solver, IReadOnlyList<int> literals, int most)
    {
        Most = most;
        var before = new int[most + 1];
        Array.Fill(before, -1);
        foreach (var literal in literals)
        {
            before = Add(solver, literal, before);
        }

        _moreThan = before;
    }

    public int Most { get; }

    /// <summary>Assumptions under which at most so many are true.</summary>
    public IEnumerable<int> AtMost(int count) =>
        count > Most || count >= _moreThan.Length || _moreThan[count] < 0 ? [] : [_moreThan[count] ^ 1];

    /// <summary>Entry i: a literal that is true where more than i of the literals so far are; -1 where that cannot
    /// be.</summary>
    private static int[] Add(Solver solver, int literal, int[] before)
    {
        var after = new int[before.Length];
        for (var i = 0; i < after.Length; i++)
        {
            var isPossible = i == 0 || before[i - 1] >= 0 || before[i] >= 0;
            after[i] = isPossible ? RuleSearch.Positive(solver.NewVariable()) : -1;
            if (!isPossible)
            {
                continue;
            }

            if (before[i] >= 0)
            {
                solver.Add(before[i] ^ 1, after[i]);
            }

            if (i == 0)
            {
                solver.Add(literal ^ 1, after[i]);
            }
            else if (before[i - 1] >= 0)
            {
                solver.Add(literal ^ 1, before[i - 1] ^ 1, after[i]);
            }
        }

        return after;
    }
}
