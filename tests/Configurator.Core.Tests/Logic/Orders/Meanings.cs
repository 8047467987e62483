using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Tests.Logic.Orders;

/// <summary>What a rule of a machine means, told from the definitions alone.</summary>
/// <param name="Span">Where the rule stands.</param>
internal sealed record Meaning(SourceSpan Span, Func<Func<OptionId, int>, bool> IsKept);

internal static class Meanings
{
    public static ImmutableArray<Meaning> Of(Machine machine) =>
        [
            .. machine.Options.Values.SelectMany(Of),
            .. machine.Choices.Select(Of),
            .. machine.Rules.Select(rule => new Meaning(
                rule.Id.Span,
                count => (rule.When is { } when && !Holds(when, count)) || Holds(rule.Need, count)
            )),
            .. machine.Limits.Select(limit => new Meaning(
                limit.Id.Span,
                count => limit.Counts.Sum(share => share.Each * count(share.Option.Value)) <= limit.AtMost
            )),
        ];

    private static IEnumerable<Meaning> Of(Option option)
    {
        var id = option.Id.Value;
        foreach (var condition in option.Requires.Select(requirement => requirement.Condition))
        {
            yield return new(condition.Span, count => count(id) == 0 || Holds(condition, count));
        }

        foreach (var other in option.NotWith.Select(link => link.Other))
        {
            yield return new(other.Span, count => count(id) == 0 || count(other.Value) == 0);
        }

        foreach (var other in option.ComesWith.Select(link => link.Other))
        {
            yield return new(other.Span, count => count(id) == 0 || count(other.Value) > 0);
        }
    }

    private static Meaning Of(Choice choice) =>
        new(
            choice.Id.Span,
            count =>
            {
                var taken = choice.Of.Count(option => count(option.Value) > 0);
                return (choice.When is { } when && !Holds(when, count))
                    || choice.Take switch
                    {
                        Take.ExactlyOne => taken == 1,
                        Take.AtMostOne => taken < 2,
                        Take.OneOrMore => taken > 0,
                        _ => throw new InvalidOperationException(),
                    };
            }
        );

    private static bool Holds(Condition condition, Func<OptionId, int> count) =>
        condition switch
        {
            OptionCount one => count(one.Option) >= one.AtLeast && count(one.Option) <= (one.AtMost ?? int.MaxValue),
            AllOf all => all.Of.All(part => Holds(part, count)),
            AnyOf any => any.Of.Any(part => Holds(part, count)),
            NoneOf none => none.Of.All(part => !Holds(part, count)),
            _ => throw new InvalidOperationException(),
        };
}
