using System.Text.RegularExpressions;

namespace Configurator.Site.Tests.Markup;

public partial class HeadingTests
{
    [Theory]
    [InlineData(1, "# A\n## B\n# C\n", "h2 h3 h2")]
    [InlineData(2, "# A\n## B\n# C\n", "h3 h4 h3")]
    [InlineData(2, "## A\n### B\n", "h3 h4")]
    [InlineData(3, "A\n===\n\nB\n---\n", "h4 h5")]
    public void Headings_stand_below_the_heading_around_them(int belowLevel, string markdown, string levels) =>
        Assert.Equal(levels, Levels(markdown, belowLevel));

    // WCAG 2.2, technique G141: levels are not skipped on the way down.
    [Theory]
    [InlineData("# A\n### B\n###### C\n", "h3 h4 h5")]
    [InlineData("#### A\n## B\n### C\n", "h3 h3 h4")]
    [InlineData("# A\n### B\n## C\n### D\n", "h3 h4 h4 h5")]
    public void No_heading_skips_a_level(string markdown, string levels) => Assert.Equal(levels, Levels(markdown, 2));

    [Fact]
    public void Headings_stop_at_the_sixth_level() =>
        Assert.Equal("h6 h6 h6", Levels("# A\n## B\n### C\n", 5));

    // Ids would clash between notes on one page; a page gives its own.
    [Fact]
    public void Headings_get_no_ids() => Assert.Equal("<h3>Rinse #1</h3>\n", Note.Html("# Rinse \\#1\n"));

    private static string Levels(string markdown, int belowLevel) =>
        string.Join(
            ' ', Heading().Matches(Note.Html(markdown, belowLevel)).Select(match => match.Groups["level"].Value));

    [GeneratedRegex("<(?<level>h[1-6])>", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Heading();
}
