using Configurator.Core.Model;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Topics;

/// <summary>Masters whose station, device or place on the trunk changes: all that hangs on them goes along.</summary>
internal static class MasterPlaces
{
    public static IEnumerable<Change> Of(ReviewContext context, MachinePair pair)
    {
        if (!pair.Before.IsWhole || !pair.After.IsWhole)
        {
            return [];
        }

        return pair
            .After.Control.Masters.Select(master => (Now: master, Was: pair.Before.Control.Find(master.Name.Value)))
            .Where(both => both.Was is not null && Say(both.Was) != Say(both.Now))
            .Select(both => new Change(
                HomeKinds.MasterMoved,
                $"`{both.Now.Name.Value}`",
                [ReviewPlace.After(both.Now.Name.Span), ReviewPlace.Before(both.Was!.Name.Span)]
            )
            {
                Machine = pair.Id,
                Before = Say(both.Was),
                After = Say(both.Now),
                Configurations =
                [
                    .. context
                        .Configurations.Where(published =>
                            published.Machine == pair.Id
                            && published.After.Report.Fitted.Masters.Any(master =>
                                master.Name.Value == both.Now.Name.Value
                            )
                        )
                        .Select(published => published.Id.Value),
                ],
            });
    }

    private static string Say(Master master) =>
        $"`{master.Device.Id.Value}` at `{master.Station.Id.Value}`{(master.IsExtension ? ", extension" : "")}";
}
