using System.Collections.Immutable;
using Configurator.Core.Logic.Compiling;
using Configurator.Core.Logic.Formulas;
using Configurator.Core.Logic.Rules;
using Configurator.Core.Model;

namespace Configurator.Core.Logic;

/// <summary>The rules of a machine as clauses and, where they are not too entangled, as a diagram.</summary>
internal sealed record CompiledRules(OptionFormula Options, Diagram? Diagram)
{
    /// <param name="defined">Conditions that get literals of their own; the number of solutions stays the same.</param>
    public static CompiledRules Of(RuleModel model, IEnumerable<Condition> defined, CompileLimits limits)
    {
        var options = FormulaBuilder.Build(model, groupChoices: true, defined);
        return new(options, DiagramCompiler.Compile(options.Formula, limits));
    }

    /// <summary>The values left to each variable; null where an option is wanted that is not offered.</summary>
    public ulong[]? Within(PartialOrder order)
    {
        ulong[] within = [.. Options.Formula.Sizes.Select(Formula.DomainOf)];
        foreach (var (option, range) in order.Picks)
        {
            if (Options.Variables.TryGetValue(option, out var variable))
            {
                within[variable.Variable] &= variable.Literal(range.Contains).Values;
            }
            else if (!range.Contains(0))
            {
                return null;
            }
        }

        return within;
    }

    /// <summary>The options taken under a value for each variable.</summary>
    public Configuration Read(MachineId machine, Func<int, int> valueOf) =>
        new(
            machine,
            Options
                .Variables.Select(option =>
                    KeyValuePair.Create(option.Key, option.Value.Counts[valueOf(option.Value.Variable)])
                )
                .Where(option => option.Value > 0)
                .ToImmutableSortedDictionary(),
            []
        );
}
