using System.Collections.Immutable;
using System.Numerics;
using Configurator.Core.Logic.Compiling;
using Configurator.Core.Logic.Formulas;
using Configurator.Core.Logic.Rules;
using Configurator.Core.Logic.Searching;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;

namespace Configurator.Core.Logic;

/// <summary>What the rules of a machine say of some conditions: which can hold together, which follow from others, and
/// in how many configurations. Conditions are named by their position.</summary>
/// <remarks>Not for several threads at once.</remarks>
public sealed class ConditionProof
{
    private readonly CompiledRules _compiled;
    private readonly Lazy<RuleSearch> _search;
    private readonly Measure? _mix;

    private ConditionProof(OrderLogic logic, ImmutableArray<Condition> conditions)
    {
        _compiled = CompiledRules.Of(logic.Model, conditions, logic.Limits);
        _search = new(() =>
            new(FormulaBuilder.Build(logic.Model, groupChoices: false, conditions), logic.Rules.Length)
        );
        _mix = logic.Machine.OrderMix.IsEmpty
            ? null
            : OrderMixMeasure.Of(_compiled.Options.Formula.Sizes, _compiled.Options.Variables, logic.Machine.OrderMix);
    }

    /// <summary>False where the rules with these conditions are too entangled to compile: then nothing is
    /// counted.</summary>
    public bool IsCounted => _compiled.Diagram is not null;

    /// <summary>Does the machine declare how often options are ordered?</summary>
    public bool HasMix => _mix is not null;

    public static ConditionProof Of(OrderLogic logic, ImmutableArray<Condition> conditions) => new(logic, conditions);

    /// <summary>Is there a configuration in which all of these hold and none of those?</summary>
    public bool IsPossible(IEnumerable<int> holding, IEnumerable<int> failing) =>
        _compiled.Diagram is { } diagram
            ? Reaching.IsSatisfiable(diagram, Within(holding, failing))
            : _search.Value.Solver.Solve([.. _search.Value.AllRules, .. Assumed(holding, failing)]);

    /// <summary>In how many configurations all of these hold and none of those; null where not computed.</summary>
    public BigInteger? Count(IEnumerable<int> holding, IEnumerable<int> failing) =>
        _compiled.Diagram is { } diagram ? Counting.Count(diagram, Within(holding, failing)) : null;

    /// <summary>The same, each configuration counted by the declared order mix where there is one: only the share in
    /// what all configurations count means something.</summary>
    public BigInteger? CountByMix(IEnumerable<int> holding, IEnumerable<int> failing) =>
        _mix is null || _compiled.Diagram is not { } diagram
            ? Count(holding, failing)
            : Average.Of(diagram, Within(holding, failing), new(_compiled.Options.Formula.Sizes), _mix).Count;

    private ulong[] Within(IEnumerable<int> holding, IEnumerable<int> failing)
    {
        ulong[] within = [.. _compiled.Options.Formula.Sizes.Select(Formula.DomainOf)];
        foreach (var (literal, holds) in Literals(_compiled.Options, holding, failing))
        {
            within[literal.Variable] &= holds ? literal.Values : ~literal.Values;
        }

        return within;
    }

    private IEnumerable<int> Assumed(IEnumerable<int> holding, IEnumerable<int> failing) =>
        Literals(_search.Value.Options, holding, failing)
            .Select(pair => pair.Holds ? pair.Literal : new(pair.Literal.Variable, ~pair.Literal.Values))
            .Select(_search.Value.NewSwitch);

    private static IEnumerable<(Literal Literal, bool Holds)> Literals(
        OptionFormula options,
        IEnumerable<int> holding,
        IEnumerable<int> failing
    ) =>
        holding
            .Select(condition => (options.Defined[condition], true))
            .Concat(failing.Select(condition => (options.Defined[condition], false)));
}
