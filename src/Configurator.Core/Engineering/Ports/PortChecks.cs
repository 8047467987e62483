using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Ports;

/// <summary>Is every device at a port that exists, is free for it, and is of the right class?</summary>
internal static class PortChecks
{
    public static IEnumerable<Finding> Compute(FittedMachine fitted) =>
        fitted
            .Cabled.Where(pair => IsJudgedHere(fitted, pair.Instance, pair.Home))
            .SelectMany(pair => OfInstance(fitted, pair.Instance, pair.Home))
            .Concat(Sharing(fitted))
            .Concat(Spare(fitted));

    /// <summary>A home that may be lacking because its line is faulty says nothing; nor does the port of a safety
    /// device that
    /// should have none: its wiring is the fault.</summary>
    private static bool IsJudgedHere(FittedMachine fitted, FitInstance instance, Home? home) =>
        (home is not null || fitted.Pins.IsWhole)
        && (instance.Device.Kind != DeviceKind.Safety || instance.Fit.Wiring == Wiring.Direct);

    private static IEnumerable<Finding> OfInstance(FittedMachine fitted, FitInstance instance, Home? home)
    {
        yield return HomeOf(fitted, instance, home);
        if (
            home is { IsDirect: false } at
            && instance.Fit.Wiring == Wiring.Port
            && Cabling.ClassOf(fitted.Machine, at) is { } offered
        )
        {
            var ports = fitted.Machine.Carriers[at.Master!.Value];
            var objection = at.IsPinTwo
                ? Splitting.Objection(fitted.Machine, instance.Device, offered, ports)
                : PortCompatibility.Objection(instance.Device, offered, ports.PinTwo);
            yield return Finding.That(
                PortRules.Class,
                instance.Key.ToString(),
                $"`{instance.Device.Id.Value}` of `{instance.Key}` {(objection is null ? "may be" : "must not be")} plugged into the class {offered} port `{at}`"
                    + (objection is null ? "" : $": {objection}"),
                objection is null,
                SpanOf(fitted, instance)
            ) with
            {
                Fix = objection is null ? null : $"give it a home on a free {Wanted(instance.Device)} port",
            };
        }
    }

    private static Finding HomeOf(FittedMachine fitted, FitInstance instance, Home? home)
    {
        var key = instance.Key.ToString();
        var isDirect = instance.Fit.Wiring == Wiring.Direct;
        return home switch
        {
            null => Finding.That(
                PortRules.Home,
                key,
                $"`{key}` has no home in the port plan",
                isSo: false,
                fitted.Pins.Span
            ) with
            {
                Fix = $"add the line `{key}: {(isDirect ? "direct" : "MASTER:PORT")}`",
            },
            { } at when at.IsDirect != isDirect => Finding.That(
                PortRules.Home,
                key,
                $"`{key}` is wired {(isDirect ? "directly into the box" : "to a port")}, but its home is `{at}`",
                isSo: false,
                SpanOf(fitted, instance)
            ) with
            {
                Fix = isDirect ? "write `direct`" : "name a port, or set `wiring: direct` on the fit",
            },
            { Master: { } carrier } when fitted.StationOf(carrier) is null => Finding.That(
                PortRules.Home,
                key,
                $"`{key}` is at home on `{carrier}`, which is not fitted with it",
                isSo: false,
                SpanOf(fitted, instance)
            ) with
            {
                Fix = $"give it a home on a master, or let its option require what fits `{carrier}`",
            },
            { } at => Finding.That(
                PortRules.Home,
                key,
                $"`{key}` is at home on `{at}`",
                isSo: true,
                SpanOf(fitted, instance)
            ),
        };
    }

    private static IEnumerable<Finding> Sharing(FittedMachine fitted) =>
        fitted
            .Cabled.Where(pair => pair.Home is { IsDirect: false })
            .GroupBy(pair => pair.Home!.Value with { IsPinTwo = false })
            .OrderBy(group => group.Key.ToString(), StringComparer.Ordinal)
            .Select(group => Sharing(fitted, group.Key, [.. group.Select(pair => pair.Instance)]));

    private static Finding Sharing(FittedMachine fitted, Home port, ImmutableArray<FitInstance> sharing)
    {
        var pins = sharing.Select(instance => fitted.Pins.HomeOf(instance.Key)).Distinct().Count();
        var allowed = fitted.Machine.Carriers.TryGetValue(port.Master!.Value, out var ports)
            ? Math.Min(pins, Splitting.Allowed(fitted.Machine, ports, sharing))
            : 1;
        return Finding.AtMost(
            PortRules.Sharing,
            port.ToString(),
            $"port `{port}` carries {string.Join(" and ", sharing.Select(instance => $"`{instance.Key}`"))}",
            Measure.Count(sharing.Length),
            Measure.Count(allowed),
            SpanOf(fitted, sharing[^1])
        ) with
        {
            Fix = "give one of them another home",
        };
    }

    private static IEnumerable<Finding> Spare(FittedMachine fitted) =>
        fitted.Masters.Select(master =>
        {
            var ports = master.Ports.Numbers.Count();
            var free = ports - fitted.PluggedInto(master.Name.Value).Select(pair => pair.Home.Port).Distinct().Count();
            return Finding.AtLeast(
                PortRules.Spare,
                master.Name.Value.Value,
                FormattableString.Invariant($"master `{master.Name.Value}` has {free} of {ports} ports free"),
                Measure.Count(free),
                Measure.Count(fitted.Machine.Control.SparePorts),
                master.Name.Span
            ) with
            {
                Fix = "give some of its fits a home elsewhere, or add a master",
            };
        });

    private static Sources.SourceSpan SpanOf(FittedMachine fitted, FitInstance instance) =>
        fitted.Pins.Homes.TryGetValue(instance.Key, out var home) ? home.Span : instance.Fit.Name.Span;

    private static string Wanted(Device device) =>
        device.PortClass == PortClass.B ? "class B"
        : device.Connection == ConnectionKind.Switching ? "class A or hub"
        : "class A";
}
