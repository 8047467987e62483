using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Core.Tests.Logic.Orders;

/// <summary>The same machine with every option under another name and every list the other way round.</summary>
internal sealed class Renaming
{
    private readonly ImmutableDictionary<OptionId, OptionId> _names;

    public Renaming(Machine machine)
    {
        _names = machine
            .Options.Keys.Select((option, i) => KeyValuePair.Create(option, Name(machine.Options.Count - i)))
            .ToImmutableDictionary();
        Renamed = Machines.Of(
            machine.Options.Values.Select(Of),
            machine.Choices.Reverse().Select(Of),
            machine.Rules.Reverse().Select(Of),
            machine.Limits.Reverse().Select(Of)
        );
    }

    public Machine Renamed { get; }

    public OptionId Of(OptionId option) => _names.GetValueOrDefault(option, option);

    public PartialOrder Of(PartialOrder order) =>
        order.Picks.Aggregate(PartialOrder.Empty, (renamed, pick) => renamed.With(Of(pick.Key), pick.Value));

    private static OptionId Name(int number) => new(string.Create(CultureInfo.InvariantCulture, $"n{number:000}"));

    private Option Of(Option option) =>
        option with
        {
            Id = new(Of(option.Id.Value), default),
            Requires = [.. option.Requires.Reverse().Select(item => item with { Condition = Of(item.Condition) })],
            NotWith = [.. option.NotWith.Reverse().Select(Of)],
            ComesWith = [.. option.ComesWith.Reverse().Select(Of)],
        };

    private OptionLink Of(OptionLink link) => link with { Other = link.Other.Select(Of) };

    private Choice Of(Choice choice) =>
        choice with
        {
            Of = [.. choice.Of.Reverse().Select(option => option.Select(Of))],
            When = choice.When is { } when ? Of(when) : null,
        };

    private MachineRule Of(MachineRule rule) =>
        rule with
        {
            Need = Of(rule.Need),
            When = rule.When is { } when ? Of(when) : null,
        };

    private CountLimit Of(CountLimit limit) =>
        limit with
        {
            Counts = [.. limit.Counts.Reverse().Select(share => share with { Option = share.Option.Select(Of) })],
        };

    private Condition Of(Condition condition) =>
        condition switch
        {
            OptionCount count => count with { Option = Of(count.Option) },
            AllOf all => all with { Of = Of(all.Of) },
            AnyOf any => any with { Of = Of(any.Of) },
            NoneOf none => none with { Of = Of(none.Of) },
            _ => throw new InvalidOperationException(),
        };

    private ImmutableArray<Condition> Of(ImmutableArray<Condition> parts) => [.. parts.Reverse().Select(Of)];
}
