using System.Numerics;

namespace Configurator.Planning;

/// <summary>What the option logic proves of the conditions under which fits are mounted.</summary>
/// <param name="Together">Can both hold in one configuration?</param>
/// <param name="Implies">Does the second hold wherever the first does?</param>
/// <param name="CountAny">In how many configurations at least one of them holds.</param>
/// <param name="Total">Number of configurations.</param>
internal sealed record ConditionFacts(
    bool[,] Together,
    bool[,] Implies,
    Func<IReadOnlyCollection<int>, BigInteger> CountAny,
    BigInteger Total
)
{
    /// <summary>False where the rules are too entangled to count: then the number of conditions stands in.</summary>
    public bool IsCounted { get; init; } = true;

    public int Count => Together.GetLength(0);
}
