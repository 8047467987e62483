using System.Globalization;
using Configurator.Site.Rendering;

namespace Configurator.Site.Tests.Rendering;

public class EncodingTests
{
    [Fact]
    public void A_value_is_written_as_text_never_as_markup() => Assert.Equal(
        "<p>5 &lt; 6 &amp; &lt;script&gt;</p>\n",
        Pages.Html(
            Pages.Crate with { Title = "5 < 6 & <script>" }, ("Page.cshtml", "@model Crate\n<p>@Model.Title</p>\n")));

    // Source: HTML Living Standard, 13.1.2.3: a quoted attribute ends at its quote.
    [Fact]
    public void A_value_cannot_leave_its_attribute() => Assert.Equal(
        "<p title=\"&quot; onclick=&quot;alert(1) &#39;\"></p>\n",
        Pages.Html(
            Pages.Crate with { Title = "\" onclick=\"alert(1) '" },
            ("Page.cshtml", "@model Crate\n<p title=\"@Model.Title\"></p>\n")));

    [Theory]
    [InlineData("Tür für 日本")]
    [InlineData("=A1+B2-X3")]
    [InlineData("½ m², −5 °C, 10 µm")]
    public void Other_letters_and_signs_stay_as_they_are(string text) => Assert.Equal(
        text, Pages.Html(Pages.Crate with { Title = text }, ("Page.cshtml", "@model Crate\n@Model.Title")));

    [Fact]
    public void Text_that_needs_no_encoding_is_not_copied()
    {
        var text = new string('a', 10);
        Assert.Same(text, HtmlText.Encode(text));
    }

    [Fact]
    public void Numbers_look_the_same_under_every_culture()
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = new CultureInfo("") { NumberFormat = { NumberDecimalSeparator = "," } };
        try
        {
            var html = Pages.Html(Pages.Crate with { Grams = 3.5m }, ("Page.cshtml", "@model Crate\n@Model.Grams"));
            Assert.Equal("3.5", html);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData("@Model.Notes")]
    [InlineData("@Raw(Model.Notes!)")]
    public void A_sanitised_fragment_is_written_as_it_is(string written) => Assert.Equal(
        "<em>wash</em>",
        Pages.Html(
            Pages.Crate with { Notes = new SafeHtml("<em>wash</em>") }, ("Page.cshtml", "@model Crate\n" + written)));

    [Fact]
    public void A_missing_fragment_or_text_writes_nothing() => Assert.Equal(
        "[]", Pages.Html(Pages.Crate, ("Page.cshtml", "@model Crate\n[@Model.Notes@Model.Remark]")));

    [Fact]
    public void A_string_cannot_be_passed_off_as_sanitised() => Pages.Check(
        "CFG5001 `SitePage<Crate>.Raw(string)` is obsolete: "
            + "`text is always encoded; a sanitised fragment is a SafeHtml` (CS0619)",
        ("Page.cshtml", "@model Crate\n<p>@[|Raw(Model.Title)|]</p>\n"));

    [Fact]
    public void Encoding_cannot_be_switched_off() => Assert.All(
        Pages.Renderer(("Page.cshtml", "@model Crate\n@{ DisableEncoding = true; }\n")).CheckAll(),
        diagnostic => Assert.Equal("CFG5001", diagnostic.Rule.Code));

    [Fact]
    public void Markup_of_another_type_is_refused_where_it_is_written() => Pages.Check(
        "CFG5003 `Page.cshtml` failed: text is always encoded; a sanitised fragment is a SafeHtml",
        ("Page.cshtml", "@model Crate\n<p>\n  [|@(new Microsoft.AspNetCore.Html.HtmlString(Model.Title))|]\n</p>\n"));

    [Fact]
    public void A_template_cannot_make_a_sanitised_fragment() => Pages.Check(
        "CFG5001 `SafeHtml` does not contain a constructor that takes 1 arguments (CS1729)",
        ("Page.cshtml", "@model Crate\n@(new [|SafeHtml|](Model.Title))\n"));
}
