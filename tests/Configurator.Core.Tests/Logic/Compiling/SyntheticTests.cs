using Configurator.Benchmarks;
using Configurator.Core.Logic.Compiling;
using Configurator.Core.Logic.Formulas;
using Configurator.Core.Logic.Rules;

namespace Configurator.Core.Tests.Logic.Compiling;

/// <summary>Catalogues as large as wanted, in which rules concern options near each other.</summary>
public class SyntheticTests
{
    [Fact]
    public void The_same_seed_gives_the_same_catalogue()
    {
        Assert.Equal(Words(Formula(300, 1)), Words(Formula(300, 1)));
        Assert.NotEqual(Words(Formula(300, 1)), Words(Formula(300, 2)));
    }

    // By construction: 60 choices of four options each, and 400 rules; an order that keeps them all.
    [Fact]
    public void A_catalogue_of_three_hundred_options_has_its_choices_and_rules_and_an_order()
    {
        var model = Synthetic.Catalogue(300, 1);
        Assert.Equal(300, model.Options.Length);
        Assert.Equal(60, model.Rules.Count(rule => rule.Choice is not null));
        Assert.Equal(460, model.Rules.Length);
        Assert.False(Compiled(300, 1).IsEmpty);
    }

    // Law: where rules are local, a catalogue ten times as large needs about ten times the nodes.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Diagrams_of_local_rules_grow_with_the_number_of_options_and_not_faster(int seed) =>
        Assert.InRange(Compiled(3000, seed).NodeCount, 0, 20 * Compiled(300, seed).NodeCount);

    private static Formula Formula(int options, int seed) =>
        FormulaBuilder.Build(Synthetic.Catalogue(options, seed), groupChoices: true, []).Formula;

    private static Diagram Compiled(int options, int seed) =>
        DiagramCompiler.Compile(Formula(options, seed), CompileLimits.Usual)!;

    private static IEnumerable<string> Words(Formula formula) =>
        formula.Clauses.Select(clause => string.Join(' ', clause.Literals));
}
