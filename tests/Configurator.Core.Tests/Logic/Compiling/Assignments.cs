using System.Collections.Immutable;
using Configurator.Core.Logic.Compiling;
using Configurator.Core.Logic.Formulas;

namespace Configurator.Core.Tests.Logic.Compiling;

/// <summary>Tries every assignment of a formula's variables.</summary>
internal static class Assignments
{
    /// <summary>Each assignment as one value a variable.</summary>
    public static IEnumerable<int[]> All(ImmutableArray<int> sizes)
    {
        var count = sizes.Aggregate(1, (product, size) => product * size);
        for (var number = 0; number < count; number++)
        {
            var rest = number;
            var values = new int[sizes.Length];
            for (var variable = 0; variable < values.Length; variable++)
            {
                (rest, values[variable]) = Math.DivRem(rest, sizes[variable]);
            }

            yield return values;
        }
    }

    public static IEnumerable<int[]> Satisfying(Formula formula) =>
        All(formula.Sizes).Where(values => Holds(formula, values));

    public static bool Holds(Formula formula, int[] values) =>
        formula.Clauses.All(clause => clause.Literals.Any(literal => Has(literal.Values, values[literal.Variable])));

    public static bool IsWithin(int[] values, ulong[] within) =>
        values.Select((value, i) => Has(within[i], value)).All(isIn => isIn);

    /// <summary>Which nodes of a diagram the assignment satisfies, told from what kinds of nodes mean.</summary>
    public static bool[] Satisfied(Diagram diagram, int[] values)
    {
        var satisfied = new bool[diagram.NodeCount];
        for (var node = 0; node < satisfied.Length; node++)
        {
            var children = diagram.ChildrenOf(node).ToArray();
            satisfied[node] = diagram.Kinds[node] switch
            {
                NodeKind.Leaf => Has(diagram.Values[node], values[diagram.Variable[node]]),
                NodeKind.All => children.All(child => satisfied[child]),
                NodeKind.One => children.Any(child => satisfied[child]),
                _ => throw new InvalidOperationException(),
            };
        }

        return satisfied;
    }

    public static bool Has(ulong values, int value) => (values >> value & 1) == 1;
}
