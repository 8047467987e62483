namespace Configurator.Site.Tests.Rendering;

public class SiteFilesTests
{
    [Fact]
    public void Files_stand_in_the_order_of_their_characters() =>
        Assert.Equal(["B", "a", "a-b", "a.b", "a/b"], Files("a/b", "a.b", "a", "B", "a-b").Files.Keys);

    [Fact]
    public void Further_files_are_added() => Assert.Equal(["a", "b"], Files("a").With(Files("b").Files).Files.Keys);

    [Fact]
    public void The_files_before_stay_as_they_were()
    {
        var before = Files("a");
        before.With(Files("b").Files);
        Assert.Equal(["a"], before.Files.Keys);
    }

    [Fact]
    public void A_path_that_is_taken_is_our_mistake_and_throws() =>
        Assert.Throws<ArgumentException>(() => Files("a").With([new("a", new byte[] { 1 })]));

    private static SiteFiles Files(params IEnumerable<string> paths) =>
        SiteFiles.Of(paths.Select(path => KeyValuePair.Create(path, ReadOnlyMemory<byte>.Empty)));
}
