using Configurator.Site.Inspecting;
using static Configurator.Site.Tests.Inspecting.Finished;

namespace Configurator.Site.Tests.Inspecting;

public class PathTests
{
    [Theory]
    [InlineData("SHA256SUMS")]
    [InlineData("manifest.json")]
    [InlineData("machines/pantry-four/port-map.csv")]
    [InlineData("assets/site.3f2a9c.css")]
    [InlineData("a.webmanifest")]
    [InlineData("a.st")]
    public void Plain_paths_are_fine(string path) => Assert.Empty(Inspect((path, "")));

    // Hosts differ in case, encoding and hidden files; ids are lower-case words, so paths can be too.
    [Theory]
    [InlineData("Machines/a.csv")]
    [InlineData("über.csv")]
    [InlineData("a b.csv")]
    [InlineData("a_b.csv")]
    [InlineData(".hidden.csv")]
    [InlineData("a/.well-known/b.json")]
    [InlineData("/a.csv")]
    [InlineData("a//b.csv")]
    [InlineData("../a.csv")]
    [InlineData("a\\b.csv")]
    [InlineData("a/SHA256SUMS")]
    [InlineData("con.csv")]
    [InlineData("nul/a.csv")]
    [InlineData("a/com1")]
    public void Paths_that_do_not_work_everywhere_are_reported(string path) =>
        Assert.Equal("CFG6010", Assert.Single(Inspect((path, ""))).Rule.Code);

    [Theory]
    [InlineData("a.exe")]
    [InlineData("a.html.exe")]
    [InlineData("a.pdf")]
    [InlineData("a")]
    [InlineData("html")]
    [InlineData("a.cshtml")]
    public void Types_that_a_site_does_not_have_are_reported(string path) => Assert.Equal(
        $"CFG6010 files of this type are not published: `{path}`",
        Assert.Single(Inspect((path, "")).Select(it => $"{it.Rule.Code} {it.Message}")));

    [Theory]
    [InlineData("a/b/c.html", "d.html", "a/b/d.html")]
    [InlineData("a/b/c.html", "../d.html", "a/d.html")]
    [InlineData("a/b/c.html", "./../../d.html", "d.html")]
    [InlineData("a/b/c.html", "../../../d.html", null)]
    [InlineData("a/b/c.html", "", "a/b/c.html")]
    [InlineData("a/b/c.html", "..", "a/")]
    [InlineData("c.html", "a/./b//d.html", "a/b/d.html")]
    public void Relative_links_are_followed_from_the_file_that_has_them(string from, string link, string? target) =>
        Assert.Equal(target, SitePath.Resolve(from, link));
}
