using Configurator.Core.Model;

namespace Configurator.Core.Logic.Weighing;

/// <param name="Weight">Added where the condition holds; may be negative.</param>
public readonly record struct WeightedTerm(Condition When, long Weight);
