using System.Numerics;
using Configurator.Core.Logic.Searching;
using Configurator.Core.Tests.Logic.Orders;
using CsCheck;

namespace Configurator.Core.Tests.Logic.Searching;

// Source of every expected answer: trying all sets or all assignments.
public class CoreTests
{
    private const int Cases = 500;

    [Fact]
    public void The_smallest_core_is_contradictory_and_no_contradiction_is_smaller() =>
        Compiling.Cases.Check(
            RandomClauses.NearThreshold(7),
            61,
            Cases,
            both => IsSmallest(both.Variables, both.Clauses),
            RandomClauses.Words
        );

    [Fact]
    public void A_minimal_core_is_contradictory_and_needs_each_of_its_members() =>
        Compiling.Cases.Check(
            RandomClauses.NearThreshold(7),
            62,
            Cases,
            both =>
            {
                var (solver, switches) = Switched(both.Variables, both.Clauses);
                if (!solver.Solve([.. switches]))
                {
                    var minimal = SmallestCore
                        .Minimal(solver, [.. solver.Core])
                        .Select(member => both.Clauses[switches.IndexOf(member)])
                        .ToList();
                    Assert.False(RandomClauses.IsSatisfiable(both.Variables, minimal));
                    Assert.All(
                        minimal,
                        clause =>
                            Assert.True(
                                RandomClauses.IsSatisfiable(
                                    both.Variables,
                                    [.. minimal.Where(other => other != clause)]
                                )
                            )
                    );
                }
            },
            RandomClauses.Words
        );

    [Fact]
    public void The_smallest_hitting_set_meets_every_set_and_none_with_fewer_members_does() =>
        Compiling.Cases.Check(
            Gen.Int[0, 9].HashSet[0, 5].Array[0, 8],
            63,
            Cases,
            sets =>
            {
                const int Limit = 5;
                ImmutableSets all = new(sets);
                var found = HittingSet.Smallest(sets, Limit, _ => { });
                var smallest = all.SmallestSize();
                Assert.Equal(smallest < Limit ? smallest : null, found?.Count);
                Assert.All(sets, set => Assert.True(found is null || set.Overlaps(found)));
            },
            sets => string.Join(" | ", sets.Select(set => string.Join(' ', set)))
        );

    [Fact]
    public void A_counter_allows_so_many_literals_and_not_one_more()
    {
        for (var literals = 0; literals <= 7; literals++)
        {
            for (var most = 0; most <= literals; most++)
            {
                Counts(literals, most);
            }
        }
    }

    private static void Counts(int literals, int most)
    {
        var solver = new Solver();
        int[] all = [.. Enumerable.Range(0, literals).Select(_ => RuleSearch.Positive(solver.NewVariable()))];
        var counter = new ChangeCounter(solver, all, most);
        Assert.Equal(most, counter.Most);
        for (var assignment = 0; assignment < 1 << literals; assignment++)
        {
            int[] chosen = [.. all.Select((literal, i) => (assignment >> i & 1) == 1 ? literal : literal ^ 1)];
            for (var limit = 0; limit <= most; limit++)
            {
                Assert.Equal(
                    BitOperations.PopCount((uint)assignment) <= limit,
                    solver.Solve([.. chosen, .. counter.AtMost(limit)])
                );
            }
        }
    }

    /// <summary>Clauses cannot all hold exactly when every assignment breaks one of them.</summary>
    private static void IsSmallest(int variables, int[][] clauses)
    {
        var (solver, switches) = Switched(variables, clauses);
        var broken = BitSets.Minimal(
            Enumerable
                .Range(0, 1 << variables)
                .Select(assignment =>
                    clauses
                        .Select((clause, i) => RandomClauses.Holds(clause, assignment) ? 0 : 1UL << i)
                        .Aggregate(0UL, (bits, bit) => bits | bit)
                )
        );
        var core = SmallestCore.Find(solver, switches);
        Assert.Equal(broken[0] == 0, core is null);
        if (core is not null)
        {
            var members = core.Aggregate(0UL, (bits, member) => bits | (1UL << switches.IndexOf(member)));
            Assert.All(broken, bits => Assert.NotEqual(0UL, bits & members));
            Assert.False(BitSets.CanBeMet(broken, core.Count - 1));
        }
    }

    private static (Solver Solver, List<int> Switches) Switched(int variables, int[][] clauses)
    {
        var solver = new Solver();
        Enumerable.Range(0, variables).ToList().ForEach(_ => solver.NewVariable());
        var switches = clauses.Select(_ => RuleSearch.Positive(solver.NewVariable())).ToList();
        for (var clause = 0; clause < clauses.Length; clause++)
        {
            solver.Add([switches[clause] ^ 1, .. clauses[clause]]);
        }

        return (solver, switches);
    }

    /// <summary>Sets of the numbers 0 to 9.</summary>
    private sealed record ImmutableSets(HashSet<int>[] Sets)
    {
        /// <summary>Of all 1024 sets the smallest that meets each; null where one of them is empty.</summary>
        public int? SmallestSize() =>
            Enumerable
                .Range(0, 1024)
                .Where(chosen => Sets.All(set => set.Any(member => (chosen >> member & 1) == 1)))
                .Select(chosen => (int?)BitOperations.PopCount((uint)chosen))
                .Min();
    }
}
