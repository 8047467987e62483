using static Configurator.Site.Tests.Inspecting.Finished;

namespace Configurator.Site.Tests.Inspecting;

public class StructureTests
{
    [Fact]
    public void A_sound_page_is_accepted() =>
        Accept("<p>x</p><h2 id=\"a\">A</h2><h3>B</h3><h2>C</h2><ul><li>x<li>y</ul><br><br />");

    [Fact]
    public void An_id_that_is_used_twice_is_reported_with_its_first_place()
    {
        var diagnostic = Check(
            "<p id=\"a\">x</p>\n[|<p|] id=\"a\">y</p>", "CFG6003 the id `a` is used twice on the page");
        Assert.Equal("_site/a/page.html(6,1)", Assert.Single(diagnostic.Notes).Span.ToString());
    }

    [Fact]
    public void Two_pages_may_use_the_same_id() =>
        Accept("<p id=\"a\">x</p>", ("b.html", Page("<p id=\"a\">x</p>", "B")));

    // WCAG 2.2, 1.3.1, technique G141.
    [Theory]
    [InlineData("[|<h1|]>Again</h1>", "the page has a second `h1`")]
    [InlineData("[|<h3|]>Deep</h3>", "`h3` follows `h1`")]
    [InlineData("<h2>A</h2><h3>B</h3>[|<h5|]>C</h5>", "`h5` follows `h3`")]
    public void Headings_go_down_one_level_at_a_time(string body, string message) => Check(body, "CFG6004 " + message);

    [Theory]
    [InlineData("<!DOCTYPE html><html lang=\"en\"><title>x</title><p>x</p></html>", "the page has no `h1`")]
    public void A_page_has_a_top_heading(string page, string message) => CheckWhole(page, "CFG6004 " + message);

    [Fact]
    public void A_page_that_starts_with_a_lower_heading_is_reported() => CheckWhole(
        "<!DOCTYPE html><html lang=\"en\"><title>x</title>[|<h2|]>a</h2><h1>b</h1></html>",
        "CFG6004 the page starts with an `h2`");

    // WCAG 2.2, 2.4.2 and 3.1.1.
    [Theory]
    [InlineData("<!DOCTYPE html><html lang=\"en\"><meta charset=\"utf-8\"><h1>x</h1></html>", "the page has no title")]
    [InlineData("<!DOCTYPE html><html lang=\"en\"><title> </title><h1>x</h1></html>", "the page has no title")]
    [InlineData("<!DOCTYPE html>[|<html|]><title>x</title><h1>x</h1></html>", "the page does not say its language")]
    [InlineData(
        "<!DOCTYPE html>[|<html|] lang=\"\"><title>x</title><h1>x</h1></html>", "the page does not say its language")]
    public void A_page_has_a_title_and_a_language(string page, string message) =>
        CheckWhole(page, "CFG6008 " + message);

    [Fact]
    public void A_title_belongs_to_one_page()
    {
        var diagnostic = Assert.Single(Inspect(("a.html", Page("", "Ports")), ("b.html", Page("", "Ports"))));
        Assert.Equal("CFG6008 the title `Ports` is taken", $"{diagnostic.Rule.Code} {diagnostic.Message}");
        Assert.Equal(
            ("_site/b.html", "_site/a.html"), (diagnostic.Span.Path, Assert.Single(diagnostic.Notes).Span.Path));
    }

    [Fact]
    public void A_hostile_title_is_text() => Assert.Empty(
        Inspect(("a.html", Page("", "&lt;/title&gt;&lt;script&gt;alert(1)&lt;/script&gt;"))));

    [Fact]
    public void A_title_that_breaks_out_of_its_element_is_seen() => Assert.Contains(
        Inspect(("a.html", Page("", "</title><script>alert(1)</script>"))), diagnostic =>
            diagnostic.Rule.Code == "CFG6007");

    // HTML Living Standard, 13.2.2, parse errors.
    [Theory]
    [InlineData("<p>x</div></p>")]
    [InlineData("<div><p>x</p>")]
    [InlineData("<b><p>x</b></p>")]
    [InlineData("<p id=\"a\" id=\"b\">x</p>")]
    [InlineData("<div/>")]
    public void Markup_that_a_browser_has_to_mend_is_reported(string body) =>
        Assert.Equal("CFG6011", Assert.Single(Inspect(("a.html", Page(body)))).Rule.Code);

    [Fact]
    public void A_page_without_a_document_type_is_reported() => CheckWhole(
        "[||]<html lang=\"en\"><title>x</title><h1>x</h1></html>", "CFG6011 the doctype tag is missing");

    [Fact]
    public void A_file_that_is_no_text_is_reported() => Assert.Equal(
        "CFG6011 the file is not UTF-8 text",
        Assert.Single(Configurator.Site.Inspecting.Inspector.Inspect(
            SiteFiles.Of([new("a.html", new byte[] { 0xFF, 0xFE, 0x00 })])).Diagnostics.Select(it =>
                $"{it.Rule.Code} {it.Message}")));
}
