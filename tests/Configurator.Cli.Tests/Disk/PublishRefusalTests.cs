using System.Text;
using Configurator.Cli.Disk;

namespace Configurator.Cli.Tests.Disk;

/// <summary>What a publish will not do, and that it then does nothing at all.</summary>
public class PublishRefusalTests
{
    private static string Unfit(string target, string why) => $"the site cannot be put in `{target}`: it {why}";

    [Fact]
    public void A_file_is_not_replaced()
    {
        using var bench = new PublishBench();
        bench.Folder.Write("out/site", "a letter");

        bench.Refuses(bench.Target, Unfit(bench.Target, "is not a folder"));
    }

    [Fact]
    public void A_pipe_is_not_replaced()
    {
        using var bench = new PublishBench();
        Shell.Run(bench.Folder["out"], "mkfifo pipe");

        var result = bench.Publish(SampleSites.New, to: bench.Folder["out/pipe"]);

        Assert.Equal(Unfit(bench.Folder["out/pipe"], "is not a folder"), result.Problem?.Why);
    }

    [Theory]
    [InlineData("elsewhere")]
    [InlineData("nowhere")]
    public void A_link_is_neither_replaced_nor_followed(string aim)
    {
        using var bench = new PublishBench();
        Directory.CreateDirectory(bench.Folder["out/elsewhere"]);
        bench.Folder.Link("out/site", aim);

        bench.Refuses(bench.Target, Unfit(bench.Target, "is a link, and the site replaces what lies there"));
        bench.Refuses(bench.Target + "/", Unfit(bench.Target, "is a link, and the site replaces what lies there"));
    }

    [Fact]
    public void A_folder_that_publish_did_not_write_is_not_replaced_and_five_of_its_names_are_shown()
    {
        using var bench = new PublishBench();
        foreach (var name in new[] { "g.txt", "a.txt", "f.txt", "b.txt", "e.txt", "c.txt", "d\u001b.txt" })
        {
            bench.Folder.Write($"out/site/{name}", "mine");
        }

        bench.Refuses(
            bench.Target,
            $"`{bench.Target}` is not a site that publish wrote, and it is not empty: "
            + "it holds `a.txt`, `b.txt`, `c.txt`, `d\\u{1b}.txt`, `e.txt` and 2 more");
    }

    [Fact]
    public void Somebody_elses_files_are_not_replaced_though_they_have_checksums()
    {
        using var bench = new PublishBench();
        bench.Folder.Write("out/site/image.iso", "an image");
        Shell.Run(bench.Target, "sha256sum image.iso > SHA256SUMS");

        bench.Refuses(
            bench.Target,
            $"`{bench.Target}` is not a site that publish wrote, and it is not empty: "
            + "it holds `SHA256SUMS`, `image.iso`");
    }

    [Theory]
    [InlineData("""{"tool": "another", "version": "0.1.0"}""")]
    [InlineData("""{"version": "0.1.0", "tool": "configurator"}""")]
    [InlineData("tool: configurator")]
    [InlineData("")]
    public void A_folder_whose_build_info_names_no_tool_or_another_is_not_replaced(string buildInfo)
    {
        using var bench = new PublishBench();
        bench.Folder.Write("out/site/build-info.json", buildInfo);
        Shell.Run(bench.Target, "sha256sum build-info.json > SHA256SUMS");

        bench.Refuses(
            bench.Target,
            $"`{bench.Target}` is not a site that publish wrote, and it is not empty: "
            + "it holds `SHA256SUMS`, `build-info.json`");
    }

    [Fact]
    public void A_site_with_a_file_that_was_added_by_hand_is_not_replaced()
    {
        using var bench = PublishBench.WithOldSite();
        bench.Folder.Write("out/site/assets/logo.png", "mine");
        bench.Folder.Write("out/site/.hidden", "mine too");

        bench.Refuses(
            bench.Target, $"`{bench.Target}` holds what no publish put there: `.hidden`, `assets/logo.png`");
    }

    [Fact]
    public void A_site_where_a_link_has_taken_the_place_of_a_page_is_not_replaced()
    {
        using var bench = PublishBench.WithOldSite();
        File.Delete(bench.Folder["out/site/index.html"]);
        bench.Folder.Link("out/site/index.html", "../../catalogue/src/Program.cs");
        bench.Folder.Link("out/site/more", "/etc");

        bench.Refuses(bench.Target, $"`{bench.Target}` holds what no publish put there: `index.html`, `more`");
    }

    [Fact]
    public void A_page_changed_by_hand_is_written_over_since_the_definitions_are_what_counts()
    {
        using var bench = PublishBench.WithOldSite();
        bench.Folder.Write("out/site/index.html", "<p>by hand");

        Assert.Equal(PublishVerdict.Published, bench.Publish(SampleSites.New).Verdict);

        bench.ShowsOnly(SampleSites.New);
    }

    [Theory]
    [InlineData("../escape.html")]
    [InlineData("a/../../escape.html")]
    [InlineData("/etc/escape.html")]
    [InlineData("a//b.html")]
    [InlineData("a/./b.html")]
    [InlineData("a/.hidden")]
    [InlineData(".hidden")]
    [InlineData("-option.html")]
    [InlineData("folder/")]
    [InlineData("Upper.html")]
    [InlineData("SHA256SUMS")]
    [InlineData("two words.html")]
    [InlineData("caf\u00e9.html")]
    [InlineData("a\\b.html")]
    [InlineData("line\n.html")]
    [InlineData("end.html\n")]
    [InlineData("")]
    public void A_file_whose_name_does_not_work_everywhere_is_not_published(string path)
    {
        using var bench = PublishBench.WithOldSite();

        var result = bench.Publish(SampleSites.Of((path, "<p>")));

        Assert.Equal(PublishVerdict.Refused, result.Verdict);
        Assert.Equal($"`{CatalogueNames.Escape(path)}` is not a name that can be published", result.Problem?.Why);
        bench.ShowsOnly(SampleSites.Old);
    }

    [Fact]
    public void A_site_without_our_mark_is_our_own_mistake_since_it_could_never_be_replaced()
    {
        using var bench = new PublishBench();
        var site = new SortedDictionary<string, ReadOnlyMemory<byte>>(StringComparer.Ordinal)
        {
            ["index.html"] = Encoding.UTF8.GetBytes("<p>"),
        };

        Assert.Throws<ArgumentException>(() => bench.Publish(site));
        site["build-info.json"] = Encoding.UTF8.GetBytes("{}");
        Assert.Throws<ArgumentException>(() => bench.Publish(site));
    }
}
