using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Logic.Formulas;
using CsCheck;

namespace Configurator.Core.Tests.Logic.Compiling;

/// <summary>Formulas over variables of two to five values, small enough to try every assignment.</summary>
internal static class RandomFormulas
{
    private const int VariablesMax = 8;
    private const int AssignmentsMax = 4096;

    public static Gen<Formula> All { get; } =
        from sizes in Gen.Frequency((6, 2), (2, 3), (1, 4), (1, 5)).Array[1, VariablesMax]
        let limited = Limited(sizes)
        from clauses in Literals(limited).Array[0, limited.Length * 3]
        select new Formula(limited, [.. clauses.Select((literals, i) => new Clause(literals, i))]);

    /// <summary>A formula and values that its variables are held to.</summary>
    public static Gen<(Formula Formula, ulong[] Within)> WithValues { get; } =
        from formula in All
        from within in Gen.ULong.Array[formula.Sizes.Length]
        from isHeld in Gen.Frequency((1, true), (2, false)).Array[formula.Sizes.Length]
        select (
            formula,
            within.Select((values, i) => isHeld[i] ? values & formula.Domain(i) : formula.Domain(i)).ToArray()
        );

    public static string Words(Formula formula) =>
        string.Join(' ', formula.Sizes)
        + "\n  "
        + string.Join("\n  ", formula.Clauses.Select(clause => string.Join(" or ", clause.Literals.Select(Words))))
        + "\n";

    /// <summary>Two to four literals, also of one variable twice, with no value at all or with every one.</summary>
    private static Gen<ImmutableArray<Literal>> Literals(ImmutableArray<int> sizes) =>
        Gen.Frequency((1, Gen.Int[0, 1]), (20, Gen.Int[2, 4]))
            .SelectMany(length => Literal(sizes).Array[length])
            .Select(literals => literals.ToImmutableArray());

    private static Gen<Literal> Literal(ImmutableArray<int> sizes) =>
        from variable in Gen.Int[0, sizes.Length - 1]
        from values in Gen.ULong
        select new Literal(variable, values & Formula.DomainOf(sizes[variable]));

    private static ImmutableArray<int> Limited(int[] sizes)
    {
        var assignments = 1;
        return [.. sizes.TakeWhile(size => (assignments *= size) <= AssignmentsMax)];
    }

    private static string Words(Literal literal) =>
        string.Create(CultureInfo.InvariantCulture, $"{literal.Variable}:{literal.Values:b}");
}
