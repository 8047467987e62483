using System.Collections.Immutable;
using Configurator.Core.Diagnostics;

namespace Configurator.Core.Review;

/// <summary>What a change of definitions means.</summary>
/// <param name="Before">Name of the earlier side.</param>
/// <param name="After">Name of the later side.</param>
/// <param name="Changes">By topic, then kind, then weight.</param>
/// <param name="Limits">What could not be compared, and why: sentences without full stop.</param>
/// <param name="Faults">What is wrong with the later side, whether new or not.</param>
public sealed record ReviewReport(
    string Before,
    string After,
    ImmutableArray<Change> Changes,
    ImmutableArray<string> Limits,
    ImmutableArray<ReviewFault> Faults
)
{
    /// <summary>Topics of which nothing is known, so that they count neither as changed nor as unchanged.</summary>
    public ImmutableHashSet<ReviewTopic> Uncompared { get; init; } = [];

    /// <summary>Homes in the plans of the machines that both sides have, on the later one.</summary>
    public int Homes { get; init; }

    /// <summary>Published configurations that both sides could engineer.</summary>
    public int Published { get; init; }

    public IEnumerable<Change> On(ReviewTopic topic) => Changes.Where(change => change.Kind.Topic == topic);

    public int Count(Severity level) => Changes.Count(change => change.Level == level);
}

/// <param name="IsNew">The earlier side was not reported for it.</param>
public sealed record ReviewFault(Diagnostic Diagnostic, bool IsNew);
