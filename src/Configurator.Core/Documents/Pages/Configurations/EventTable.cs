using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.Monitoring;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Events that ports and devices usually send.</summary>
internal static class EventTable
{
    public static Table Of(SiteWords words) =>
        new(
            "events",
            words.Events,
            [new(words.EventCode), new(words.SentBy), new(words.Meaning), new(words.DeviceStatus, IsNumber: true)],
            [
                .. EventCode.All.Select(code =>
                    Row.Of(
                        FormattableString.Invariant($"0x{code.Code:X4}"),
                        code.IsPort ? words.Port : words.Device,
                        words.Language == "es" ? code.Spanish : code.English,
                        code.Status is { } status ? DocumentContext.Print(status) : ""
                    )
                ),
            ]
        );
}
