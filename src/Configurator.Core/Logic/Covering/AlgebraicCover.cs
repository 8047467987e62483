using System.Collections.Immutable;

namespace Configurator.Core.Logic.Covering;

/// <summary>Covering sets by construction, for parameters that all rows are allowed of. Where a parameter has fewer
/// values than the construction, the others are folded onto them: what is covered stays covered.</summary>
internal static class AlgebraicCover
{
    private const int FieldMax = 128;

    /// <summary>The smallest set that the constructions give; each row a value for each parameter. Null where none
    /// fits.</summary>
    public static List<int[]>? Of(ImmutableArray<int> sizes)
    {
        var most = sizes.Max();
        if (most == 2)
        {
            return TwoValues(sizes);
        }

        return Enumerable
            .Range(most, Math.Max(0, Math.Min(FieldMax, 2 * most) - most + 1))
            .Select(GaloisField.Of)
            .OfType<GaloisField>()
            .Select(field => Folded(Product(field, sizes.Length), sizes))
            .MinBy(rows => rows.Count);
    }

    /// <summary>
    /// Columns are sets of half the rows that all hold the first row: none lies in another, any two meet, and no two
    /// hold all rows. Optimal.
    /// </summary>
    /// <remarks>Source: Kleitman and Spencer, Families of k-independent sets, 1973; Katona 1973.</remarks>
    private static List<int[]> TwoValues(ImmutableArray<int> sizes)
    {
        var rows = 4;
        while (Choose(rows - 1, (rows / 2) - 1) < sizes.Length)
        {
            rows++;
        }

        var columns = Subsets(rows - 1, (rows / 2) - 1).Take(sizes.Length).ToList();
        return
        [
            .. Enumerable
                .Range(0, rows)
                .Select(row =>
                    sizes
                        .Select(
                            (size, i) =>
                                size == 1 ? 0
                                : row == 0 || columns[i].Contains(row - 1) ? 1
                                : 0
                        )
                        .ToArray()
                ),
        ];
    }

    private static long Choose(int n, int k) =>
        Enumerable.Range(1, k).Aggregate(1L, (product, i) => Math.Min(1L << 40, product * (n - k + i) / i));

    private static IEnumerable<ImmutableHashSet<int>> Subsets(int n, int k) =>
        k == 0
            ?
            [
                [],
            ]
        : n < k ? []
        : Subsets(n - 1, k).Concat(Subsets(n - 1, k - 1).Select(subset => subset.Add(n - 1)));

    /// <summary>
    /// An orthogonal array of q*q rows and q + 1 columns; more columns are copies, told apart by further rows in which
    /// only unequal values need to meet: q*q - q for each q-fold of columns.
    /// </summary>
    /// <remarks>Source: Bush, Orthogonal arrays of index unity, 1952; the product after Stevens and Mendelsohn, New
    /// recursive methods for transversal covers, 1999.</remarks>
    private static List<int[]> Product(GaloisField field, int columns)
    {
        var q = field.Size;
        List<int[]> rows =
        [
            .. All(q * q).Select(row => All(columns).Select(column => Line(row, column % (q + 1))).ToArray()),
        ];
        for (var group = q + 1; group < columns; group *= q)
        {
            var apart = group;
            rows.AddRange(
                All(q * q)
                    .Where(row => row >= q)
                    .Select(row => All(columns).Select(column => Line(row, column / apart % q)).ToArray())
            );
        }

        return rows;

        // The line of slope row / q through the point row % q, at the column; the last column gives the slope.
        int Line(int row, int column) => column == q ? row / q : field.Add(field.Multiply(row / q, column), row % q);
    }

    private static IEnumerable<int> All(int count) => Enumerable.Range(0, count);

    private static List<int[]> Folded(List<int[]> rows, ImmutableArray<int> sizes) =>
        [
            .. rows.Select(row => row.Select((value, i) => value % sizes[i]).ToArray())
                .DistinctBy(row => string.Join(' ', row), StringComparer.Ordinal),
        ];
}
