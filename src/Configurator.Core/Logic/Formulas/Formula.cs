using System.Collections.Immutable;

namespace Configurator.Core.Logic.Formulas;

/// <summary>A variable takes one of the given values; bit i stands for value i, so a variable has at most 64
/// values.</summary>
internal readonly record struct Literal(int Variable, ulong Values)
{
    public static Literal True(int variable) => new(variable, 0b10);

    public static Literal False(int variable) => new(variable, 0b01);
}

/// <summary>At least one of the literals holds. <paramref name="Rule"/> is an index of what said so.</summary>
internal sealed record Clause(ImmutableArray<Literal> Literals, int Rule);

/// <summary>Variables with their numbers of values, and clauses over them. An option is a variable with two
/// values.</summary>
internal sealed record Formula(ImmutableArray<int> Sizes, ImmutableArray<Clause> Clauses)
{
    public const int ValuesMax = 64;

    public ulong Domain(int variable) => DomainOf(Sizes[variable]);

    public static ulong DomainOf(int size) => size == ValuesMax ? ulong.MaxValue : (1UL << size) - 1;
}
