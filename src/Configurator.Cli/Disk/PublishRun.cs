namespace Configurator.Cli.Disk;

/// <summary>One publish at work on a place that has been judged fit.</summary>
internal sealed class PublishRun(
    PublishPlace place,
    IReadOnlyDictionary<string, ReadOnlyMemory<byte>> files,
    bool mayExchange,
    Action<string> step,
    CancellationToken cancel
)
{
    /// <summary>What was put right so far; kept here so that it is told however the run ends.</summary>
    public List<string> Messages { get; } = [];

    public PublishResult Locked()
    {
        Directory.CreateDirectory(place.Parent);
        var (held, problem) = PublishLock.Take(place.Lock);
        using (held)
        {
            return problem is null ? Publish(held!.TakenOverFrom) : new(PublishVerdict.Failed, problem, []);
        }
    }

    private PublishResult Publish(string? takenOverFrom)
    {
        if (takenOverFrom is not null)
        {
            Messages.Add($"took over the lock of {takenOverFrom}, which ended before it was done");
        }

        step(PublishSteps.Locked);
        Messages.AddRange(PublishRecovery.Run(place, step));
        if (PublishTarget.JudgeContent(place) is { } problem)
        {
            return new(PublishVerdict.Refused, problem, [.. Messages]);
        }

        if (StageAndSwap() is { } old)
        {
            Remove(old, "the old site");
        }

        step(PublishSteps.OldRemoved);
        return new(PublishVerdict.Published, null, [.. Messages]);
    }

    /// <returns>Where the old site lies now; null where there was none.</returns>
    private string? StageAndSwap()
    {
        try
        {
            var sums = Staging.Write(place.Staging, files, step, cancel);
            Staging.Verify(place.Staging, sums, cancel);
            step(PublishSteps.Verified);
            cancel.ThrowIfCancellationRequested();
            var old = SiteSwap.Run(place, mayExchange, step);
            step(PublishSteps.Swapped);
            return old;
        }
        catch (Exception failure) when (DiskProblem.Caused(failure) || failure is OperationCanceledException)
        {
            Remove(place.Staging, "the unfinished site");
            throw;
        }
    }

    /// <summary>What stays is told, not thrown: the outcome is decided, and the next publish removes it.</summary>
    private void Remove(string folder, string what)
    {
        try
        {
            if (Directory.Exists(folder))
            {
                Directory.Delete(folder, recursive: true);
            }
        }
        catch (Exception failure) when (DiskProblem.Caused(failure))
        {
            Messages.Add($"{what} in `{folder}` could not be removed: {failure.Message.TrimEnd('.')}");
        }
    }
}
