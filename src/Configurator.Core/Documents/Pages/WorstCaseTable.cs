using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Logic.Printing;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages;

/// <summary>The least and the most of every load over all configurations of a machine.</summary>
internal static class WorstCaseTable
{
    public static IEnumerable<Block> Of(DocumentContext context, Links links, Machine machine)
    {
        var words = context.Words;
        var cases = WorstCases.Of(context.Engineered.Proved.Logic[machine.Id.Value].Logic);
        if (cases.Loads.IsEmpty)
        {
            return [];
        }

        return
        [
            new Paragraph(
                cases.Configurations is { } count
                    ? words.WorstCaseScope(OrderText.Number(count))
                    : words.WorstCaseScopeUncounted
            ),
            new Table(
                "worst-cases",
                words.WorstCases,
                [
                    new(words.Load),
                    new(words.Least, IsNumber: true),
                    new(words.Most, IsNumber: true),
                    new(words.MostWith),
                ],
                [.. cases.Loads.Select(worst => RowOf(context, links, worst))]
            ),
        ];
    }

    private static Row RowOf(DocumentContext context, Links links, WorstCase worst) =>
        Row.Of(
            context.In(worst.Load.Title),
            Weight(worst.Load, worst.Lightest),
            Weight(worst.Load, worst.Heaviest),
            Cell.Of(links.Taken(worst.Heaviest.Witness))
        );

    /// <summary>What is not proved is a range.</summary>
    private static string Weight(Load load, Extreme extreme) =>
        extreme.IsProved
            ? load.Print(extreme.Weight)
            : $"{load.Print(Math.Min(extreme.Weight, extreme.Bound))} … {load.Print(Math.Max(extreme.Weight, extreme.Bound))}";
}
