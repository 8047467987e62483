using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Logic.Rules;

/// <summary>What a choice asks for.</summary>
internal static class ChoiceRules
{
    /// <summary>Each two of the members that cannot both be taken are a condition of their own.</summary>
    private const int MembersMax = 300;

    /// <exception cref="TooEntangledException">It has more members than any choice that somebody can make.</exception>
    public static OrderRule Of(Choice choice)
    {
        if (choice.Of.Length > MembersMax)
        {
            throw new TooEntangledException();
        }

        ImmutableArray<Condition> members =
        [
            .. choice.Of.Select(option => new OptionCount(option.Value, 1, null, option.Span)),
        ];
        Condition one = new AnyOf(members, choice.Id.Span);
        Condition notTwo = new AllOf(
            [
                .. members.SelectMany(
                    (left, i) =>
                        members
                            .Skip(i + 1)
                            .Select(right => new NoneOf([new AllOf([left, right], left.Span)], left.Span))
                ),
            ],
            choice.Id.Span
        );
        var met = choice.Take switch
        {
            Take.ExactlyOne => new AllOf([one, notTwo], choice.Id.Span),
            Take.AtMostOne => notTwo,
            _ => one,
        };
        return new(RuleKind.Choice, Statement(choice), choice.Because, choice.Id.Span)
        {
            Meaning = choice.When is null ? met : RuleModel.Implies(choice.When, met),
            Choice = choice,
        };
    }

    private static string Statement(Choice choice)
    {
        var wanted = choice.Take switch
        {
            Take.ExactlyOne => "exactly one",
            Take.AtMostOne => "at most one",
            _ => "one or more",
        };
        return $"`{choice.Id.Value}` takes {wanted} of {ConditionText.List(choice.Of.Select(option => option.Value), "and")}"
            + (choice.When is null ? "" : $" with {ConditionText.Of(choice.When)}");
    }
}
