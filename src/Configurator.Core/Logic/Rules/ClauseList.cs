using System.Collections.Immutable;
using Configurator.Core.Logic.Formulas;

namespace Configurator.Core.Logic.Rules;

/// <summary>Clauses of which all must hold: none means always, an empty one never.</summary>
internal sealed record ClauseList(ImmutableArray<ImmutableArray<Literal>> Clauses)
{
    public static ClauseList Always { get; } = new([]);

    public static ClauseList Never { get; } =
        new([
            [],
        ]);

    public static ClauseList Of(Literal literal) =>
        new([
            [literal],
        ]);

    public static ClauseList And(IEnumerable<ClauseList> parts) => new([.. parts.SelectMany(part => part.Clauses)]);

    /// <summary>At least one part holds: every way to take one clause of each.</summary>
    public static ClauseList Or(IReadOnlyCollection<ClauseList> parts) =>
        parts
            .Where(part => part.Clauses.Length != 1)
            .Aggregate(
                new ClauseList([
                    [.. parts.Where(part => part.Clauses.Length == 1).SelectMany(part => part.Clauses[0])],
                ]),
                (left, right) => new([.. left.Clauses.SelectMany(_ => right.Clauses, (a, b) => a.AddRange(b))])
            );

    /// <summary>How many clauses <see cref="Or"/> would make.</summary>
    public static long OrCount(IEnumerable<ClauseList> parts) =>
        parts.Aggregate(1L, (count, part) => Math.Min(1_000_000, count * Math.Max(1, part.Clauses.Length)));
}
