using System.Numerics;

namespace Configurator.Core.Logic.Differences;

/// <summary>A rule that only one side has.</summary>
/// <param name="RuledOut">Configurations of the other side that break it, whatever else has changed; null where not
/// computed.</param>
/// <param name="Of">All configurations of the other side.</param>
public sealed record ChangedRule(OrderRule Rule, BigInteger? RuledOut, BigInteger? Of);
