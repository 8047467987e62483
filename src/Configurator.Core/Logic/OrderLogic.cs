using System.Collections.Immutable;
using System.Numerics;
using Configurator.Core.Logic.Compiling;
using Configurator.Core.Logic.Rules;
using Configurator.Core.Logic.Searching;
using Configurator.Core.Model;

namespace Configurator.Core.Logic;

/// <summary>Every question about the orders of one machine, answered exactly. Its rules are compiled once.</summary>
/// <remarks>Not for several threads at once: the search behind it keeps what it learns.</remarks>
public sealed class OrderLogic
{
    private readonly Diagram? _diagram;
    private readonly Lazy<RuleSearch> _search;

    private OrderLogic(Machine machine, RuleModel model, CompileLimits limits)
    {
        (Machine, Model, Limits) = (machine, model, limits);
        Compiled = CompiledRules.Of(model, [], limits);
        _diagram = Compiled.Diagram;
        _search = new(() => new(FormulaBuilder.Build(model, groupChoices: false, []), model.Rules.Length));
    }

    public Machine Machine { get; }

    internal RuleModel Model { get; }

    internal CompileLimits Limits { get; }

    internal CompiledRules Compiled { get; }

    internal RuleSearch Search => _search.Value;

    /// <summary>False where the rules are too entangled to compile: then nothing is counted, everything else is still
    /// answered.</summary>
    public bool IsCounted => _diagram is not null;

    public ImmutableArray<OrderRule> Rules => Model.Rules;

    public static OrderLogic Of(Machine machine) => Of(machine, CompileLimits.Usual);

    internal static OrderLogic Of(Machine machine, CompileLimits limits) => new(machine, RuleModel.Of(machine), limits);

    /// <summary>How many configurations fit the order; null where it is not computed.</summary>
    public BigInteger? Count(PartialOrder order) =>
        _diagram is null ? null
        : Compiled.Within(order) is { } within ? Counting.Count(_diagram, within)
        : BigInteger.Zero;

    /// <summary>Can the order be completed to a configuration that keeps all rules?</summary>
    public bool IsPossible(PartialOrder order) =>
        _diagram is not null
            ? Compiled.Within(order) is { } within && Reaching.IsSatisfiable(_diagram, within)
            : Search.Solver.Solve([.. Search.AllRules, .. SwitchesFor(order)]);

    /// <summary>What is left of every option. Whatever a state shows as possible can be completed.</summary>
    public ImmutableSortedDictionary<OptionId, OptionState> States(PartialOrder order)
    {
        if (_diagram is null)
        {
            return new StatesBySearch(Search).Of(SwitchesFor(order));
        }

        var possible = Compiled.Within(order) is { } within
            ? Reaching.Possible(_diagram, within)
            : new ulong[_diagram.Sizes.Length];
        return Compiled.Options.Variables.ToImmutableSortedDictionary(
            option => option.Key,
            option => new OptionState(Numbers(option.Value, possible[option.Value.Variable]))
        );
    }

    /// <summary>The smallest set of picks and rules that cannot hold together; null where the order is
    /// possible.</summary>
    public Explanation? Explain(PartialOrder order)
    {
        var picks = order.Picks.Keys.Zip(SwitchesFor(order)).ToDictionary(pair => pair.Second, pair => pair.First);
        var rules = Enumerable.Range(0, Model.Rules.Length).ToDictionary(Search.SwitchOf, rule => Model.Rules[rule]);
        return SmallestCore.Find(Search.Solver, [.. picks.Keys, .. rules.Keys]) is not { } core
            ? null
            : new(
                [.. core.Where(picks.ContainsKey).Select(member => picks[member]).Order()],
                [.. core.Where(rules.ContainsKey).Select(member => rules[member]).OrderBy(rule => rule.Span)]
            )
            {
                Numbers =
                [
                    .. Model
                        .Options.Where(option =>
                            core.Any(member => picks.TryGetValue(member, out var pick) && pick == option.Id)
                        )
                        .Select(option => new NumberFault(option.Id, option.From, option.To, order.Picks[option.Id]))
                        .Where(IsBeyond),
                ],
            };
    }

    private static bool IsBeyond(NumberFault pick) =>
        !pick.Ordered.Contains(0) && !Enumerable.Range(pick.From, pick.To - pick.From + 1).Any(pick.Ordered.Contains);

    /// <summary>Orders that work with the fewest changes, at most five, best first; none is another one with more
    /// changes.</summary>
    /// <param name="isComplete">Nothing may be added without counting as a change; else what is missing may still
    /// come.</param>
    public ImmutableArray<Repair> Nearest(PartialOrder order, bool isComplete) =>
        new NearestOrders(this, order, isComplete).Find();

    private List<int> SwitchesFor(PartialOrder order) =>
        [
            .. order.Picks.Select(pick =>
                Search.Options.Variables.TryGetValue(pick.Key, out var variable)
                    ? Search.NewSwitch(variable.Literal(pick.Value.Contains))
                    : Search.NewSwitch(isPossible: pick.Value.Contains(0))
            ),
        ];

    internal static ImmutableArray<int> Numbers(OptionVariable variable, ulong values) =>
        [.. variable.Counts.Where((_, value) => (values >> value & 1) == 1).Distinct().Order()];
}
