using Configurator.Cli.Disk;

namespace Configurator.Cli.Tests.Disk;

public class RealPathTests
{
    [Fact]
    public void Links_are_followed_wherever_they_stand_in_the_path()
    {
        using var folder = new TempFolder();
        Directory.CreateDirectory(folder["real/deep"]);
        folder.Link("first", "real");
        folder.Link("real/second", folder["first/deep"]);

        Assert.Equal(folder["real/deep/new/site"], RealPath.Of(folder["first/second/new/./x/../site/"]));
    }

    [Fact]
    public void What_does_not_exist_is_kept_as_written() =>
        Assert.Equal("/no/such/place", RealPath.Of("/no/./such/folder/../place/"));

    [Fact]
    public void Links_that_run_in_a_circle_end_in_a_message()
    {
        using var folder = new TempFolder();
        folder.Link("here", "there");
        folder.Link("there", "here");

        Assert.Throws<IOException>(() => RealPath.Of(folder["here/site"]));
    }

    [Theory]
    [InlineData("/a/b", "/a/b", true)]
    [InlineData("/a/b/c", "/a/b", true)]
    [InlineData("/a/B/c", "/A/b", true)]
    [InlineData("/a", "/", true)]
    [InlineData("/a/bc", "/a/b", false)]
    [InlineData("/a", "/a/b", false)]
    public void A_path_is_within_a_folder_if_it_is_it_or_lies_below(string path, string folder, bool expected) =>
        Assert.Equal(expected, RealPath.IsWithin(path, folder));
}
