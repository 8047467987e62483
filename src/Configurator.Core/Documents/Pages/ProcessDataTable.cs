using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering.Signals;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages;

/// <summary>What a device exchanges in every cycle, item by item.</summary>
internal static class ProcessDataTable
{
    public static IEnumerable<Section> Sections(DocumentContext context, Device device)
    {
        if (device.IoLink is not { ProcessData: { } items } data)
        {
            yield break;
        }

        var words = context.Words;
        yield return new(
            "process-data",
            words.ProcessDataItems,
            [
                new Table(
                    "process-data",
                    words.ProcessDataItems,
                    [
                        new(words.Signal),
                        new(words.Title),
                        new(words.Direction),
                        new(words.Octet, IsNumber: true),
                        new(words.Bit, IsNumber: true),
                        new(words.BitOffset, IsNumber: true),
                        new(words.Type),
                        new(words.Range),
                        new(words.Unit),
                        new(words.OneCount, IsNumber: true),
                    ],
                    [
                        .. items.Inputs.Select(item => RowOf(context, item, SignalKind.Input, data.InputOctets)),
                        .. items.Outputs.Select(item => RowOf(context, item, SignalKind.Output, data.OutputOctets)),
                    ]
                ),
            ]
        );
    }

    private static Row RowOf(DocumentContext context, ProcessItem item, SignalKind kind, int octets) =>
        Row.Of(
            item.Name.Value,
            context.In(item.Title),
            context.Words.Of(kind),
            DocumentContext.Print(item.Octet),
            DocumentContext.Print(item.Bit),
            DocumentContext.Print(item.BitOffset(octets)),
            SignalTypes.Of(item.Type, item.Bits),
            Range(item),
            Unit(item),
            item.Range.Step?.ToString() ?? ""
        );

    public static string Range(ProcessItem? item) =>
        item?.Range is { From: { } from, To: { } to } ? $"{from} … {to}" : "";

    public static string Unit(ProcessItem? item) => item?.Range.Unit is { } unit ? UnitPrinter.Symbol(unit) : "";
}
