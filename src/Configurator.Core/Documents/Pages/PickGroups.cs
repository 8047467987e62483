using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.Picking;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages;

/// <summary>Options in the order in which an order is talked through: what has to be chosen first, then the rest by
/// family.</summary>
internal static class PickGroups
{
    public static PickList Of(DocumentContext context, Links links, Machine machine)
    {
        var seen = new HashSet<OptionId>();
        ImmutableArray<PickGroup> choices =
        [
            .. machine
                .Choices.Select(choice =>
                    Group(context, links, machine, choice, [.. choice.Of.Select(id => id.Value).Where(seen.Add)])
                )
                .Where(group => !group.Picks.IsEmpty),
        ];
        return new([
            .. choices,
            .. machine
                .Options.Values.Where(option => !seen.Contains(option.Id.Value))
                .GroupBy(option => option.Family, StringComparer.Ordinal)
                .OrderBy(family => family.Key, StringComparer.Ordinal)
                .Select(family => new PickGroup(
                    $"family-{family.Key}",
                    "",
                    CataloguePages.Sentence(family.Key),
                    "",
                    [.. family.Select(option => Pick(context, links, machine, option))]
                )),
        ]);
    }

    private static PickGroup Group(
        DocumentContext context,
        Links links,
        Machine machine,
        Choice choice,
        ImmutableArray<OptionId> members
    )
    {
        var when = choice.When is { } condition ? $" ({MachinePages.Say(context, condition)})" : "";
        return new(
            $"choice-{choice.Id.Value}",
            choice.Id.Value.Value,
            context.In(choice.Title),
            $"{WordLists.Of(choice.Take, context.Words)}{when}",
            [
                .. members
                    .Where(machine.Options.ContainsKey)
                    .Select(id => Pick(context, links, machine, machine.Options[id])),
            ]
        );
    }

    private static Pick Pick(DocumentContext context, Links links, Machine machine, Option option) =>
        new(
            option.Id.Value.Value,
            context.In(option.Title),
            context.In(option.Summary),
            [.. Marks(context, machine, option).Where(mark => mark.Text.Length > 0)],
            [.. Rules(context, machine, option)],
            links.Option(option.Id.Value) with
            {
                Text = context.Words.Details,
            }
        );

    private static IEnumerable<PickMark> Marks(DocumentContext context, Machine machine, Option option)
    {
        var words = context.Words;
        yield return new(PickerOptions.Price(machine, option.Id.Value) ?? "", "price");
        yield return new(
            option.Quantity is { } range
                ? FormattableString.Invariant($"{range.From}–{range.To} {context.In(range.Counts)}")
                : "",
            "number"
        );
        yield return new(option.LeadTime is { } lead ? $"{words.LeadTime} {context.Print(lead)}" : "", "lead-time");
        yield return option switch
        {
            { Released: null } => new(words.NotReleased, "unreleased"),
            { Markets.IsEmpty: false } => new(
                words.ReleasedOnlyFor(string.Join(", ", option.Markets.Select(id => Title(context, id.Value)))),
                "partly"
            ),
            _ => new(words.ReleasedForSale, "released"),
        };
    }

    private static IEnumerable<string> Rules(DocumentContext context, Machine machine, Option option)
    {
        var words = context.Words;
        return option
            .Requires.Select(one =>
                Sentence(context, words.Needs, MachinePages.Say(context, one.Condition), one.Because)
            )
            .Concat(
                OptionReasons
                    .NotWith(context, option)
                    .Where(link => machine.Options.ContainsKey(link.Other.Value))
                    .Select(link => Sentence(context, words.NotWith, Title(context, link.Other.Value), link.Because))
            )
            .Concat(
                option.ComesWith.Select(link =>
                    Sentence(context, words.ComesWith, Title(context, link.Other.Value), link.Because)
                )
            );
    }

    private static string Sentence(DocumentContext context, string rule, string what, Text? because) =>
        because is null ? $"{rule}: {what}" : $"{rule}: {what}. {context.In(because)}";

    private static string Title(DocumentContext context, OptionId id) =>
        context.Catalogue.Options.TryGetValue(id, out var option) ? context.In(option.Title) : id.Value;
}
