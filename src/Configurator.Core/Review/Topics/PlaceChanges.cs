using System.Globalization;
using Configurator.Core.Documents;
using Configurator.Core.Model;
using Configurator.Core.Review.Kinds;
using Configurator.Core.Sources;

namespace Configurator.Core.Review.Topics;

/// <summary>Inputs, outputs and ports of the box that a fit had before and has no more.</summary>
internal static class PlaceChanges
{
    public static IEnumerable<Change> Of(ReviewContext context, MachinePair pair)
    {
        var after = pair.After.Plan.Points;
        return pair
            .Before.Plan.Points.Select(line =>
                (
                    Key: context.Renames.Of(line.Key),
                    Was: line.Value,
                    Now: after.GetValueOrDefault(context.Renames.Of(line.Key))
                )
            )
            .Where(line => line.Now.Value is not null && Lost(line.Was.Value, line.Now.Value))
            .OrderBy(line => line.Key)
            .Select(line =>
                HomeChanges.Concerning(context, pair, line.Key, ChangeOf(pair, line.Key, line.Was, line.Now))
            );
    }

    private static Change ChangeOf(MachinePair pair, InstanceKey key, Located<BoxPins> was, Located<BoxPins> now) =>
        new(HomeKinds.PlaceMoved, $"`{key}`", [ReviewPlace.After(now.Span), ReviewPlace.Before(was.Span)])
        {
            Machine = pair.Id,
            Before = Text(was.Value),
            After = Text(now.Value),
            PagesBefore = [PagePaths.PortPlan(pair.Before.Id.Value)],
            PagesAfter = [PagePaths.PortPlan(pair.Id)],
        };

    private static bool Lost(BoxPins was, BoxPins now) =>
        was.Numbers.Any(own => own.Value.Except(now.Of(own.Key)).Any());

    /// <summary><c>`safety-inputs` 3 4, `inputs` 4</c>.</summary>
    private static string Text(BoxPins pins) =>
        string.Join(
            ", ",
            pins.Numbers.Select(own =>
                $"`{BoxPointNames.Key(own.Key)}` {string.Join(' ', own.Value.Select(number => number.ToString(CultureInfo.InvariantCulture)))}"
            )
        );
}
