namespace Configurator.Core.Logic.Weighing;

/// <summary>How far a distribution may go: counted, so that it ends the same on every machine.</summary>
/// <param name="Weights">Different weights at any node.</param>
/// <param name="Products">Pairs of weights brought together, in all.</param>
internal sealed record DistributionLimits(int Weights, long Products)
{
    public static DistributionLimits Usual { get; } = new(100_000, 20_000_000);
}
