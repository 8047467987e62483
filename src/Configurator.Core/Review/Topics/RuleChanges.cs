using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using Configurator.Core.Documents;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Differences;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Topics;

/// <summary>Configurations won and lost on each machine, with the smallest examples and the rule that did it.</summary>
internal static class RuleChanges
{
    public static IEnumerable<Change> Of(ReviewContext context, ICollection<string> limits) =>
        [
            .. MachineChanges.Of(context),
            .. context
                .Machines.AsParallel()
                .AsOrdered()
                .Select(pair => OfRules(pair, limits))
                .ToList()
                .SelectMany(changes => changes),
            .. context.Machines.SelectMany(pair => OptionChanges.Of(context, pair)),
        ];

    private static IEnumerable<Change> OfRules(MachinePair pair, ICollection<string> limits)
    {
        if (pair is not { LogicBefore: { } before, LogicAfter: { } after } || !Faultless(pair))
        {
            Say(limits, $"the orders of `{pair.Id}` are not compared: its rules have faults on one side");
            return [];
        }

        try
        {
            return [.. Of(pair, RuleDifference.Of(before, after))];
        }
        catch (TooEntangledException)
        {
            Say(limits, $"the orders of `{pair.Id}` are not compared: its rules are too entangled");
            return [];
        }
    }

    private static bool Faultless(MachinePair pair) =>
        pair.Before.FaultyOptions.IsEmpty && pair.After.FaultyOptions.IsEmpty;

    private static void Say(ICollection<string> limits, string sentence)
    {
        lock (limits)
        {
            limits.Add(sentence);
        }
    }

    private static IEnumerable<Change> Of(MachinePair pair, RuleDifference difference)
    {
        if (!difference.LostExamples.IsEmpty)
        {
            yield return Of(
                pair,
                difference,
                OrderKinds.OrdersLost,
                Share(difference.Lost, difference.Before, "lost"),
                difference.LostExamples,
                isBefore: false
            );
        }

        if (!difference.WonExamples.IsEmpty)
        {
            yield return Of(
                pair,
                difference,
                OrderKinds.OrdersWon,
                Share(difference.Won, difference.After, "new"),
                difference.WonExamples,
                isBefore: true
            );
        }

        foreach (var rule in difference.Added)
        {
            yield return Of(pair, rule, isBefore: false);
        }

        foreach (var rule in difference.Gone)
        {
            yield return Of(pair, rule, isBefore: true);
        }
    }

    private static Change Of(MachinePair pair, ChangedRule changed, bool isBefore) =>
        new(
            isBefore ? OrderKinds.RuleRemoved : OrderKinds.RuleAdded,
            changed.Rule.Statement,
            [
                .. string.IsNullOrEmpty(changed.Rule.Span.Path)
                    ? ImmutableArray<ReviewPlace>.Empty
                    : [new(changed.Rule.Span, isBefore)],
                new(pair.After.Id.Span, IsBefore: false),
            ]
        )
        {
            Machine = pair.Id,
            Remark =
                RuledOut(changed, isBefore)
                + (changed.Rule.Because is { } because ? $"; {because.In(Text.BaseLanguage)}" : ""),
            Weight = changed is { RuledOut: { } some, Of: { IsZero: false } all }
                ? new Rational(some, all).ToDouble()
                : 0,
        };

    private static string RuledOut(ChangedRule changed, bool isBefore) =>
        changed switch
        {
            { RuledOut: null } or { Of: null } => "what it rules out is not counted",
            { RuledOut.IsZero: true } => isBefore ? "ruled nothing out by itself" : "rules nothing out by itself",
            _ => (isBefore ? "ruled out " : "rules out ")
                + Count(changed.RuledOut)
                + Percent(changed.RuledOut.Value, changed.Of.Value),
        };

    /// <param name="isBefore">The rules that the examples break stand on the earlier side.</param>
    private static Change Of(
        MachinePair pair,
        RuleDifference difference,
        ChangeKind kind,
        string share,
        ImmutableArray<DifferenceExample> examples,
        bool isBefore
    ) =>
        new(
            kind,
            $"`{pair.Id}`",
            [
                .. examples
                    .SelectMany(example => example.Because)
                    .Where(rule => !string.IsNullOrEmpty(rule.Span.Path))
                    .DistinctBy(rule => rule.Span)
                    .Select(rule => new ReviewPlace(rule.Span, isBefore)),
                new(pair.After.Id.Span, IsBefore: false),
            ]
        )
        {
            Machine = pair.Id,
            Before = Count(difference.Before),
            After = Count(difference.After),
            Remark = share,
            Details = [.. Explained(examples, isBefore)],
            PagesAfter = [PagePaths.Of(pair.Id)],
            PagesBefore = [PagePaths.Of(pair.Before.Id.Value)],
        };

    /// <summary>Examples that break the same rules share a line: the rules, then the orders.</summary>
    private static IEnumerable<string> Explained(ImmutableArray<DifferenceExample> examples, bool isBefore) =>
        examples
            .GroupBy(example => string.Join("; ", example.Because.Take(2).Select(Because)), StringComparer.Ordinal)
            .Select(alike =>
                $"{(isBefore ? "before, " : "")}{alike.Key}; e.g. {string.Join(" | ", alike.Select(example => Order(example.Configuration)))}"
            );

    private static string Order(Configuration order) =>
        order.Quantities.Count == 0 ? "the standard machine" : PickWords.Of(order.Quantities);

    private static string Because(OrderRule rule) =>
        rule.Statement
        + (rule.Because is { } because ? $" ({because})" : "")
        + (
            string.IsNullOrEmpty(rule.Span.Path)
                ? ""
                : FormattableString.Invariant($", `{rule.Span.Path}` line {rule.Span.Line}")
        );

    private static string Share(BigInteger? part, BigInteger? whole, string word)
    {
        if (part is not { } some || whole is not { } all)
        {
            return $"some {word}, not counted";
        }

        var percent = all.IsZero ? "" : Percent(some, all);
        return $"{Count(some)} {word}{percent}";
    }

    private static string Percent(BigInteger part, BigInteger whole)
    {
        var share = new Rational(part * 100, whole);
        var one = new Rational(1, 1);
        return part == whole ? ", all of them"
            : share < one ? ", less than 1 %"
            : FormattableString.Invariant($", {share.ToString(decimals: 0)} %");
    }

    public static string Count(BigInteger? count) =>
        count?.ToString("N0", CultureInfo.InvariantCulture) ?? "not counted";
}
