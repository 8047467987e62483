using Configurator.Benchmarks;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Compiling;
using Configurator.Core.Logic.Formulas;
using Configurator.Core.Logic.Rules;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Tests.Logic.Compiling;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Logic.Weighing;

// Source of every expected optimum: CP-SAT of OR-Tools, a solver that shares no code with ours.
public class IndependentOptimumTests
{
    private const int WeightMax = 1_000_000;

    public static TheoryData<string> Small { get; } =
    ["berkeleydb-c.cnf", "jhipster.cnf", "javagc.cnf", "toybox.cnf", "uclinux.cnf", "ecos-icse11.cnf"];

    public static TheoryData<string> Large { get; } =
    ["fiasco.cnf", "financial-services01.cnf", "busybox-1.18.0.cnf", "automotive01.cnf"];

    public static TheoryData<string> Machines { get; } =
        [.. DemoCatalogue.Machines.Select(machine => machine.Id.Value.Value)];

    [Theory]
    [MemberData(nameof(Small))]
    public void The_heaviest_solution_of_an_open_model_is_the_other_solvers(string file) => Check(OpenModel.Of(file).Formula);

    [Trait("Length", "nightly")]
    [Trait("Nightly", "1")]
    [Theory(Explicit = true)]
    [MemberData(nameof(Large))]
    public void The_heaviest_solution_of_a_large_open_model_is_the_other_solvers(string file) => Check(OpenModel.Of(file).Formula);

    [Theory]
    [InlineData(60, 1)]
    [InlineData(150, 2)]
    public void The_heaviest_order_of_a_synthetic_catalogue_is_the_other_solvers(int options, int seed) =>
        Check(FormulaBuilder.Build(Synthetic.Catalogue(options, seed), groupChoices: true, []).Formula);

    [Theory]
    [MemberData(nameof(Machines))]
    public void The_worst_case_of_every_load_of_a_machine_is_the_other_solvers(string id)
    {
        var logic = OrderLogic.Of(DemoCatalogue.Machines.Single(machine => machine.Id.Value.Value == id));
        Assert.All(
            WorstCases.Of(logic).Loads,
            worst =>
            {
                Assert.Equal(Optimum(logic, worst.Sum), worst.Heaviest.Weight);
                Assert.Equal(-Optimum(logic, worst.Sum.Negated), worst.Lightest.Weight);
            }
        );
    }

    /// <summary>On clauses in which choices are not grouped, as the pass does not see them.</summary>
    internal static long? Optimum(OrderLogic logic, WeightedSum sum)
    {
        var options = FormulaBuilder.Build(logic.Model, groupChoices: false, sum.Terms.Select(term => term.When));
        var weights = new ValueWeights(options.Formula.Sizes);
        for (var term = 0; term < sum.Terms.Length; term++)
        {
            weights.Add(options.Defined[term], sum.Terms[term].Weight);
        }

        return new IndependentOptimum(options.Formula, weights.Of).Solve() + sum.Fixed;
    }

    private static void Check(Formula formula)
    {
        var random = new RandomNumbers(3);
        var weights = new ValueWeights(formula.Sizes);
        for (var variable = 0; variable < formula.Sizes.Length; variable++)
        {
            for (var value = 0; value < formula.Sizes[variable]; value++)
            {
                weights.Add(new Literal(variable, 1UL << value), random.Below(WeightMax));
            }
        }

        var diagram = DiagramCompiler.Compile(formula, CompileLimits.None)!;
        ulong[] within = [.. formula.Sizes.Select(Formula.DomainOf)];
        var (weight, witness) = Core.Logic.Weighing.Optimum.Heaviest(diagram, within, weights)!.Value;
        Assert.Equal(new IndependentOptimum(formula, weights.Of).Solve(), weight);
        Assert.True(Assignments.Holds(formula, witness));
        Assert.Equal(weight, witness.Select((value, variable) => weights.Of(variable, value)).Sum());
    }
}
