namespace Configurator.Cli.Disk;

/// <summary>Writes a finished site to disk so that readers only ever see a whole one.</summary>
internal static class SitePublisher
{
    /// <summary>
    /// Builds the site beside the target, verifies it and swaps it in. Whatever goes wrong, and whenever the process is
    /// killed, the site that was there stays as it was until the new one is whole; the next publish tidies up.
    /// </summary>
    /// <param name="files">Path with forward slashes, and bytes; among them the <see cref="SiteMarker"/>.</param>
    /// <param name="catalogue">The catalogue's folder, whose parts are never written over.</param>
    /// <param name="cancel">Heeded until the swap begins.</param>
    /// <exception cref="ArgumentException">The marker is missing: such a site could never be replaced.</exception>
    public static PublishResult Publish(
        string target,
        IReadOnlyDictionary<string, ReadOnlyMemory<byte>> files,
        string catalogue,
        CancellationToken cancel = default
    ) => Publish(target, files, catalogue, mayExchange: true, onStep: null, cancel);

    /// <param name="mayExchange">False takes the way of systems that cannot exchange two names.</param>
    /// <param name="onStep">Called at each of the <see cref="PublishSteps"/>.</param>
    internal static PublishResult Publish(
        string target,
        IReadOnlyDictionary<string, ReadOnlyMemory<byte>> files,
        string catalogue,
        bool mayExchange,
        Action<string>? onStep,
        CancellationToken cancel
    )
    {
        if (!files.TryGetValue(SiteMarker.FileName, out var buildInfo) || !SiteMarker.IsOurs(buildInfo.Span))
        {
            throw new ArgumentException($"the site lacks a {SiteMarker.FileName} that names this tool", nameof(files));
        }

        if (target.Length == 0)
        {
            return new(PublishVerdict.Refused, new("no folder is named for the site", "name a new or empty one"), []);
        }

        var place = PublishPlace.Of(target);
        var run = new PublishRun(place, files, mayExchange, onStep ?? (_ => { }), cancel);
        try
        {
            var problem = SiteNames.Judge(files.Keys) ?? PublishTarget.JudgePlace(place, catalogue);
            return problem is null ? run.Locked() : new(PublishVerdict.Refused, problem, []);
        }
        catch (OperationCanceledException)
        {
            return new(PublishVerdict.Cancelled, null, [.. run.Messages]);
        }
        catch (Exception failure) when (DiskProblem.Caused(failure))
        {
            var problem = DiskProblem.From($"cannot publish to `{place.Target}`", failure);
            return new(PublishVerdict.Failed, problem, [.. run.Messages]);
        }
    }
}
