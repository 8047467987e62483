using System.Numerics;

namespace Configurator.Core.Logic.Searching;

/// <summary>The sum of weighted literals as binary digits, made of full adders, so that it can be held above or below a
/// number.</summary>
/// <remarks>Source: Eén and Sörensson, Translating pseudo-Boolean constraints into SAT, JSAT 2 (2006), adder
/// networks.</remarks>
internal sealed class BinarySum
{
    private readonly Solver _solver;
    private readonly List<int> _digits = [];

    /// <param name="terms">Solver literals with positive weights.</param>
    public BinarySum(Solver solver, IEnumerable<(int Literal, long Weight)> terms)
    {
        _solver = solver;
        var columns = new List<Queue<int>>();
        foreach (var (literal, weight) in terms)
        {
            Most += weight;
            for (var rest = (ulong)weight; rest != 0; rest &= rest - 1)
            {
                Column(columns, BitOperations.TrailingZeroCount(rest)).Enqueue(literal);
            }
        }

        for (var digit = 0; digit < columns.Count; digit++)
        {
            _digits.Add(Add(columns, digit));
        }
    }

    /// <summary>All weights together.</summary>
    public long Most { get; }

    /// <summary>An assumption under which the sum is at least so much.</summary>
    public int AtLeast(long least) => Compare(least, isLeast: true);

    /// <summary>An assumption under which the sum is at most so much.</summary>
    public int AtMost(long most) => Compare(most, isLeast: false);

    /// <summary>
    /// At least: wherever the number has a 1, the sum has one too or has a 1 higher up where the number has a 0.
    /// At most is the same with ones and zeros exchanged.
    /// </summary>
    private int Compare(long number, bool isLeast)
    {
        var holds = RuleSearch.Positive(_solver.NewVariable());
        var isBeyond = isLeast ? number > Most : number < 0;
        if (isBeyond)
        {
            _solver.Add(holds ^ 1);
            return holds;
        }

        if (isLeast ? number <= 0 : number >= Most)
        {
            return holds;
        }

        var wanted = isLeast ? 1 : 0;
        List<int> higher = [holds ^ 1];
        for (var digit = _digits.Count - 1; digit >= 0; digit--)
        {
            var literal = _digits[digit] < 0 ? -1 : _digits[digit] ^ (1 - wanted);
            if ((number >> digit & 1) == wanted)
            {
                AddClause(higher, literal, isZeroColumn: _digits[digit] < 0, isLeast);
            }
            else if (literal >= 0)
            {
                higher.Add(literal);
            }
            else if (!isLeast)
            {
                return holds; // A digit that is always 0 where the number has a 1: the sum is smaller.
            }
        }

        return holds;
    }

    private void AddClause(List<int> higher, int literal, bool isZeroColumn, bool isLeast)
    {
        if (!isZeroColumn)
        {
            _solver.Add([.. higher, literal]);
        }
        else if (isLeast)
        {
            _solver.Add([.. higher]);
        }
    }

    private static Queue<int> Column(List<Queue<int>> columns, int digit)
    {
        while (columns.Count <= digit)
        {
            columns.Add(new());
        }

        return columns[digit];
    }

    /// <summary>Reduces a column to one literal, carrying into the next; -1 where it is always 0.</summary>
    private int Add(List<Queue<int>> columns, int digit)
    {
        var column = columns[digit];
        while (column.Count > 1)
        {
            var (a, b) = (column.Dequeue(), column.Dequeue());
            int? c = column.Count > 0 ? column.Dequeue() : null;
            column.Enqueue(c is { } third ? Odd(Odd(a, b), third) : Odd(a, b));
            Column(columns, digit + 1).Enqueue(c is { } last ? Majority(a, b, last) : Both(a, b));
        }

        return column.Count == 0 ? -1 : column.Dequeue();
    }

    private int Odd(int a, int b)
    {
        var odd = RuleSearch.Positive(_solver.NewVariable());
        _solver.Add(odd ^ 1, a, b);
        _solver.Add(odd ^ 1, a ^ 1, b ^ 1);
        _solver.Add(odd, a ^ 1, b);
        _solver.Add(odd, a, b ^ 1);
        return odd;
    }

    private int Both(int a, int b)
    {
        var both = RuleSearch.Positive(_solver.NewVariable());
        _solver.Add(both ^ 1, a);
        _solver.Add(both ^ 1, b);
        _solver.Add(both, a ^ 1, b ^ 1);
        return both;
    }

    private int Majority(int a, int b, int c)
    {
        var carry = RuleSearch.Positive(_solver.NewVariable());
        foreach (var (one, other) in new[] { (a, b), (a, c), (b, c) })
        {
            _solver.Add(carry ^ 1, one, other);
            _solver.Add(carry, one ^ 1, other ^ 1);
        }

        return carry;
    }
}
