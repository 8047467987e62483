using System.Numerics;

namespace Configurator.Core.Logic.Weighing;

/// <summary>How many configurations weigh so much.</summary>
/// <param name="Configurations">Or their measure, where configurations are weighted by an order mix.</param>
public readonly record struct WeightClass(long Weight, BigInteger Configurations);
