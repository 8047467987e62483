using System.Collections.Immutable;
using Configurator.Core.Logic.Rules;
using Configurator.Core.Model;

namespace Configurator.Core.Logic.Differences;

/// <summary>The same rules about options that are called something else now. Statements keep the words of their
/// time.</summary>
internal sealed class RenamedRules(IReadOnlyDictionary<OptionId, OptionId> names)
{
    /// <summary>What each option of an earlier machine is called in a later one that lists its old id.</summary>
    public static RenamedRules Between(Machine before, Machine after) =>
        new(
            after
                .Options.Values.SelectMany(option =>
                    option.Formerly.Select(old => (Old: new OptionId(old.Value), New: option.Id.Value))
                )
                .Where(name => before.Options.ContainsKey(name.Old) && !after.Options.ContainsKey(name.Old))
                .Where(name => !before.Options.ContainsKey(name.New))
                .DistinctBy(name => name.Old)
                .ToDictionary(name => name.Old, name => name.New)
        );

    public RuleModel Of(RuleModel model) =>
        new(
            [.. model.Options.Select(option => option with { Id = Name(option.Id) }).OrderBy(option => option.Id)],
            [.. model.Rules.Select(Of)]
        );

    private OrderRule Of(OrderRule rule) =>
        rule with
        {
            Meaning = rule.Meaning is { } meaning ? Of(meaning) : null,
            Limit = rule.Limit is { } limit ? Of(limit) : null,
            Choice = rule.Choice is { } choice ? Of(choice) : null,
        };

    private Choice Of(Choice choice) =>
        choice with
        {
            When = choice.When is { } when ? Of(when) : null,
            Of = [.. choice.Of.Select(option => option with { Value = Name(option.Value) })],
        };

    private CountLimit Of(CountLimit limit) =>
        limit with
        {
            Counts =
            [
                .. limit.Counts.Select(share =>
                    share with
                    {
                        Option = share.Option with { Value = Name(share.Option.Value) },
                    }
                ),
            ],
        };

    private Condition Of(Condition condition) =>
        condition switch
        {
            OptionCount count => count with { Option = Name(count.Option) },
            AllOf all => all with { Of = All(all.Of) },
            AnyOf any => any with { Of = All(any.Of) },
            NoneOf none => none with { Of = All(none.Of) },
            _ => condition,
        };

    private ImmutableArray<Condition> All(ImmutableArray<Condition> parts) => [.. parts.Select(Of)];

    private OptionId Name(OptionId option) => names.TryGetValue(option, out var name) ? name : option;
}
