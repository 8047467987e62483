using Configurator.Cli.Disk;

namespace Configurator.Cli.Tests.Disk;

/// <summary>What the next publish makes of what an interrupted one left.</summary>
public class PublishRecoveryTests
{
    /// <summary>A bench without a site, where such lie under the names that a publish uses while it runs.</summary>
    private static PublishBench Interrupted(bool hasOld, bool hasNew)
    {
        var bench = new PublishBench();
        if (hasOld)
        {
            bench.Publish(SampleSites.Old);
            Directory.Move(bench.Target, bench.Place.Old);
        }

        if (hasNew)
        {
            bench.Publish(SampleSites.New, to: bench.Folder["finished"]);
            Directory.Move(bench.Folder["finished"], bench.Place.Staging);
        }

        return bench;
    }

    private static string Told(string what) => $"an earlier publish was interrupted: {what}";

    [Fact]
    public void With_the_site_missing_and_both_whole_the_old_one_is_put_back()
    {
        using var bench = Interrupted(hasOld: true, hasNew: true);

        var result = bench.Recover();

        Assert.Equal(
            [Told($"put the old site back in `{bench.Target}`"), Told($"removed `{bench.Place.Staging}`")],
            result.Messages);
        bench.ShowsOnly(SampleSites.Old);
    }

    [Theory]
    [InlineData("echo changed > index.html")]
    [InlineData("rm index.html")]
    [InlineData("rm SHA256SUMS")]
    [InlineData("touch more.html")]
    [InlineData("rm index.html; ln -s /etc/hostname index.html")]
    [InlineData("rm index.html; mkfifo index.html")]
    [InlineData("echo nonsense >> SHA256SUMS")]
    public void With_the_site_missing_and_the_old_one_damaged_the_finished_one_is_put_in_place(string damage)
    {
        using var bench = Interrupted(hasOld: true, hasNew: true);
        Shell.Run(bench.Place.Old, damage);

        var result = bench.Recover();

        Assert.Equal(
            [Told($"put the site it had finished in `{bench.Target}`"), Told($"removed `{bench.Place.Old}`")],
            result.Messages);
        bench.ShowsOnly(SampleSites.New);
    }

    [Fact]
    public void With_the_site_missing_a_finished_first_one_is_put_in_place()
    {
        using var bench = Interrupted(hasOld: false, hasNew: true);

        Assert.Equal([Told($"put the site it had finished in `{bench.Target}`")], bench.Recover().Messages);

        bench.ShowsOnly(SampleSites.New);
    }

    [Fact]
    public void With_nothing_whole_to_put_back_the_leftovers_go()
    {
        using var bench = Interrupted(hasOld: true, hasNew: true);
        Shell.Run(bench.Place.Old, "rm index.html");
        Shell.Run(bench.Place.Staging, "rm SHA256SUMS");

        Assert.Equal(
            [Told($"removed `{bench.Place.Staging}`"), Told($"removed `{bench.Place.Old}`")],
            bench.Recover().Messages);

        Assert.Empty(bench.Folder.Names("out"));
    }

    [Fact]
    public void With_the_site_there_it_stays_whatever_lies_beside_it()
    {
        using var bench = Interrupted(hasOld: true, hasNew: true);
        Shell.Run(bench.Folder["out"], $"cp -r '{bench.Place.Old}' site");

        Assert.Equal(
            [Told($"removed `{bench.Place.Staging}`"), Told($"removed `{bench.Place.Old}`")],
            bench.Recover().Messages);

        bench.ShowsOnly(SampleSites.Old);
    }

    [Fact]
    public void Links_in_what_is_removed_are_not_followed()
    {
        using var bench = PublishBench.WithOldSite();
        bench.Folder.Link("out/site.new-while-publishing/assets", bench.Catalogue);
        bench.Folder.Link("out/site.new-while-publishing/machine.yaml", bench.Folder["catalogue/src/Program.cs"]);
        bench.Folder.Link("out/site.old-while-publishing/deep/er", "../../../catalogue/machines");
        var before = bench.Folder.Tree("catalogue");

        Assert.Equal(PublishVerdict.Published, bench.Publish(SampleSites.New).Verdict);

        Assert.Equal(before, bench.Folder.Tree("catalogue"));
        bench.ShowsOnly(SampleSites.New);
    }

    [Fact]
    public void What_bears_other_names_is_none_of_our_business()
    {
        using var bench = PublishBench.WithOldSite();
        bench.Folder.Write("out/site.old/index.html", "a copy I made");
        bench.Folder.Write("out/site.staging", "a note");

        Assert.Equal(PublishVerdict.Published, bench.Publish(SampleSites.New).Verdict);

        Assert.Equal(["site", "site.old", "site.staging"], bench.Folder.Names("out"));
        Assert.Equal("a copy I made", File.ReadAllText(bench.Folder["out/site.old/index.html"]));
    }
}
