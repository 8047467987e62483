using Configurator.Site.Inspecting;
using Configurator.Site.Tests.Rendering;
using CsCheck;

namespace Configurator.Site.Tests.Inspecting;

public class SiteUrlTests
{
    [Theory]
    [InlineData("page.html", "", "page.html", null)]
    [InlineData("../a/page.html#row", "", "../a/page.html", "row")]
    [InlineData("#row", "", "", "row")]
    [InlineData("#", "", "", "")]
    [InlineData("page.html?x=1#row", "", "page.html", "row")]
    [InlineData("page.html#a?b", "", "page.html", "a?b")]
    [InlineData("a%20b.html#%C3%BC", "", "a b.html", "ü")]
    [InlineData(" page.html\n", "", "page.html", null)]
    [InlineData("a/b:c.html", "", "a/b:c.html", null)]
    [InlineData("?x=a:b", "", "", null)]
    [InlineData("HTTPS://example.org", "https", "HTTPS://example.org", null)]
    [InlineData("java\tscript:x", "javascript", "javascript:x", null)]
    [InlineData("//example.org", "//", "//example.org", null)]
    [InlineData("/\\example.org", "//", "/\\example.org", null)]
    public void A_link_is_taken_apart_as_a_browser_does(string written, string scheme, string path, string? fragment) =>
        Assert.Equal(new SiteUrl(scheme, path, fragment), SiteUrl.Parse(written));

    [Theory]
    [InlineData("row", true)]
    [InlineData("", false)]
    [InlineData("c=1;model=pantry-four", false)]
    public void A_fragment_names_a_place_unless_it_is_empty_or_state(string fragment, bool names) =>
        Assert.Equal(names, SiteUrl.Parse("page.html#" + fragment).NamesPlace);

    // Second algorithm: the runtime's own resolution of a link against the address of its page.
    [Fact]
    public void Any_relative_link_leads_where_the_runtime_says() => Gen.Select(Files, Links).Sample((from, link) =>
    {
        var expected = new Uri(new Uri("https://example.org/deep/" + from), link).AbsolutePath;
        var found = SitePath.Resolve(from, link);
        Assert.Equal(
            expected.StartsWith("/deep/", StringComparison.Ordinal) ? expected["/deep/".Length..] : null, Whole(found));
    });

    // Law: what a browser takes for a place outside is never taken for one inside.
    [Fact]
    public void No_outside_address_passes_for_an_inside_one() => Outside.Sample(url =>
        Assert.False(SiteUrl.Parse(url).IsWithin, url));

    /// <summary>The runtime writes the root as an empty path, we as a folder without a name.</summary>
    private static string? Whole(string? path) => path == "/" ? "" : path;

    private static Gen<string> Files { get; } =
        Pieces.OneOf("a", "b", "c.html").Array[1, 3].Select(steps => string.Join('/', steps));

    private static Gen<string> Links { get; } =
        Pieces.OneOf("a", "b", "..", ".", "x.html").Array[1, 4].Select(steps => string.Join('/', steps));

    private static Gen<string> Outside { get; } = Gen.Select(
        Pieces.OneOf("", " ", "\t", "\n", "\u0001", " \u001f"),
        Pieces.OneOf(
            "javascript:", "JavaScript:", "java\nscript:", "data:", "https:", "//", "\\\\", "/\\", "/\t/", "x-y.z+1:"),
        Pieces.OneOf("", "alert(1)", "//example.org/a?b#c", "example.org", "/a.html"),
        (before, scheme, rest) => before + scheme + rest);
}
