using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Timing;

/// <summary>Cycles, process data, and whether answers and positions keep what fits ask for.</summary>
internal static class TimingChecks
{
    public static IEnumerable<Finding> Compute(FittedMachine fitted) =>
        [
            .. CycleChecks.Compute(fitted),
            .. ProcessImage.Compute(fitted),
            .. fitted.Fitted.Where(HasNeed).SelectMany(instance => Needs(fitted, instance)),
        ];

    public static bool HasNeed(FitInstance instance) =>
        instance.Fit is { AnswerWithin: not null } or { PositionError: not null };

    private static IEnumerable<Finding> Needs(FittedMachine fitted, FitInstance instance)
    {
        var chain = ResponseChain.Of(fitted.Machine, instance, SignalWay.Of(fitted, instance));
        var speed = MachineSpeed.Of(fitted.Machine, instance.Fit);
        IReadOnlyList<string> missing =
        [
            .. chain.Missing,
            .. instance.Fit.PositionError is not null && speed is null
                ? ["`speed` of the machine, or `moves-at` of the fit"]
                : Array.Empty<string>(),
        ];
        yield return Stated(instance, missing);
        if (missing.Count > 0)
        {
            yield break;
        }

        if (instance.Fit.AnswerWithin is { } within)
        {
            yield return Answer(fitted, instance, chain, within);
        }

        if (instance.Fit.PositionError is { } error && speed is { } known)
        {
            yield return Position(fitted, instance, chain, error, known);
        }
    }

    private static Finding Stated(FitInstance instance, IReadOnlyList<string> missing) =>
        Finding.That(
            TimingRules.Stated,
            instance.Key.ToString(),
            missing.Count == 0
                ? $"every time on the way of `{instance.Key}` is stated"
                : $"`{instance.Key}` states a need, but nobody states {string.Join(", ", missing)}",
            missing.Count == 0,
            instance.Fit.Name.Span
        ) with
        {
            Fix = missing.Count == 0 ? null : $"state {string.Join(" and ", missing)}",
        };

    private static Finding Answer(FittedMachine fitted, FitInstance instance, ResponseChain chain, Quantity within)
    {
        var longest = new Measure(chain.Longest, "ms");
        return Finding.AtMost(
            TimingRules.Answer,
            instance.Key.ToString(),
            $"`{instance.Key}` is answered after up to {longest} ({Print(chain)})",
            longest,
            new(within.InBase, "ms"),
            instance.Fit.Name.Span
        ) with
        {
            Fix =
                chain.Longest <= within.InBase
                    ? null
                    : Mends(fitted, instance, "ms", within.InBase, other => other.Longest),
        };
    }

    private static Finding Position(
        FittedMachine fitted,
        FitInstance instance,
        ResponseChain chain,
        Quantity error,
        MachineSpeed speed
    )
    {
        var spread = Spread(chain, speed);
        return Finding.AtMost(
            TimingRules.Position,
            instance.Key.ToString(),
            $"at {speed} the signal of `{instance.Key}` varies by {new Measure(chain.Jitter, "ms")}, "
                + $"so its position by up to {new Measure(spread, "mm")}",
            new(spread, "mm"),
            new(error.InBase, "mm"),
            instance.Fit.Name.Span
        ) with
        {
            Fix =
                spread <= error.InBase
                    ? null
                    : Mends(fitted, instance, "mm", error.InBase, other => Spread(other, speed)),
        };
    }

    public static Rational Spread(ResponseChain chain, MachineSpeed speed) =>
        Motion.SpreadMillimetres(speed.MetresPerSecond, chain.Parts.Select(part => part.Jitter));

    private static string Mends(
        FittedMachine fitted,
        FitInstance instance,
        string unit,
        Rational limit,
        Func<ResponseChain, Rational> value
    )
    {
        var mends = TimingMends
            .Of(fitted, instance)
            .Select(mend => (mend.Means, mend.Words, Value: value(mend.Chain)))
            .Where(mend => mend.Value <= limit)
            .DistinctBy(mend => mend.Means)
            .Select(mend => $"{mend.Words} gives {new Measure(mend.Value, unit)}")
            .ToList();
        return mends.Count > 0
            ? string.Join("; ", mends)
            : "no less process data, faster rate or direct signal is enough: take a faster device, network or task";
    }

    private static string Print(ResponseChain chain) =>
        string.Join(
            ", ",
            chain.Parts.Select(part =>
                $"{part.Stage.ToString().ToLowerInvariant()} {part.Longest.ToString(decimals: 3)}"
            )
        );
}
