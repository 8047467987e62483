namespace Configurator.Cli.Disk;

/// <summary>Puts the finished site in the place of the old one.</summary>
internal static class SiteSwap
{
    /// <summary>
    /// In one instant where the system can exchange two names, else by two renames. A failure leaves the old site in
    /// place, unless putting it back fails as well: then the next publish does that.
    /// </summary>
    /// <returns>Where the old site lies now; null where there was none.</returns>
    public static string? Run(PublishPlace place, bool mayExchange, Action<string> step)
    {
        if (FileKinds.Of(place.Target) == FileKind.Missing)
        {
            Directory.Move(place.Staging, place.Target);
            return null;
        }

        if (mayExchange && Native.Exchange(place.Staging, place.Target))
        {
            return place.Staging;
        }

        Directory.Move(place.Target, place.Old);
        step(PublishSteps.MovedAside);
        MoveInOrBack(place);
        return place.Old;
    }

    private static void MoveInOrBack(PublishPlace place)
    {
        try
        {
            Directory.Move(place.Staging, place.Target);
        }
        catch (Exception failure) when (DiskProblem.Caused(failure))
        {
            Directory.Move(place.Old, place.Target);
            throw;
        }
    }
}
