using System.Collections.Immutable;
using Configurator.Core.Logic.Compiling;
using Configurator.Core.Logic.Formulas;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;

namespace Configurator.Core.Logic.Covering;

/// <summary>Configurations as rows: a parameter for each option, or for a whole choice of one out of many.</summary>
internal sealed class RulesSpace : CoverSpace
{
    private readonly CompiledRules _rules;
    private readonly Diagram _diagram;
    private readonly ImmutableArray<int> _variables;

    public RulesSpace(CompiledRules rules, Diagram diagram)
    {
        (_rules, _diagram) = (rules, diagram);
        _variables = [.. rules.Options.Variables.Values.Select(option => option.Variable).Distinct().Order()];
        Sizes = [.. _variables.Select(variable => diagram.Sizes[variable])];
    }

    public override ImmutableArray<int> Sizes { get; }

    public override bool IsFree => _rules.Options.Formula.Clauses.IsEmpty;

    public override int Cost => _diagram.EdgeCount;

    public override bool Allows(int[] row, int parameter, int other)
    {
        var within = Anything();
        var first = 0;
        for (var i = 0; i < row.Length; i++)
        {
            within[_variables[i]] = 1UL << (row[i] - first);
            first += Sizes[i];
        }

        return Reaching.IsSatisfiable(_diagram, within);
    }

    public override int[] Complete(PairSet pairs, ReadOnlySpan<int> values, int[] near)
    {
        var within = Anything();
        foreach (var value in values)
        {
            var parameter = pairs.ParameterOf[value];
            within[_variables[parameter]] = 1UL << (value - pairs.First[parameter]);
        }

        var kept = new ValueWeights(_diagram.Sizes);
        for (var i = 0; i < near.Length; i++)
        {
            kept.Add(new Literal(_variables[i], 1UL << (near[i] - pairs.First[i])), 1);
        }

        var found = Optimum.Heaviest(_diagram, within, kept)!.Value.Values;
        return [.. _variables.Select((variable, i) => pairs.First[i] + found[variable])];
    }

    public override PairSet AllowedPairs()
    {
        var allowed = new PairSet(Sizes);
        for (var value = 0; value < allowed.ValueCount; value++)
        {
            var parameter = allowed.ParameterOf[value];
            var within = Anything();
            within[_variables[parameter]] = 1UL << (value - allowed.First[parameter]);
            var possible = Reaching.Possible(_diagram, within);
            for (var other = value; other < allowed.ValueCount; other++)
            {
                var second = allowed.ParameterOf[other];
                var isOfOthers = second != parameter || other == value;
                if (isOfOthers && (possible[_variables[second]] >> (other - allowed.First[second]) & 1) == 1)
                {
                    allowed.Add(value, other);
                }
            }
        }

        return allowed;
    }

    public Configuration Configuration(MachineId machine, int[] row) =>
        _rules.Read(machine, variable => row[_variables.IndexOf(variable)]);

    private ulong[] Anything() => Array.ConvertAll(_diagram.Sizes, Formula.DomainOf);
}
