using Configurator.Cli.Disk;

namespace Configurator.Cli.Tests.Disk;

/// <summary>Where a site is never put, whatever lies there.</summary>
public class PublishPlaceTests
{
    private static string Unfit(string target, string why) => $"the site cannot be put in `{target}`: it {why}";

    [Theory]
    [InlineData("catalogue/machines", "lies in the catalogue's `machines`")]
    [InlineData("catalogue/machines/sorter-s2/site", "lies in the catalogue's `machines`")]
    [InlineData("catalogue/options/site", "lies in the catalogue's `options`")]
    [InlineData("catalogue/Options/site", "lies in the catalogue's `options`")]
    [InlineData("catalogue/site-templates/site", "lies in the catalogue's `site-templates`")]
    [InlineData("catalogue/src", "lies in the catalogue's `src`")]
    [InlineData("catalogue/tests/site", "lies in the catalogue's `tests`")]
    [InlineData("catalogue/.git/site", "lies in the catalogue's `.git`")]
    [InlineData("catalogue/.github", "lies in the catalogue's `.github`")]
    [InlineData("catalogue", "holds the catalogue")]
    [InlineData("out/../catalogue/", "holds the catalogue")]
    [InlineData(".", "holds the catalogue")]
    public void The_catalogue_is_never_written_into_nor_over(string target, string why)
    {
        using var bench = new PublishBench();
        var place = PublishPlace.Of(bench.Folder[target]).Target;

        bench.Refuses(bench.Folder[target], Unfit(place, why));
    }

    [Fact]
    public void A_path_through_a_link_into_the_catalogue_is_seen_through()
    {
        using var bench = new PublishBench();
        bench.Folder.Link("out/back", "../shortcut");
        bench.Folder.Link("shortcut", bench.Catalogue);

        var target = bench.Folder["out/back/machines/site"];
        bench.Refuses(target, Unfit(target, "lies in the catalogue's `machines`"));
    }

    [Fact]
    public void A_folder_of_the_catalogue_that_is_a_link_is_guarded_where_it_leads()
    {
        using var bench = new PublishBench();
        Directory.CreateDirectory(bench.Folder["shared-options"]);
        bench.Folder.Link("catalogue/options", "../shared-options");

        var target = bench.Folder["shared-options/site"];
        bench.Refuses(target, Unfit(target, "lies in the catalogue's `options`"));
    }

    [Fact]
    public void Another_folder_of_the_catalogue_is_a_fit_place()
    {
        using var bench = new PublishBench();

        var result = bench.Publish(SampleSites.New, to: bench.Folder["catalogue/machines-site"]);

        Assert.Equal(PublishVerdict.Published, result.Verdict);
    }

    [Fact]
    public void The_home_folder_and_what_holds_it_are_never_written_over()
    {
        using var bench = new PublishBench();
        var home = Environment.GetFolderPath(
            Environment.SpecialFolder.UserProfile, Environment.SpecialFolderOption.DoNotVerify);

        bench.Refuses(home, Unfit(home, "holds the home folder"));
    }

    [Fact]
    public void The_root_of_the_disk_is_never_written_over()
    {
        using var bench = new PublishBench();

        bench.Refuses("/", Unfit("/", "holds the catalogue"));
    }

    [Fact]
    public void A_target_must_be_named()
    {
        using var bench = new PublishBench();

        bench.Refuses("", "no folder is named for the site");
    }
}
