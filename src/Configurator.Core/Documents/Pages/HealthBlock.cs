using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Printing;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages;

/// <summary>What is odd about a machine's rules, or that nothing is.</summary>
internal static class HealthBlock
{
    public static Block Of(DocumentContext context, Machine machine)
    {
        var words = context.Words;
        var health = context.Engineered.Proved.Logic[machine.Id.Value].Health;
        var titles = new Titles(machine, context.Language);
        ImmutableArray<Row> rows =
        [
            .. health.NeverOrderable.Select(proof =>
                Row.Of(titles.Of(proof.Option), words.NeverOrderable, Because(titles, proof.Because))
            ),
            .. health.AlwaysIncluded.Select(proof =>
                Row.Of(titles.Of(proof.Option), words.AlwaysIncluded, Because(titles, proof.Because))
            ),
            .. health.Redundant.Select(proof =>
                Row.Of(titles.In(proof.Rule.Statement), words.AddsNothing, Because(titles, proof.Because))
            ),
            .. health.SingleWayOut.Select(proof =>
                Row.Of(titles.Of(proof.Choice), words.SingleWayOut, titles.Of(proof.Only))
            ),
        ];
        return rows.IsEmpty
            ? new Paragraph(words.RulesHealthy)
            : new Table("health", words.RuleHealth, [new(words.Rule), new(words.Found), new(words.Because)], rows);
    }

    private static string Because(Titles titles, IEnumerable<OrderRule> rules) =>
        string.Join("; ", rules.Select(rule => titles.In(rule.Statement)));
}
