using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.Cables;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Wires inside the box that decide what a stop drops: supply, breaker, contacts, trunk socket; coils and
/// feedback of what drops; safe torque off of every drive.</summary>
internal static class InsideTable
{
    public static Table Of(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "inside-box",
            words.InsideBox,
            [
                new(words.From),
                new(words.To),
                new(words.Carries),
                new(words.Protection, IsNumber: true),
                new(words.DroppedBy),
            ],
            [.. InsideCircuits.Of(context), .. OfSafety(context), .. OfDrives(context)]
        );
    }

    private static IEnumerable<Row> OfSafety(ConfigurationContext context)
    {
        var (words, ways) = (context.Words, new BoxWays(context));
        return context
            .Fitted.Fitted.Where(instance => instance is { Fit.Wiring: Wiring.Inside, Device.Safety: not null })
            .SelectMany(instance =>
                Enumerable
                    .Range(1, instance.Device.Safety!.Outputs)
                    .Select(n =>
                        OfChannel(ways.Output(instance, n), context.Names.Of(instance), words.SafetyChannel, n)
                    )
                    .Concat(
                        Enumerable
                            .Range(1, instance.Device.Safety.Inputs)
                            .Select(n =>
                                OfChannel(context.Names.Of(instance), ways.Input(instance, n), words.FeedbackChannel, n)
                            )
                    )
            );
    }

    private static Row OfChannel(string from, string to, string carries, int number) =>
        Row.Of(from, to, $"{carries} {DocumentContext.Print(number)}", "", "");

    private static IEnumerable<Row> OfDrives(ConfigurationContext context) =>
        new BoxWays(context).Standard(context.Fitted.Machine.Control.Box.Safety?.TorqueOff?.Value) is not { } relay
            ? []
            : context
                .Fitted.Fitted.Where(instance => instance.Device.Kind == DeviceKind.Drive)
                .Select(drive =>
                    Row.Of(
                        context.Names.Of(relay),
                        context.Names.Of(drive),
                        context.Words.TorqueOff,
                        "",
                        context.In(relay.Fit.DroppedBy)
                    )
                );
}
