using System.Numerics;

namespace Configurator.Planning;

/// <summary>What the option logic proves of the conditions under which fits are mounted.</summary>
/// <param name="Together">Can both hold in one configuration?</param>
/// <param name="Implies">Does the second hold wherever the first does?</param>
/// <param name="CountAny">In how many configurations at least one of them holds, counted by the declared order mix
/// where the machine has one.</param>
/// <param name="Total">What all configurations count so.</param>
internal sealed record ConditionFacts(
    bool[,] Together,
    bool[,] Implies,
    Func<IReadOnlyCollection<int>, BigInteger> CountAny,
    BigInteger Total
)
{
    /// <summary>False where the rules are too entangled to count: then the number of conditions stands in.</summary>
    public bool IsCounted { get; init; } = true;

    /// <summary>Are configurations counted by a declared order mix?</summary>
    public bool IsByMix { get; init; }

    public int Count => Together.GetLength(0);
}
