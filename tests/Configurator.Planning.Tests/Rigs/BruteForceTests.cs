using System.Collections.Concurrent;
using Configurator.Core.Tests.Engineering.Rigs;

namespace Configurator.Planning.Tests.Rigs;

// Source of every expected value: trying every plan (BruteForce) on facts found by going through every configuration.
public class BruteForceTests(ITestOutputHelper output)
{
    private const int Cases = 160;
    private const int CasesOfNight = 20_000;

    [Fact]
    public void A_plan_from_scratch_is_the_best_of_all_plans() => Check(1, Cases, Scratch);

    [Fact]
    public void New_fits_are_placed_in_the_best_way_that_leaves_all_homes_as_they_are() => Check(2, Cases / 2, Keeping);

    [Fact]
    public void A_plan_with_the_fewest_moves_is_the_best_of_all_plans_with_so_few() => Check(3, Cases / 2, Moving);

    [Trait("Length", "nightly")]
    [Fact(Explicit = true)]
    public void Thousands_of_plans_from_scratch_are_the_best_of_all_plans() => Check(4, CasesOfNight, Scratch);

    [Trait("Length", "nightly")]
    [Fact(Explicit = true)]
    public void Thousands_of_plans_that_keep_homes_are_the_best_of_all_that_do() => Check(5, CasesOfNight, Keeping);

    [Trait("Length", "nightly")]
    [Fact(Explicit = true)]
    public void Thousands_of_plans_with_the_fewest_moves_are_the_best_of_all_with_so_few() =>
        Check(6, CasesOfNight, Moving);

    private static BruteForceAgreement Scratch(int number)
    {
        var rig = RandomRigs.Tiny(number, 8);
        return BruteForceAgreement.On(rig, RigText.Logic(rig), RigPlanner.NoHomes, PlanMode.KeepHomes);
    }

    private static BruteForceAgreement Keeping(int number) => Again(number, 8, PlanMode.KeepHomes);

    private static BruteForceAgreement Moving(int number) => Again(number, 6, PlanMode.FewestMoves);

    /// <summary>Plans the standard machine and some options, then all.</summary>
    private static BruteForceAgreement Again(int number, int fits, PlanMode mode)
    {
        var rig = RandomRigs.Tiny(number, fits);
        var early = rig with { Fits = [.. rig.Fits.Where((_, i) => (number >> (i % 3) & 1) == 0 || i % 4 == 0)] };
        var homes = RigPlanner.Plan(RigText.Logic(early)).Homes.Only(_ => true);
        return BruteForceAgreement.On(rig, RigText.Logic(rig), homes, mode);
    }

    private void Check(int stream, int cases, Func<int, BruteForceAgreement> run)
    {
        var failures = new ConcurrentBag<(int Length, string Words)>();
        var (exact, stages, leaves) = (0, 0, 0L);
        Parallel.For(
            0,
            cases,
            i =>
            {
                var number = (stream * 100_000) + i;
                var agreement = run(number);
                Interlocked.Add(ref exact, agreement.IsBoundExact ? 1 : 0);
                Interlocked.Add(ref stages, agreement.StagesProved);
                Interlocked.Add(ref leaves, agreement.Leaves);
                if (agreement.Fault is { } fault)
                {
                    failures.Add((agreement.Rig.Fits.Length, $"case {number}: {fault}\n{agreement.Rig}"));
                }
            }
        );
        output.WriteLine(
            $"{cases} machines, {leaves} plans tried; in {exact} of them the bound on currents costs nothing; "
                + $"{stages} stages proved"
        );
        Assert.True(failures.IsEmpty, $"{failures.Count} fail; {string.Join("\n\n", failures.Order().Take(3).Select(failure => failure.Words))}");
    }
}
