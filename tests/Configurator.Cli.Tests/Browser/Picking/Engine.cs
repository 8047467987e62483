using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Cli.Tests.Browser.Picking;

/// <summary>Holds each answer of the page's scripts against the engine.</summary>
internal sealed class Engine(OrderLogic logic)
{
    private readonly ImmutableArray<OptionId> _options = [.. logic.Machine.Options.Keys];

    /// <summary>What differs; empty where all agrees.</summary>
    public IEnumerable<string> Differences(WalkerStep step)
    {
        var order = OrderOf(step.Picks);
        var states = logic.States(order).Values.Select(state => string.Join(' ', state.Possible));
        if (!states.SequenceEqual(step.States.Select(left => string.Join(' ', left)), StringComparer.Ordinal))
        {
            yield return "the numbers left of options";
        }

        var left = logic.Count(order)?.ToString(CultureInfo.InvariantCulture) ?? "null";
        if (left != step.Left)
        {
            yield return $"configurations left: {step.Left}, the engine says {left}";
        }

        foreach (var difference in step.Why is { } why ? OfImpossible(order, step, why) : OfAllowed(step))
        {
            yield return difference;
        }
    }

    /// <summary>A whole order, written down and read as definitions are, keeps every rule and takes the same.</summary>
    private IEnumerable<string> OfAllowed(WalkerStep step)
    {
        if (step is not { Allowed: { } taken, Written: { } written })
        {
            yield break;
        }

        var picks = Enumerable.Range(0, written.Length).Where(place => written[place] > 0)
            .ToImmutableSortedDictionary(place => _options[place], place => written[place]);
        var read = Completion.Complete(logic.Machine, new(logic.Machine.Id.Value, picks));
        if (!_options.Select(read.QuantityOf).SequenceEqual(taken))
        {
            yield return "what the written order takes";
        }

        if (!RuleCheck.Broken(logic.Machine, read).IsEmpty)
        {
            yield return "an order called allowed that breaks a rule";
        }
    }

    private IEnumerable<string> OfImpossible(PartialOrder order, WalkerStep step, WalkerWhy why)
    {
        var own = logic.Explain(order)!;
        if (own.Picks.Length + own.Rules.Length != why.Picks.Length + why.Rules.Length)
        {
            yield return $"{why.Picks.Length + why.Rules.Length} reasons, the engine has {own.Picks.Length + own.Rules.Length}";
        }

        if (!IsContradiction(order, why.Picks, why.Rules))
        {
            yield return "reasons that hold together";
        }

        var nearest = logic.Nearest(order, isComplete: false);
        if (!nearest.Select(repair => repair.Changes.Length).SequenceEqual(step.Nearest!.Select(changes => changes.Length)))
        {
            yield return "how many changes the nearest orders need";
        }

        foreach (var changes in step.Nearest!.Where(changes => !logic.IsPossible(Changed(order, changes))))
        {
            yield return $"a way out that is none: {Words(changes)}";
        }

        // Fewer than it looks for are all there are: then they are the same ones, down to the numbers.
        var mine = step.Nearest!.Select(Words).Order(StringComparer.Ordinal);
        var engines = nearest.Select(repair => Words([.. repair.Changes.Select(change => new[] { _options.IndexOf(change.Option), change.After })]));
        if (nearest.Length < 5 && !mine.SequenceEqual(engines.Order(StringComparer.Ordinal), StringComparer.Ordinal))
        {
            yield return $"ways out: {string.Join(" | ", mine)}, the engine has {string.Join(" | ", engines)}";
        }
    }

    private bool IsContradiction(PartialOrder order, int[] picks, int[] rules)
    {
        var search = logic.Search;
        return !search.Solver.Solve(
        [
            .. picks.Select(place => search.NewSwitch(search.Options.Variables[_options[place]].Literal(order.Picks[_options[place]].Contains))),
            .. rules.Select(search.SwitchOf),
        ]);
    }

    private PartialOrder OrderOf(int[][] picks) =>
        picks.Aggregate(PartialOrder.Empty, (order, pick) => order.With(_options[pick[0]], new(pick[1], pick[2])));

    private PartialOrder Changed(PartialOrder order, int[][] changes) => changes.Aggregate(
        order,
        (changed, change) => change[1] == 0
            ? changed.Without(_options[change[0]])
            : changed.With(_options[change[0]], new(change[1], change[1])));

    private string Words(int[][] changes) =>
        string.Join(' ', changes.Select(change => string.Create(CultureInfo.InvariantCulture, $"{_options[change[0]]}={change[1]}")));
}
