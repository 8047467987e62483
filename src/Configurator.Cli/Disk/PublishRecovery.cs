using System.Collections.Immutable;

namespace Configurator.Cli.Disk;

/// <summary>
/// Puts right what a killed publish left. If the site is missing, the old one goes back if it is whole, else the new
/// one is put in place if that is; whatever is left beside the site then goes.
/// </summary>
internal static class PublishRecovery
{
    /// <returns>What was done, for the user.</returns>
    /// <exception cref="IOException">Something not of ours bears one of our names, or the disk failed.</exception>
    public static ImmutableArray<string> Run(PublishPlace place, Action<string> step)
    {
        RefuseStrangers(place);
        ImmutableArray<string> messages = [.. PutBack(place)];
        if (messages.Length > 0)
        {
            step(PublishSteps.SitePutBack);
        }

        messages = [.. messages, .. Remove(place.Staging), .. Remove(place.Old)];
        step(PublishSteps.Recovered);
        return messages;
    }

    private static void RefuseStrangers(PublishPlace place)
    {
        foreach (var path in new[] { place.Staging, place.Old })
        {
            if (FileKinds.Of(path) is not (FileKind.Missing or FileKind.Folder))
            {
                throw new IOException($"`{path}` is in the way: it is not a folder");
            }
        }
    }

    private static IEnumerable<string> PutBack(PublishPlace place)
    {
        if (FileKinds.Of(place.Target) != FileKind.Missing)
        {
            yield break;
        }

        if (SiteFolder.IsWhole(place.Old))
        {
            Directory.Move(place.Old, place.Target);
            yield return $"an earlier publish was interrupted: put the old site back in `{place.Target}`";
        }
        else if (SiteFolder.IsWhole(place.Staging))
        {
            Directory.Move(place.Staging, place.Target);
            yield return $"an earlier publish was interrupted: put the site it had finished in `{place.Target}`";
        }
    }

    /// <summary>Deleting a folder removes the links in it, not what they lead to.</summary>
    private static IEnumerable<string> Remove(string folder)
    {
        if (Directory.Exists(folder))
        {
            Directory.Delete(folder, recursive: true);
            yield return $"an earlier publish was interrupted: removed `{folder}`";
        }
    }
}
