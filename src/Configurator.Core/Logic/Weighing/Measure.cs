using System.Numerics;

namespace Configurator.Core.Logic.Weighing;

/// <summary>How much each value of each variable counts; a configuration counts the product of its values'.</summary>
/// <param name="Of">By variable and value; null where every value counts one.</param>
internal sealed record Measure(BigInteger[]?[] Of)
{
    public static Measure OneEach(int variables) => new(new BigInteger[]?[variables]);

    public BigInteger At(int variable, int value) => Of[variable]?[value] ?? BigInteger.One;
}
