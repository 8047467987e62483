using System.Text;
using Configurator.Cli.Disk;

namespace Configurator.Cli.Tests.Disk;

public class SitePublisherTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_publish_replaces_the_whole_old_site_and_leaves_nothing_beside_it(bool exchange)
    {
        using var bench = PublishBench.WithOldSite();

        var result = bench.Publish(SampleSites.New, exchange: exchange);

        Assert.Equal(PublishVerdict.Published, result.Verdict);
        Assert.Null(result.Problem);
        Assert.Empty(result.Messages);
        bench.ShowsOnly(SampleSites.New);
        Assert.False(File.Exists(bench.Folder["out/site/machines/sorter-s2/ports.html"]));
    }

    [Fact]
    public void Each_file_is_written_with_the_bytes_it_was_given()
    {
        using var bench = new PublishBench();
        byte[] everyByte = [.. Enumerable.Range(0, 256).Select(number => (byte)number)];
        var site = new SortedDictionary<string, ReadOnlyMemory<byte>>(StringComparer.Ordinal)
        {
            ["build-info.json"] = Encoding.UTF8.GetBytes("""{"tool":"configurator"}"""),
            ["downloads/all.bin"] = everyByte,
            ["downloads/empty.csv"] = ReadOnlyMemory<byte>.Empty,
        };

        Assert.Equal(PublishVerdict.Published, bench.Publish(site).Verdict);

        Assert.Equal(everyByte, File.ReadAllBytes(bench.Folder["out/site/downloads/all.bin"]));
        Assert.Empty(File.ReadAllBytes(bench.Folder["out/site/downloads/empty.csv"]));
    }

    [Fact]
    public void The_checksums_are_those_that_sha256sum_checks()
    {
        using var bench = PublishBench.WithOldSite();

        var checkedFiles = Shell.Run(bench.Target, "sha256sum --check --strict SHA256SUMS");

        Assert.Equal(
            """
            assets/site.css: OK
            build-info.json: OK
            index.html: OK
            machines/sorter-s2/ports.html: OK

            """,
            checkedFiles);
    }

    [Fact]
    public void The_checksums_are_the_bytes_that_sha256sum_would_write()
    {
        using var bench = PublishBench.WithOldSite();

        var own = Shell.Run(bench.Target, "find * -type f ! -name SHA256SUMS | LC_ALL=C sort | xargs sha256sum");

        Assert.Equal(own, File.ReadAllText(bench.Folder["out/site/SHA256SUMS"]));
    }

    [Fact]
    public void Publishing_the_same_site_again_changes_no_byte()
    {
        using var bench = PublishBench.WithOldSite();
        var before = bench.Folder.Tree("out/site");

        Assert.Equal(PublishVerdict.Published, bench.Publish(SampleSites.Old).Verdict);

        Assert.Equal(before, bench.Folder.Tree("out/site"));
    }

    [Fact]
    public void Folders_on_the_way_to_the_site_are_made()
    {
        using var bench = new PublishBench();

        var result = bench.Publish(SampleSites.New, to: bench.Folder["out/for/the/web/"]);

        Assert.Equal(PublishVerdict.Published, result.Verdict);
        Assert.Equal(PublishBench.TreeOf(SampleSites.New), bench.Folder.Tree("out/for/the/web"));
        Assert.Equal(["web"], bench.Folder.Names("out/for/the"));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void An_empty_folder_is_taken(bool exchange)
    {
        using var bench = new PublishBench();
        Directory.CreateDirectory(bench.Target);

        Assert.Equal(PublishVerdict.Published, bench.Publish(SampleSites.New, exchange: exchange).Verdict);

        bench.ShowsOnly(SampleSites.New);
    }

    // Law: where names can be exchanged, no reader ever finds a page missing, however often the site is published.
    [Fact]
    public void A_reader_finds_the_page_at_every_moment_of_every_publish()
    {
        using var bench = PublishBench.WithOldSite();
        using var done = new CancellationTokenSource();
        var page = bench.Folder["out/site/index.html"];
        var missed = 0;
        var looks = 0;
        var reader = new Thread(() =>
        {
            for (; !done.IsCancellationRequested; looks++)
            {
                missed += File.Exists(page) ? 0 : 1;
            }
        });

        reader.Start();
        for (var publish = 0; publish < 20; publish++)
        {
            bench.Publish(publish % 2 == 0 ? SampleSites.New : SampleSites.Old);
        }

        done.Cancel();
        reader.Join();
        Assert.True(looks > 20);
        Assert.Equal(0, missed);
    }

    [Theory]
    [InlineData(PublishSteps.Locked)]
    [InlineData(PublishSteps.Recovered)]
    [InlineData(PublishSteps.StagingMade)]
    [InlineData(PublishSteps.FileWritten)]
    [InlineData(PublishSteps.ChecksumsWritten)]
    [InlineData(PublishSteps.Verified)]
    public void A_publish_cancelled_before_the_swap_leaves_the_old_site_and_nothing_else(string step)
    {
        using var bench = PublishBench.WithOldSite();
        using var cancel = new CancellationTokenSource();

        var result = bench.Publish(SampleSites.New, here => PublishBench.CancelAt(step, here, cancel), cancel: cancel);

        Assert.Equal(PublishVerdict.Cancelled, result.Verdict);
        Assert.Null(result.Problem);
        bench.ShowsOnly(SampleSites.Old);
    }

    [Theory]
    [InlineData(PublishSteps.MovedAside)]
    [InlineData(PublishSteps.Swapped)]
    public void A_publish_cancelled_once_the_swap_has_begun_is_finished(string step)
    {
        using var bench = PublishBench.WithOldSite();
        using var cancel = new CancellationTokenSource();

        var result = bench.Publish(
            SampleSites.New, here => PublishBench.CancelAt(step, here, cancel), exchange: false, cancel: cancel);

        Assert.True(cancel.IsCancellationRequested);
        Assert.Equal(PublishVerdict.Published, result.Verdict);
        bench.ShowsOnly(SampleSites.New);
    }

    [Fact]
    public void A_publish_goes_through_its_steps_in_order()
    {
        using var bench = PublishBench.WithOldSite();
        var steps = new List<string>();

        bench.Publish(SampleSites.New, steps.Add, exchange: false);

        string[] expected = [.. PublishSteps.All.Where(step => step != PublishSteps.SitePutBack)];
        Assert.Equal(expected, steps.Distinct(StringComparer.Ordinal).ToArray());
    }
}
