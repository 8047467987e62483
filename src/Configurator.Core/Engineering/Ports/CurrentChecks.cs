using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Ports;

/// <summary>Adds up what each port, master and hub must give, worst case: everything fitted is on.</summary>
internal static class CurrentChecks
{
    /// <summary>What every master port gives at L+ at least, where its maker states no limit of its own.</summary>
    /// <remarks>Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) 5.3.2, 200 mA.</remarks>
    private static readonly Microamperes PortMin = new(200_000);

    /// <summary>What every class B port gives at least from its extra supply, where its maker states no limit of its
    /// own.</summary>
    /// <remarks>Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) 5.5, 1.6 A (from
    /// memory).</remarks>
    private static readonly Microamperes ExtraMin = new(1_600_000);

    public static IEnumerable<Finding> Compute(FittedMachine fitted) =>
        fitted
            .Masters.SelectMany(master => OfCarrier(fitted, master.Name.Value, master.Ports, master.Name.Span))
            .Concat(
                fitted.Fitted.SelectMany(instance =>
                    FittedMachine.AsCarrier(instance) is { } hub
                        ? OfCarrier(fitted, hub, instance.Device.Ports!, instance.Fit.Name.Span)
                        : []
                )
            );

    private static IEnumerable<Finding> OfCarrier(
        FittedMachine fitted,
        MasterName carrier,
        PortSet ports,
        Sources.SourceSpan span
    )
    {
        var plugged = fitted
            .PluggedInto(carrier)
            .OrderBy(pair => pair.Home.Port)
            .ThenBy(pair => pair.Instance.Key)
            .ToList();
        foreach (var port in plugged.GroupBy(pair => pair.Home.Port))
        {
            yield return AtPort(fitted, [.. port.Select(pair => pair.Instance)], port.First().Home, ports);
        }

        foreach (var (instance, home) in plugged)
        {
            if (ports.ClassOf(home.Port) == PortClass.B)
            {
                yield return Extra(fitted, instance, home, ports);
            }
        }

        if (ports.CurrentInAll is { } inAll)
        {
            var sum = Microamperes.Sum(plugged.Select(pair => Draw(fitted, pair.Instance)));
            yield return Finding.AtMost(
                PortRules.MasterCurrent,
                carrier.Value,
                $"everything plugged into `{carrier}` draws {sum}",
                Measure.Of(sum),
                Limit(inAll),
                span
            ) with
            {
                Fix = "give some of its fits a home elsewhere",
            };
        }

        if (ports.ExtraInAll is { } extraInAll)
        {
            var sum = Microamperes.Sum(plugged.Select(pair => ExtraDraw(pair.Instance)));
            yield return Finding.AtMost(
                PortRules.MasterExtra,
                carrier.Value,
                $"all actuators at `{carrier}` draw {sum} when on together",
                Measure.Of(sum),
                Limit(extraInAll),
                span
            ) with
            {
                Fix = "give some of its class B fits a home elsewhere",
            };
        }
    }

    private static Finding AtPort(FittedMachine fitted, ImmutableArray<FitInstance> plugged, Home home, PortSet ports)
    {
        var port = home with { IsPinTwo = false };
        var draw = Microamperes.Sum(plugged.Select(instance => Draw(fitted, instance)));
        var names = string.Join(" and ", plugged.Select(instance => $"`{instance.Key}`"));
        var limit = Measure.Of(PortLimit(ports));
        return Finding.AtMost(
            PortRules.PortCurrent,
            port.ToString(),
            $"{names} {(plugged.Length == 1 ? "draws" : "draw")} {draw} at port `{port}`",
            Measure.Of(draw),
            limit,
            SpanOf(fitted, plugged[^1])
        ) with
        {
            Fix = "choose a device that draws less, or wire it another way",
        };
    }

    private static Finding Extra(FittedMachine fitted, FitInstance instance, Home home, PortSet ports)
    {
        var draw = ExtraDraw(instance);
        var limit = Measure.Of(ExtraLimit(ports));
        return Finding.AtMost(
            PortRules.ExtraCurrent,
            home.ToString(),
            $"`{instance.Key}` draws {draw} from the extra supply of port `{home}`",
            Measure.Of(draw),
            limit,
            SpanOf(fitted, instance)
        ) with
        {
            Fix = "choose a device that draws less, or split its outputs over two ports",
        };
    }

    /// <summary>Why a single port of that class cannot feed the device; null where it can. A hub is taken without what
    /// is behind it.</summary>
    public static string? Objection(FitInstance instance, PortSet ports, PortClass offered)
    {
        var own = instance.Device.Current is { } current ? Microamperes.From(current) : Microamperes.Zero;
        var extra = ExtraDraw(instance);
        var (limit, extraLimit) = (PortLimit(ports), ExtraLimit(ports));
        return own > limit ? $"it draws {own}, the port gives {limit}"
            : offered == PortClass.B && extra > extraLimit
                ? $"it draws {extra} from the extra supply, the port gives {extraLimit}"
            : null;
    }

    /// <summary>Two devices like that at one port.</summary>
    public static bool CanFeedTwo(PortSet ports, Device device) =>
        device.Current is not { } current
        || Microamperes.From(current) + Microamperes.From(current) <= PortLimit(ports);

    /// <summary>What one port gives at L+.</summary>
    public static Microamperes PortLimit(PortSet ports) =>
        ports.CurrentPerPort is { } stated ? Microamperes.From(stated) : PortMin;

    private static Microamperes ExtraLimit(PortSet ports) =>
        ports.ExtraPerPort is { } stated ? Microamperes.From(stated) : ExtraMin;

    /// <summary>What an instance takes from its port: its own current and, for a hub, that of everything behind
    /// it.</summary>
    public static Microamperes Draw(FittedMachine fitted, FitInstance instance) =>
        Microamperes.Sum(
            fitted
                .Behind(instance)
                .Prepend(instance)
                .Select(drawing => drawing.Device.Current)
                .OfType<Quantity>()
                .Select(Microamperes.From)
        );

    private static Microamperes ExtraDraw(FitInstance instance) =>
        instance.Device.ExtraCurrent is { } extra ? Microamperes.From(extra) : Microamperes.Zero;

    private static Measure Limit(Quantity stated) => Measure.Of(Microamperes.From(stated));

    private static Sources.SourceSpan SpanOf(FittedMachine fitted, FitInstance instance) =>
        fitted.Pins.Homes.TryGetValue(instance.Key, out var home) ? home.Span : instance.Fit.Name.Span;
}
