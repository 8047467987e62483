using Configurator.Cli.Disk;

namespace Configurator.Cli.Tests.Disk;

/// <summary>The disk or the system will not: the old site stays, nothing is left, the message has the path.</summary>
public class PublishFailureTests
{
    private static void Fails(PublishResult result, string why, string fix)
    {
        Assert.Equal(PublishVerdict.Failed, result.Verdict);
        Assert.Equal(why, result.Problem?.Why);
        Assert.Equal(fix, result.Problem?.Fix);
    }

    // The limit is in blocks of 1 KiB; with none allowed not even the lock can be signed. Ignoring the signal, as
    // services do, turns the kill that comes with the limit into a failed write.
    [Theory]
    [InlineData(0, "site.lock")]
    [InlineData(1, "site.new-while-publishing/pages/all.html")]
    public void A_file_larger_than_the_system_allows_leaves_the_old_site(int blocks, string path)
    {
        using var bench = PublishBench.WithOldSite();

        var (verdict, output) = ChildPublish.Limited(bench, $"trap '' XFSZ; ulimit -f {blocks};");

        Assert.Equal(PublishVerdict.Failed, verdict);
        Assert.Contains(
            $"cannot publish to `{bench.Target}`: the system does not allow `{bench.Folder[$"out/{path}"]}`",
            output,
            StringComparison.Ordinal);
        bench.ShowsOnly(SampleSites.Old);
    }

    [Fact]
    public void A_name_longer_than_the_disk_allows_leaves_the_old_site()
    {
        using var bench = PublishBench.WithOldSite();
        var tooLong = new string('a', 300);

        var result = bench.Publish(SampleSites.Of((tooLong, "<p>")));

        Assert.Equal(PublishVerdict.Failed, result.Verdict);
        Assert.StartsWith($"cannot publish to `{bench.Target}`: ", result.Problem?.Why, StringComparison.Ordinal);
        Assert.Contains(tooLong, result.Problem?.Why, StringComparison.Ordinal);
        bench.ShowsOnly(SampleSites.Old);
    }

    // Source: /dev/full, which answers every write as a full disk does.
    [Fact]
    public void A_full_disk_is_met_with_the_advice_to_free_space()
    {
        var failure = Assert.ThrowsAny<IOException>(() => File.WriteAllText("/dev/full", "one byte too many"));

        var problem = DiskProblem.From("cannot publish to `site`", failure);

        Assert.StartsWith("cannot publish to `site`: No space left on device", problem.Why, StringComparison.Ordinal);
        Assert.Equal("free some space on that disk, or choose another", problem.Fix);
    }

    [Fact]
    public void A_folder_that_may_not_be_written_to_is_told_with_its_path()
    {
        using var bench = PublishBench.WithOldSite();
        Shell.Run(bench.Folder.Root, "chmod 555 out");

        var result = Nobody.Does(() => bench.Publish(SampleSites.New));

        Fails(
            result,
            $"cannot publish to `{bench.Target}`: Access to the path '{bench.Place.Lock}' is denied",
            "give the account that runs this the right to that path, or choose another");
        bench.ShowsOnly(SampleSites.Old);
    }

    [Fact]
    public void A_target_below_a_file_is_told_with_its_path()
    {
        using var bench = new PublishBench();
        bench.Folder.Write("out/letter", "a letter");

        var result = bench.Publish(SampleSites.New, to: bench.Folder["out/letter/site"]);

        Assert.Equal(PublishVerdict.Failed, result.Verdict);
        Assert.StartsWith(
            $"cannot publish to `{bench.Folder["out/letter/site"]}`: ", result.Problem?.Why, StringComparison.Ordinal);
        Assert.Equal(["letter"], bench.Folder.Names("out"));
    }

    [Fact]
    public void A_target_on_a_disk_that_takes_no_folders_is_told_with_its_path()
    {
        using var bench = new PublishBench();

        var result = bench.Publish(SampleSites.New, to: "/proc/nothing/site");

        Assert.Equal(PublishVerdict.Failed, result.Verdict);
        Assert.StartsWith("cannot publish to `/proc/nothing/site`: ", result.Problem?.Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(PublishSteps.FileWritten, "assets/site.css", "p{colour:red}")]
    [InlineData(PublishSteps.ChecksumsWritten, "index.html", "<p>NEW")]
    [InlineData(PublishSteps.ChecksumsWritten, "SHA256SUMS", "")]
    public void A_file_that_does_not_read_back_as_written_leaves_the_old_site(string step, string path, string text)
    {
        using var bench = PublishBench.WithOldSite();
        var spoilt = $"out/site.new-while-publishing/{path}";

        var result = bench.Publish(
            SampleSites.New, here => Spoil(here == step, () => bench.Folder.Write(spoilt, text)));

        Fails(
            result,
            $"cannot publish to `{bench.Target}`: "
            + $"`{bench.Folder[spoilt]}` reads back differently from what was written",
            "put right what the message says and run the command again");
        bench.ShowsOnly(SampleSites.Old);
    }

    [Fact]
    public void A_file_that_is_gone_when_it_is_read_back_leaves_the_old_site()
    {
        using var bench = PublishBench.WithOldSite();
        var lost = bench.Folder["out/site.new-while-publishing/index.html"];

        var result = bench.Publish(
            SampleSites.New, here => Spoil(here == PublishSteps.ChecksumsWritten, () => File.Delete(lost)));

        Assert.Equal(PublishVerdict.Failed, result.Verdict);
        Assert.Contains(lost, result.Problem?.Why, StringComparison.Ordinal);
        bench.ShowsOnly(SampleSites.Old);
    }

    [Fact]
    public void A_second_rename_that_fails_puts_the_old_site_back()
    {
        using var bench = PublishBench.WithOldSite();
        var staging = bench.Place.Staging;

        var result = bench.Publish(
            SampleSites.New,
            here => Spoil(here == PublishSteps.MovedAside, () => Directory.Delete(staging, recursive: true)),
            exchange: false);

        Assert.Equal(PublishVerdict.Failed, result.Verdict);
        bench.ShowsOnly(SampleSites.Old);
    }

    [Fact]
    public void An_old_site_that_cannot_be_removed_is_told_of_but_the_new_one_is_published()
    {
        using var bench = PublishBench.WithOldSite();
        Shell.Run(bench.Folder.Root, "chmod 777 out && chmod 555 out/site/assets");

        var result = Nobody.Does(() => bench.Publish(SampleSites.New));

        Assert.Equal(PublishVerdict.Published, result.Verdict);
        var message = Assert.Single(result.Messages);
        Assert.StartsWith(
            $"the old site in `{bench.Place.Staging}` could not be removed: ", message, StringComparison.Ordinal);
        bench.Shows(SampleSites.New);

        Shell.Run(bench.Folder.Root, $"chmod 755 '{bench.Place.Staging}/assets'");
        Assert.Equal(PublishVerdict.Published, bench.Publish(SampleSites.New).Verdict);
        bench.ShowsOnly(SampleSites.New);
    }

    [Theory]
    [InlineData("site.new-while-publishing")]
    [InlineData("site.old-while-publishing")]
    public void A_file_that_bears_a_name_we_need_is_left_alone(string name)
    {
        using var bench = PublishBench.WithOldSite();
        bench.Folder.Write($"out/{name}", "mine");

        var result = bench.Publish(SampleSites.New);

        Fails(
            result,
            $"cannot publish to `{bench.Target}`: `{bench.Folder[$"out/{name}"]}` is in the way: it is not a folder",
            "put right what the message says and run the command again");
        bench.Shows(SampleSites.Old);
        Assert.Equal("mine", File.ReadAllText(bench.Folder[$"out/{name}"]));
    }

    private static void Spoil(bool isDue, Action act)
    {
        if (isDue)
        {
            act();
        }
    }
}
