using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering.Timing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>What travels between each IO-Link device and its port, and how long it takes.</summary>
internal static class MessageTable
{
    public static Table Of(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "messages",
            words.Messages,
            [
                new(words.Designation),
                new(words.Device),
                new(words.MessageType),
                new(words.Octets),
                new(words.LongestMessage, IsNumber: true),
                new(words.Cycle, IsNumber: true),
                new(words.Margin, IsNumber: true),
                new(words.InputAge, IsNumber: true),
            ],
            [
                .. context
                    .Fitted.Fitted.Where(instance => instance is { Device.IoLink: not null, Fit.Wiring: Wiring.Port })
                    .Select(instance => RowOf(context, instance, instance.Device.IoLink!)),
            ]
        );
    }

    private static Row RowOf(ConfigurationContext context, FitInstance instance, IoLinkData data)
    {
        var sequence = MSequences.Of(data);
        var longest = sequence.MillisecondsMax(data.Rate);
        var age = InputAge.Of(data.Cycle.InBase, longest);
        var margin = data.Cycle.InBase - longest;
        return new(
            [
                context.Names.Of(instance),
                context.Links.Device(instance.Device),
                $"{sequence.Type} {CycleChecks.Word(data.Rate)}",
                FormattableString.Invariant($"{data.InputOctets}/{data.OutputOctets}"),
                $"{new Measure(longest, "ms")}",
                context.Documents.Print(data.Cycle),
                $"{new Measure(margin, "ms")}",
                $"{age.MillisecondsMin.ToString(decimals: 2)} … {new Measure(age.MillisecondsMax, "ms")}",
            ],
            margin < 0 ? "fail" : ""
        );
    }
}
