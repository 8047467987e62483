using Configurator.Core.Logic.Formulas;
using Configurator.Core.Logic.Rules;

namespace Configurator.Core.Logic.Searching;

/// <summary>
/// A search over a rule model in which every rule can be switched on and off: for explanations, for the nearest
/// orders, and
/// for all answers about models that are too large to compile.
/// </summary>
internal sealed class RuleSearch
{
    private readonly int[] _first;
    private readonly int[] _ruleSwitch;

    public RuleSearch(OptionFormula options, int rules)
    {
        Options = options;
        _first = [.. options.Formula.Sizes.Select(AddVariable)];
        _ruleSwitch = [.. Enumerable.Range(0, rules).Select(_ => Solver.NewVariable())];
        foreach (var clause in options.Formula.Clauses)
        {
            var literals = clause.Literals.SelectMany(Any);
            Solver.Add([.. clause.Rule < 0 ? literals : literals.Append(Negative(_ruleSwitch[clause.Rule]))]);
        }
    }

    public OptionFormula Options { get; }

    public Solver Solver { get; } = new();

    /// <summary>Assume it to have the rule hold.</summary>
    public int SwitchOf(int rule) => Positive(_ruleSwitch[rule]);

    public IEnumerable<int> AllRules => _ruleSwitch.Select(Positive);

    /// <summary>A new switch under which the literal holds.</summary>
    public int NewSwitch(Literal literal)
    {
        var variable = Solver.NewVariable();
        Solver.Add([Negative(variable), .. Any(literal)]);
        return Positive(variable);
    }

    /// <summary>A new switch that stands for nothing, or for what can never be.</summary>
    public int NewSwitch(bool isPossible)
    {
        var variable = Solver.NewVariable();
        if (!isPossible)
        {
            Solver.Add(Negative(variable));
        }

        return Positive(variable);
    }

    /// <summary>Solver literals of which at least one is true exactly when the literal holds.</summary>
    public IEnumerable<int> Any(Literal literal)
    {
        var size = Options.Formula.Sizes[literal.Variable];
        var first = _first[literal.Variable];
        if (size == 2)
        {
            return literal.Values switch
            {
                0b10 => [Positive(first)],
                0b01 => [Negative(first)],
                0b11 => [Positive(first), Negative(first)],
                _ => [],
            };
        }

        return Enumerable
            .Range(0, size)
            .Where(value => (literal.Values >> value & 1) == 1)
            .Select(value => Positive(first + value));
    }

    /// <summary>The value of a variable in the assignment found last.</summary>
    public int ValueOf(int variable)
    {
        var size = Options.Formula.Sizes[variable];
        return size == 2
            ? Solver.IsTrue(_first[variable])
                ? 1
                : 0
            : Enumerable.Range(0, size).First(value => Solver.IsTrue(_first[variable] + value));
    }

    public static int Positive(int variable) => variable * 2;

    public static int Negative(int variable) => (variable * 2) + 1;

    /// <summary>Two values: one solver variable. More: one each, of which exactly one is true.</summary>
    private int AddVariable(int size)
    {
        var first = Solver.NewVariable();
        if (size == 2)
        {
            return first;
        }

        var all = Enumerable.Range(0, size - 1).Select(_ => Solver.NewVariable()).Prepend(first).ToList();
        Solver.Add([.. all.Select(Positive)]);
        for (var i = 0; i < all.Count; i++)
        {
            for (var j = i + 1; j < all.Count; j++)
            {
                Solver.Add(Negative(all[i]), Negative(all[j]));
            }
        }

        return first;
    }
}
