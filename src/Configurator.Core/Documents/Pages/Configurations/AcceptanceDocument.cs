using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering.Power;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>What to measure on the finished machine, with room for the result and a name.</summary>
/// <remarks>Source: IEC 60204-1 clause 18 for the electrical tests (from memory); the rest is common practice, no
/// source.</remarks>
internal static class AcceptanceDocument
{
    private const string Box = "☐";
    private const string Line = "__________";

    public static ConfigurationDocument Document { get; } =
        new("acceptance", "AC", words => words.Acceptance, words => words.AcceptanceLead, Sections);

    private static IEnumerable<Section> Sections(ConfigurationContext context)
    {
        var words = context.Words;
        yield return new("cautions", words.Cautions, [new Caution(words.Cautions, Cautions.Wiring(words))]);
        yield return Sheet(context, "general", words.GeneralTests, AcceptanceTests.General(words));
        yield return Sheet(context, "safety", words.SafetyTests, SafetyTests.Of(context));
        if (LoadTests.Of(context) is { IsEmpty: false } loads)
        {
            yield return Sheet(context, "loads", words.LoadTests, loads);
        }

        if (context.Fitted.Machine.Control.Power is { } power)
        {
            yield return Sheet(context, "power", words.PowerTests, Power(context, power).Concat(Channels(context)));
        }

        yield return Sheet(context, "ports", words.PortTests, Ports(context));
        if (DirectTests.Of(context) is { IsEmpty: false } direct)
        {
            yield return Sheet(context, "direct", words.DirectTests, direct);
        }

        yield return new("sign-off", words.SignOff, [SignOff(words)]);
    }

    private static Section Sheet(
        ConfigurationContext context,
        string id,
        string title,
        IEnumerable<AcceptanceTest> tests
    )
    {
        var words = context.Words;
        return new(
            id,
            title,
            [
                new Table(
                    $"test-{id}",
                    title,
                    [
                        new(words.Test),
                        new(words.Measure),
                        new(words.Expected),
                        new(words.Tolerance),
                        new(words.Measured),
                        new(words.Done),
                        new(words.NameAndDate),
                    ],
                    [
                        .. tests.Select(
                            (test, i) =>
                                Row.Of(
                                    FormattableString.Invariant($"{Letter(id)}{i + 1} {test.About}"),
                                    test.Measure,
                                    test.Expected,
                                    test.Tolerance,
                                    Line,
                                    Box,
                                    Line
                                )
                        ),
                    ]
                ),
            ]
        );
    }

    /// <summary>Steps are numbered sheet by sheet: <c>G1</c>, <c>L1</c>, <c>P1</c> ...</summary>
    private static char Letter(string id) => char.ToUpperInvariant(id == "ports" ? 'c' : id[0]);

    /// <summary>What arrives at each master with everything on, as computed with the supply at its lowest: more is
    /// usual.</summary>
    private static IEnumerable<AcceptanceTest> Power(ConfigurationContext context, FieldPower power)
    {
        var words = context.Words;
        if (power.Circuits.DistinctBy(circuit => circuit.Supply.Value, StringComparer.Ordinal).Skip(1).Any())
        {
            yield return new(words.ZeroVolts, words.MeasureZeroVolts, words.NoContinuity, words.ZeroVoltsTolerance);
        }

        foreach (var circuit in power.Circuits)
        {
            var fed = FedCircuit.Of(context.Fitted, power, circuit);
            for (var i = 0; i < fed.Masters.Length; i++)
            {
                yield return new(
                    $"{context.Names.Of(fed.Masters[i])} {circuit.Name.Value}",
                    words.MeasureVolts,
                    fed.Solved is { } solved ? $"{words.AtLeast} {Down(solved.Volts[i])} V" : words.Impossible,
                    $"{words.Never} {PowerRules.MasterMin(circuit.Feeds).ToString(1)} V"
                );
            }

            yield return new(
                circuit.Name.Value,
                words.MeasureAmperes,
                fed.Solved is { } whole ? $"{words.AtMost} {Up(whole.Total)} A" : words.Impossible,
                $"{words.Protection} {context.Documents.Print(circuit.Protection)}"
            );
        }
    }

    private static IEnumerable<AcceptanceTest> Channels(ConfigurationContext context) =>
        context
            .Engineered.Report.Findings.Where(finding => finding.Rule == PowerRules.BoxChannel)
            .Select(finding => new AcceptanceTest(
                finding.About == "inside" ? context.Words.InsideDevices : context.Words.DirectTerminals,
                context.Words.MeasureAmperes,
                $"{context.Words.AtMost} {Up(finding.Value!.Value.Value)} A",
                $"{context.Words.Protection} {finding.Limit}"
            ));

    /// <summary>A limit printed with one digit is never tighter than the one computed.</summary>
    private static string Down(Rational value) => (-Tenths(-value)).ToString(1);

    private static string Up(Rational value) => Tenths(value).ToString(1);

    private static Rational Tenths(Rational value) => new((value * 10).Ceiling(), 10);

    private static IEnumerable<AcceptanceTest> Ports(ConfigurationContext context) =>
        PortMapDocument
            .Carriers(context.Fitted)
            .SelectMany(carrier => Ports(context, carrier))
            .Concat(
                context.Fitted.LastMaster is { } last
                    ? context
                        .Names.OutletsOf(last)
                        .Select(outlet => new AcceptanceTest(
                            outlet,
                            context.Words.LookCapped,
                            context.Words.Capped,
                            ""
                        ))
                    : []
            );

    private static IEnumerable<AcceptanceTest> Ports(ConfigurationContext context, Carrier carrier)
    {
        var words = context.Words;
        var plugged = context.Fitted.PluggedInto(carrier.Name).ToLookup(pair => pair.Home.Port, pair => pair.Instance);
        foreach (var port in carrier.Device.Ports!.Numbers)
        {
            var name = FormattableString.Invariant($"{carrier.Designation(context.Names)}:{port}");
            if (!plugged[port].Any())
            {
                yield return new(name, words.LookCapped, words.Capped, "");
            }

            foreach (var instance in plugged[port].OrderBy(instance => instance.Key))
            {
                if (carrier.Device.Ports.ClassOf(port) == PortClass.B && instance.Device.PortClass == PortClass.A)
                {
                    yield return new(
                        $"{name} {context.Names.Of(instance)}",
                        words.LookPinTwo,
                        words.PinTwoExpected,
                        words.AsDataSheet
                    );
                }

                yield return OfDevice(context, name, instance);
            }
        }
    }

    private static AcceptanceTest OfDevice(ConfigurationContext context, string port, FitInstance instance)
    {
        var (words, device) = (context.Words, instance.Device);
        return device.IoLink is { } data
            ? new(
                $"{port} {context.Names.Of(instance)}",
                words.LookIdentity,
                $"{context.In(device.Title)}; {data.Rate.ToString().ToUpperInvariant()}; {data.InputOctets}/{data.OutputOctets} {words.Octets}",
                $"{words.Cycle} {context.Documents.Print(data.Cycle)}"
            )
            : new($"{port} {context.Names.Of(instance)}", words.LookSwitching, context.In(instance.Fit.Purpose), "");
    }

    private static Table SignOff(SiteWords words) =>
        new(
            "signatures",
            words.SignOff,
            [new(words.By), new(words.NameAndDate), new(words.Done)],
            [.. words.Signers.Select(signer => Row.Of(signer, Line, Box))]
        );
}

/// <summary>One line of an acceptance sheet.</summary>
internal sealed record AcceptanceTest(string About, string Measure, string Expected, string Tolerance);
