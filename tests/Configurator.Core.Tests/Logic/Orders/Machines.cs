using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Rules;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Tests.Logic.Orders;

/// <summary>Machines that are nothing but options and rules; each rule stands on a line of its own.</summary>
internal static class Machines
{
    public static Machine Of(
        IEnumerable<Option> options,
        IEnumerable<Choice>? choices = null,
        IEnumerable<MachineRule>? rules = null,
        IEnumerable<CountLimit>? limits = null
    )
    {
        var line = 0;
        SourceSpan Next() => new("rules.yaml", ++line, 1, 1);
        return new(new(new("m"), Next()), Text.Of("Machine"), "M", "A")
        {
            Areas = [],
            Route = new([], []),
            Stations = [],
            Control = null!, // No question about orders looks at it.
            Options = options
                .Select(option => Placed(option, Next))
                .ToImmutableSortedDictionary(option => option.Id.Value, option => option),
            Choices = [.. (choices ?? []).Select(choice => choice with { Id = new(choice.Id.Value, Next()) })],
            Rules = [.. (rules ?? []).Select(rule => rule with { Id = new(rule.Id.Value, Next()) })],
            Limits = [.. (limits ?? []).Select(limit => limit with { Id = new(limit.Id.Value, Next()) })],
        };
    }

    public static Option Option(string id, int from = 1, int to = 1) =>
        new(new(new(id), default), "family", Text.Of(id))
        {
            Quantity = (from, to) == (1, 1) ? null : new(from, to, Text.Empty),
        };

    public static Choice Choice(string id, Take take, IEnumerable<OptionId> of, Condition? when = null) =>
        new(new(new(id), default), Text.Of(id), take, [.. of.Select(At)]) { When = when };

    public static MachineRule Rule(string id, Condition need, Condition? when = null) =>
        new(new(new(id), default), when, need, null);

    public static CountLimit Limit(string id, int atMost, IEnumerable<(OptionId Option, int Each)> counts) =>
        new(
            new(id, default),
            Text.Of(id),
            atMost,
            [.. counts.Select(share => new CountShare(At(share.Option), share.Each))],
            null
        );

    public static OptionLink Link(OptionId other) => new(At(other), null);

    public static OptionCount Taken(string option) => Taken(new OptionId(option));

    public static OptionCount Taken(OptionId option) => new(option, 1, null, default);

    /// <summary>Never all of these together.</summary>
    public static NoneOf NotTogether(params IEnumerable<string> options) =>
        new([new AllOf([.. options.Select(Taken)], default)], default);

    /// <summary>Its options with their numbers, and every rule.</summary>
    public static string Words(Machine machine)
    {
        var model = RuleModel.Of(machine);
        var options = model.Options.Select(option =>
            string.Create(CultureInfo.InvariantCulture, $"{option.Id} {option.From}..{option.To}")
        );
        return $"{string.Join(", ", options)}\n  {string.Join("\n  ", model.Rules.Select(rule => rule.Statement))}\n";
    }

    public static string Words(PartialOrder order) =>
        "order "
        + string.Join(", ", order.Picks.Select(pick => $"{pick.Key} {pick.Value.From}..{pick.Value.To}"))
        + "\n";

    private static Located<OptionId> At(OptionId option) => new(option, default);

    private static Option Placed(Option option, Func<SourceSpan> next) =>
        option with
        {
            Id = new(option.Id.Value, next()),
            Requires =
            [
                .. option.Requires.Select(item => item with { Condition = item.Condition with { Span = next() } }),
            ],
            NotWith = [.. option.NotWith.Select(link => link with { Other = new(link.Other.Value, next()) })],
            ComesWith = [.. option.ComesWith.Select(link => link with { Other = new(link.Other.Value, next()) })],
        };
}
