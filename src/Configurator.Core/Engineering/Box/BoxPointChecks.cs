using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Diagnostics;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Engineering.Box;

/// <summary>No two devices take one input, output or port of the box, and there are as many as are taken.</summary>
internal static class BoxPointChecks
{
    public static readonly FindingRule Taken = new(
        "box.taken-once",
        "Inputs, outputs and ports of the box are taken once",
        new("CFG4204", Severity.Error, "Two devices at one place of the box"),
        "port plan; one terminal, one wire is common practice, no source",
        IsSafety: true
    );

    public static readonly FindingRule Offered = new(
        "box.offered",
        "Inputs, outputs and ports that the box has",
        new("CFG4205", Severity.Error, "The box has no such input, output or port"),
        "port plan; numbers that the machine states for its box"
    );

    private static readonly Rule NotKept = new("CFG4206", Severity.Warning, "Numbers in the box that no plan keeps");

    private const int Shown = 3;

    public static ImmutableArray<FindingRule> All { get; } = [Taken, Offered];

    public static ImmutableArray<Rule> Rules { get; } = [NotKept];

    public static IEnumerable<Finding> Compute(FittedMachine fitted)
    {
        var kinds = fitted
            .Fitted.Where(instance => fitted.Pins.Points.ContainsKey(instance.Key))
            .SelectMany(instance =>
                Places(fitted.Pins.Points[instance.Key].Value)
                    .Select(place => new Taker(place.Point, place.Number, instance.Key))
            )
            .GroupBy(taker => taker.Point)
            .OrderBy(kind => kind.Key);
        foreach (var kind in kinds)
        {
            yield return TakenOnce(fitted, kind.Key, [.. kind]);
            if (fitted.Machine.Control.Box.OfferOf(kind.Key) is { } offer && !IsCounted(kind.Key, kind.Count(), offer))
            {
                yield return IsOffered(fitted, kind.MaxBy(taker => taker.Number), offer);
            }
        }
    }

    /// <summary>Too many of these are reported as such.</summary>
    private static bool IsCounted(BoxPoint point, int taken, int offer) =>
        taken > offer && point is (BoxPoint.SafetyInput or BoxPoint.SafetyOutput or BoxPoint.FastInput);

    /// <summary>In all orders: two at one place.</summary>
    public static IEnumerable<WeightedSum> Sums(Machine machine) =>
        FitConditions
            .Sound(machine)
            .Where(instance => machine.Plan.Points.ContainsKey(instance.Key))
            .SelectMany(instance => Places(machine.Plan.Points[instance.Key].Value).Select(place => (place, instance)))
            .GroupBy(taken => taken.place, taken => taken.instance)
            .Where(place => place.Skip(1).Any())
            .DistinctBy(place => string.Join(' ', place.Select(instance => instance.Key)), StringComparer.Ordinal)
            .Select(place => FitSums.Of(place.Select(instance => (instance, 1L))));

    /// <summary>Adding an option may move the wires of fits whose numbers the plan does not keep.</summary>
    public static IEnumerable<Diagnostic> OfPlan(Machine machine)
    {
        var open = BoxTakers
            .Of(machine, machine.Plan)
            .SelectMany(point => point.Select(taker => (Point: point.Key, taker.Instance.Key, taker.Count)))
            .Where(taker => machine.Plan.PointsOf(taker.Key, taker.Point).Length != taker.Count)
            .Where(taker => taker.Count <= (machine.Control.Box.OfferOf(taker.Point) ?? int.MaxValue))
            .Select(taker => taker.Key.ToString())
            .Distinct(StringComparer.Ordinal)
            .ToList();
        return open.Count == 0 || machine.Plan is not { IsWhole: true, ArePointsWhole: true }
            ? []
            :
            [
                new(
                    NotKept,
                    $"the port plan of `{machine.Id.Value}` does not keep where in the box it wires {Names(open)}",
                    machine.Plan.Span
                )
                {
                    Fix = new(
                        $"run `configurator plan {machine.Id.Value}`: it keeps what there is, and numbers the rest"
                    ),
                },
            ];
    }

    private static Finding TakenOnce(FittedMachine fitted, BoxPoint point, ImmutableArray<Taker> takers)
    {
        var twice = takers.GroupBy(taker => taker.Number).Where(place => place.Skip(1).Any()).MinBy(place => place.Key);
        return twice is null
            ? Finding.That(
                Taken,
                BoxPointNames.Key(point),
                $"each {BoxPointNames.Noun(point)} is wired to one device",
                isSo: true,
                SpanOf(fitted, takers[0])
            )
            : Finding.That(
                Taken,
                BoxPointNames.Key(point),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{BoxPointNames.Noun(point)} {twice.Key} of the box is wired {Takers([.. twice.Select(taker => taker.Key).Distinct()])}"
                ),
                isSo: false,
                SpanOf(fitted, twice.Last())
            ) with
            {
                Fix = "take one of these lines out of the port plan and run `configurator plan`",
            };
    }

    private static string Takers(ImmutableArray<InstanceKey> keys) =>
        keys is [var only]
            ? $"twice to `{only}`"
            : $"to {string.Join(" and ", keys.Take(Shown).Select(key => $"`{key}`"))}";

    private static Finding IsOffered(FittedMachine fitted, Taker last, int offer) =>
        Finding.AtMost(
            Offered,
            BoxPointNames.Key(last.Point),
            string.Create(
                CultureInfo.InvariantCulture,
                $"the last {BoxPointNames.Noun(last.Point)} that is wired is number {last.Number}, to `{last.Key}`"
            ),
            Model.Units.Measure.Count(last.Number),
            Model.Units.Measure.Count(offer),
            SpanOf(fitted, last)
        ) with
        {
            Fix = "give the box more of them, or leave out an option that takes them",
        };

    private static IEnumerable<(BoxPoint Point, int Number)> Places(BoxPins pins) =>
        pins.Numbers.SelectMany(own => own.Value.Select(number => (own.Key, number)));

    private static SourceSpan SpanOf(FittedMachine fitted, Taker taker) => fitted.Pins.Points[taker.Key].Span;

    private static string Names(List<string> keys)
    {
        var shown = string.Join(", ", keys.Take(Shown).Select(key => $"`{key}`"));
        return keys.Count > Shown
            ? string.Create(CultureInfo.InvariantCulture, $"{shown} and {keys.Count - Shown} more")
            : shown;
    }

    private readonly record struct Taker(BoxPoint Point, int Number, InstanceKey Key);
}
