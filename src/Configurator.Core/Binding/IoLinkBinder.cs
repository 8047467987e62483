using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Binding;

/// <summary>Binds what a device says over IO-Link.</summary>
internal static class IoLinkBinder
{
    /// <param name="ports">Of a hub; null for any other device.</param>
    public static IoLinkData? Bind(Fields f, PortSet? ports, PinTwoUse pinTwo, ICollection<Diagnostic> report)
    {
        if (
            f.One<BitRate>("rate") is not { } rate
            || f.One<int>("input-octets") is not { } input
            || f.One<int>("output-octets") is not { } output
            || f.Value<Quantity>("cycle") is not { } cycle
        )
        {
            return null;
        }

        return new(rate.Value, input.Value, output.Value, cycle)
        {
            OnRequestOctets = f.Value("on-request-octets", 1),
            ProcessData = f.Value<Fields>("process-data") is { } data
                ? new ProcessDataBinder(ports, pinTwo, report).Bind(data, input, output)
                : null,
            Identity =
                f.Value<Fields>("identity") is { } identity
                && identity.One<int>("vendor") is { } vendor
                && identity.One<int>("device") is { } device
                    ? new(new(vendor.Value, device.Value), device.Span)
                    : null,
        };
    }
}
