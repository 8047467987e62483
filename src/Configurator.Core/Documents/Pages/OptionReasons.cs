using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages;

/// <summary>Why an option goes with others or not: its own words, those of others about it, and rules of
/// machines.</summary>
internal static class OptionReasons
{
    public static IEnumerable<Block> Of(DocumentContext context, Links links, Option option) =>
        new[] { Links(context, links, option), Rules(context, links, option) }.OfType<Block>();

    /// <summary>What it cannot be ordered with, whichever of the two says so.</summary>
    public static IEnumerable<OptionLink> NotWith(DocumentContext context, Option option) =>
        option
            .NotWith.Concat(
                context.Catalogue.Options.Values.SelectMany(other =>
                    other
                        .NotWith.Where(link => link.Other.Value == option.Id.Value)
                        .Select(link => new OptionLink(other.Id, link.Because))
                )
            )
            .DistinctBy(link => link.Other.Value);

    private static Table? Links(DocumentContext context, Links links, Option option)
    {
        var words = context.Words;
        ImmutableArray<Row> rows =
        [
            .. option
                .Requires.Where(requirement => requirement.Because is not null)
                .Select(requirement =>
                    Row.Of(
                        words.Needs,
                        MachinePages.Say(context, requirement.Condition),
                        context.In(requirement.Because)
                    )
                ),
            .. Rows(words.NotWith, NotWith(context, option)),
            .. Rows(words.ComesWith, option.ComesWith),
        ];
        return rows.IsEmpty
            ? null
            : new("reasons", words.Because, [new(words.Rule), new(words.Option), new(words.Because)], rows);

        IEnumerable<Row> Rows(string rule, IEnumerable<OptionLink> others) =>
            others
                .Where(link => link.Because is not null)
                .Select(link => Row.Of(rule, links.Option(link.Other.Value), context.In(link.Because)));
    }

    /// <summary>Rules of machines that speak of it; what several machines say alike stands once.</summary>
    private static Table? Rules(DocumentContext context, Links links, Option option)
    {
        var words = context.Words;
        ImmutableArray<Row> rows =
        [
            .. context
                .Catalogue.Machines.Values.SelectMany(machine =>
                    machine
                        .Rules.Where(rule => Mentions(rule, option.Id.Value))
                        .Select(rule => (Machine: machine, Cells: MachinePages.RuleCells(context, rule).ToList()))
                )
                .GroupBy(said => string.Join('\n', said.Cells.Select(cell => cell.Text)), StringComparer.Ordinal)
                .Select(group =>
                    Row.Of([
                        Cell.Of(group.Select(said => links.Machine(said.Machine)).Distinct()),
                        .. group.First().Cells,
                    ])
                ),
        ];
        return rows.IsEmpty
            ? null
            : new(
                "rules",
                words.Rules,
                [new(words.Machine), new(words.Ordered), new(words.Rule), new(words.Option), new(words.Because)],
                rows
            );
    }

    private static bool Mentions(MachineRule rule, OptionId option) =>
        (rule.When?.Mentions() ?? []).Concat(rule.Need.Mentions()).Any(mention => mention.Option == option);
}
