using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.Cables;
using Configurator.Core.Documents.Parts;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>What to buy for one machine, with totals.</summary>
internal static class PartsDocument
{
    public static ConfigurationDocument Document { get; } =
        new("parts", "PL", words => words.Parts, words => words.PartsLead, Sections);

    private static IEnumerable<Section> Sections(ConfigurationContext context)
    {
        var (words, parts) = (context.Words, PartsList.Of(context));
        yield return new("parts", words.PartsList, [Lines(context, "parts-list", words.PartsList, parts.Devices)]);
        yield return new(
            "stock",
            words.CablesFromStock,
            [Lines(context, "stock-cables", words.CablesFromStock, parts.Cables)]
        );
        yield return new("drum", words.CablesByMetre, [Drums(context, parts)]);
        yield return new(
            "small",
            words.SmallParts,
            [new Paragraph(words.SmallPartsLead), Small(context), new Paragraph(words.PartsElsewhere)]
        );
        yield return new("totals", words.Totals, [Totals(context, parts)]);
    }

    private static Table Small(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "small-parts",
            words.SmallParts,
            [new(words.Part), new(words.Size), new(words.Quantity, IsNumber: true), new(words.Unit)],
            [
                .. SmallParts
                    .Of(context)
                    .Select(part => Row.Of(part.Title, part.Size, DocumentContext.Print(part.Quantity), words.Pieces)),
            ]
        );
    }

    private static Table Lines(ConfigurationContext context, string id, string title, ImmutableArray<PartLine> lines)
    {
        var words = context.Words;
        return new(
            id,
            title,
            [
                new(words.Part),
                new(words.Quantity, IsNumber: true),
                new(words.Unit),
                new(words.Length, IsNumber: true),
                new(words.Designation),
                new(words.Lifecycle),
                new(words.AlternateParts),
                new(words.LeadTime, IsNumber: true),
                new(words.UnitPrice, IsNumber: true),
                new(words.Sum, IsNumber: true),
                new(words.Id),
                new(words.Location),
            ],
            [.. lines.Select(line => RowOf(context, line))]
        );
    }

    private static Row RowOf(ConfigurationContext context, PartLine line) =>
        Row.Of(
            context.Links.Device(line.Device),
            line.Quantity.ToString(CultureInfo.InvariantCulture),
            context.Words.Pieces,
            context.Documents.Print(line.Length),
            string.Join(' ', line.Names),
            Of(context.Words, line.Device.Lifecycle),
            Cell.Of(
                line.Device.Alternates.Where(context.Documents.Catalogue.Devices.ContainsKey)
                    .Select(id => context.Links.Device(context.Documents.Catalogue.Devices[id]))
            ),
            context.Documents.Print(line.Device.LeadTime),
            context.Documents.Print(line.Device.Price),
            line.Sum is { } sum ? Money(sum, line.Device.Price!.Unit.Symbol) : "",
            line.Device.Id.Value.Value,
            string.Join(' ', line.Places)
        );

    private static string Of(SiteWords words, Lifecycle lifecycle) =>
        lifecycle switch
        {
            Lifecycle.LastOrders => words.LastOrders,
            Lifecycle.Ended => words.Ended,
            _ => words.Active,
        };

    private static Table Drums(ConfigurationContext context, PartsList parts)
    {
        var words = context.Words;
        return new(
            "drum-cables",
            words.CablesByMetre,
            [
                new(words.CrossSection),
                new(words.Cores, IsNumber: true),
                new(words.CoreColours),
                new(words.Jacket),
                new(words.Length, IsNumber: true),
                new(words.Cable),
            ],
            [
                .. parts.Drums.Select(drum =>
                    Row.Of(
                        CableWords.Sizes(
                            context,
                            drum.Leads.Conductor,
                            drum.Leads.Cores.Select(core => core.Conductor)
                        ),
                        drum.Cores.ToString(CultureInfo.InvariantCulture),
                        string.Join(' ', drum.Leads.Cores.Select(core => core.Core)),
                        CableWords.Jacket(words, drum.Leads.Jacket, drum.Leads),
                        drum.Length.ToString(),
                        string.Join(' ', drum.Names)
                    )
                ),
            ]
        );
    }

    private static Table Totals(ConfigurationContext context, PartsList parts)
    {
        var words = context.Words;
        var sums = parts
            .Lines.Where(line => line.Sum is not null)
            .GroupBy(line => line.Device.Price!.Unit.Symbol, StringComparer.Ordinal)
            .OrderBy(currency => currency.Key, StringComparer.Ordinal)
            .Select(currency =>
                Row.Of(
                    words.Total,
                    Money(currency.Aggregate((Rational)0, (sum, line) => sum + line.Sum!.Value), currency.Key)
                )
            );
        return new(
            "totals",
            words.Totals,
            [new(words.Totals), new(words.Value, IsNumber: true)],
            [
                .. sums,
                Row.Of(
                    words.PartsWithoutPrice,
                    parts.Lines.Count(line => line.Sum is null).ToString(CultureInfo.InvariantCulture)
                ),
                Row.Of(
                    words.Mass,
                    $"{parts.Lines.Aggregate((Rational)0, (sum, line) => sum + Mass(line)).ToString(1)} kg"
                ),
                Row.Of(words.LongestLeadTime, context.Documents.Print(Longest(parts))),
            ]
        );
    }

    private static Rational Mass(PartLine line) => line.Device.Mass is { } mass ? mass.InBase * line.Quantity : 0;

    private static Quantity? Longest(PartsList parts) =>
        parts.Lines.Select(line => line.Device.LeadTime).OfType<Quantity>().MaxBy(time => time.InBase);

    private static string Money(Rational amount, string currency) => $"{amount.ToString(2)} {currency}";
}
