using Configurator.Cli.Disk;

using FilesByPath = System.Collections.Generic.IReadOnlyDictionary<string, System.ReadOnlyMemory<byte>>;

namespace Configurator.Cli.Tests.Disk;

/// <summary>A place to publish to, beside a catalogue that must not be touched.</summary>
internal sealed class PublishBench : IDisposable
{
    public PublishBench()
    {
        Folder.Write("catalogue/machines/sorter-s2/machine.yaml", "machine: sorter-s2\n");
        Folder.Write("catalogue/src/Program.cs", "return 0;");
        Directory.CreateDirectory(Folder["out"]);
    }

    public TempFolder Folder { get; } = new();

    public string Catalogue => Folder["catalogue"];

    public string Target => Folder["out/site"];

    public PublishPlace Place => new(Target);

    public PublishResult Publish(
        FilesByPath site,
        Action<string>? onStep = null,
        bool exchange = true,
        string? to = null,
        CancellationTokenSource? cancel = null) =>
        SitePublisher.Publish(to ?? Target, site, Catalogue, exchange, onStep, cancel?.Token ?? CancellationToken.None);

    /// <summary>A bench where the sample site is already published.</summary>
    public static PublishBench WithOldSite()
    {
        var bench = new PublishBench();
        Assert.Equal(PublishVerdict.Published, bench.Publish(SampleSites.Old).Verdict);
        return bench;
    }

    /// <summary>What the target's folder looks like with that site in it, worked out in a place of its own.</summary>
    public static string TreeOf(FilesByPath site)
    {
        using var bench = new PublishBench();
        Assert.Equal(PublishVerdict.Published, bench.Publish(site).Verdict);
        return bench.Folder.Tree("out/site");
    }

    public void Shows(FilesByPath site) => Assert.Equal(TreeOf(site), Folder.Tree("out/site"));

    /// <summary>The site is there and nothing else is: no lock, no leftovers.</summary>
    public void ShowsOnly(FilesByPath site)
    {
        Shows(site);
        Assert.Equal(["site"], Folder.Names("out"));
    }

    /// <summary>Runs until recovery is over, so that what recovery alone did can be seen.</summary>
    public PublishResult Recover()
    {
        using var cancel = new CancellationTokenSource();
        return Publish(SampleSites.New, step => CancelAt(PublishSteps.Recovered, step, cancel), cancel: cancel);
    }

    /// <summary>A publish there is refused for that reason, and changes nothing anywhere.</summary>
    public void Refuses(string target, string why)
    {
        var before = Folder.Tree(".");

        var result = Publish(SampleSites.New, to: target);

        Assert.Equal(PublishVerdict.Refused, result.Verdict);
        Assert.Equal(why, result.Problem?.Why);
        Assert.NotEmpty(result.Problem!.Fix);
        Assert.Equal(before, Folder.Tree("."));
    }

    public static void CancelAt(string wanted, string step, CancellationTokenSource cancel)
    {
        if (step == wanted)
        {
            cancel.Cancel();
        }
    }

    public void Dispose() => Folder.Dispose();
}
