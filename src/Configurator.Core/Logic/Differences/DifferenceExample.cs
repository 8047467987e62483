using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Logic.Differences;

/// <param name="Because">The rules that it breaks on the other side.</param>
public sealed record DifferenceExample(Configuration Configuration, ImmutableArray<OrderRule> Because);
