using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>Surface, corners and fasteners of devices and masters in food and splash areas.</summary>
internal static class FinishChecks
{
    private const string Micrometre = "um";
    private const int RadiusMillimetresMin = 3;

    public static IEnumerable<Finding> Of(WashedPart part)
    {
        if (!part.HasFinish || part.Area.Class == AreaClass.NonFood)
        {
            return [];
        }

        return part.Device!.Finish is { } finish
            ? [Surface(part, finish), Corners(part, finish), Threads(part, finish)]
            : [Unstated(part)];
    }

    /// <summary>Ra in micrometres.</summary>
    private static Rational RoughnessMax(AreaClass area) => area == AreaClass.Food ? new(8, 10) : new(32, 10);

    private static Finding Surface(WashedPart part, Finish finish) =>
        Finding.AtMost(
            HygieneRules.Surface,
            part.About,
            $"{part.Name} in {Place(part)} has a surface of Ra {finish.Roughness}",
            new(finish.Roughness.InBase * 1000, Micrometre),
            new(RoughnessMax(part.Area.Class), Micrometre),
            part.Span
        ) with
        {
            Details = Details(part, $"Ra ≤ {RoughnessMax(part.Area.Class).ToString(1)} um", $"Ra {finish.Roughness}"),
        };

    private static Finding Corners(WashedPart part, Finish finish) =>
        Finding.AtLeast(
            HygieneRules.Corners,
            part.About,
            $"{part.Name} in {Place(part)} has inner corners of {finish.Radius}",
            new(finish.Radius.InBase, "mm"),
            new(RadiusMillimetresMin, "mm"),
            part.Span
        ) with
        {
            Details = Details(part, $"≥ {RadiusMillimetresMin} mm", finish.Radius.Written),
        };

    private static Finding Threads(WashedPart part, Finish finish)
    {
        var most = part.Area.Class == AreaClass.Food ? Fasteners.None : Fasteners.Domed;
        return Finding.That(
            HygieneRules.Threads,
            part.About,
            $"{part.Name} in {Place(part)} has fasteners `{Word(finish.Fasteners)}`, and `{Word(most)}` may be there",
            finish.Fasteners <= most,
            part.Span
        ) with
        {
            Details = Details(part, Word(most), Word(finish.Fasteners)),
        };
    }

    private static Finding Unstated(WashedPart part) =>
        new(
            HygieneRules.Surface,
            part.About,
            $"{part.Name} in {Place(part)} does not state its `finish`",
            Verdict.Unstated,
            part.Span
        )
        {
            Fix = "state `finish` with roughness, radius and fasteners of the device",
            Details = Details(part, $"Ra ≤ {RoughnessMax(part.Area.Class).ToString(1)} um", ""),
        };

    private static string Word(Fasteners fasteners) => Binding.Shapes.Kebab.FromPascal(fasteners.ToString());

    private static string Place(WashedPart part) =>
        $"area `{part.Area.Id.Value}` ({HygieneWords.Of(part.Area.Class)})";

    private static System.Collections.Immutable.ImmutableArray<string> Details(
        WashedPart part,
        string asked,
        string stated
    ) => [part.Device!.Id.Value.Value, part.Area.Id.Value.Value, asked, stated];
}
