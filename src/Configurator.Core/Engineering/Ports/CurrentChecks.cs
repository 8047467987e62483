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
        foreach (var (instance, home) in plugged)
        {
            yield return AtPort(fitted, instance, home, ports);
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

    private static Finding AtPort(FittedMachine fitted, FitInstance instance, Home home, PortSet ports)
    {
        var draw = Draw(fitted, instance);
        var limit = ports.CurrentPerPort is { } stated ? Limit(stated) : Measure.Of(PortMin);
        return Finding.AtMost(
            PortRules.PortCurrent,
            home.ToString(),
            $"`{instance.Key}` draws {draw} at port `{home}`",
            Measure.Of(draw),
            limit,
            SpanOf(fitted, instance)
        ) with
        {
            Fix = "choose a device that draws less, or wire it another way",
        };
    }

    private static Finding Extra(FittedMachine fitted, FitInstance instance, Home home, PortSet ports)
    {
        var draw = ExtraDraw(instance);
        var limit = ports.ExtraPerPort is { } stated ? Limit(stated) : Measure.Of(ExtraMin);
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

    /// <summary>What an instance takes from its port: its own current and, for a hub, that of everything behind
    /// it.</summary>
    public static Microamperes Draw(FittedMachine fitted, FitInstance instance)
    {
        var own = instance.Device.Current is { } current ? Microamperes.From(current) : Microamperes.Zero;
        return FittedMachine.AsCarrier(instance) is { } hub
            ? own
                + Microamperes.Sum(
                    fitted
                        .PluggedInto(hub)
                        .Where(pair => pair.Instance.Key != instance.Key)
                        .Select(pair => pair.Instance.Device.Current)
                        .OfType<Quantity>()
                        .Select(Microamperes.From)
                )
            : own;
    }

    private static Microamperes ExtraDraw(FitInstance instance) =>
        instance.Device.ExtraCurrent is { } extra ? Microamperes.From(extra) : Microamperes.Zero;

    private static Measure Limit(Quantity stated) => Measure.Of(Microamperes.From(stated));

    private static Sources.SourceSpan SpanOf(FittedMachine fitted, FitInstance instance) =>
        fitted.Pins.Homes.TryGetValue(instance.Key, out var home) ? home.Span : instance.Fit.Name.Span;
}
