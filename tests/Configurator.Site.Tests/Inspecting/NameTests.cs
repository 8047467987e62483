using static Configurator.Site.Tests.Inspecting.Finished;

namespace Configurator.Site.Tests.Inspecting;

// Source: WCAG 2.2, 1.1.1, 1.3.1 and 4.1.2.
public class NameTests
{
    [Theory]
    [InlineData("[|<img|] src=\"data:image/png;base64,A\">", "`img` has no `alt`")]
    [InlineData("[|<input|] type=\"image\" src=\"data:image/png;base64,A\">", "`input` has no `alt`")]
    [InlineData("[|<svg|] role=\"img\" viewBox=\"0 0 1 1\"></svg>", "`svg` with the role `img` has no name")]
    [InlineData("[|<input|] type=\"text\">", "`input` has no label")]
    [InlineData("[|<input|]>", "`input` has no label")]
    [InlineData("[|<input|] type=\"CHECKBOX\" placeholder=\"x\">", "`input` has no label")]
    [InlineData("[|<select|]><option>x</option></select>", "`select` has no label")]
    [InlineData("[|<textarea|]></textarea>", "`textarea` has no label")]
    [InlineData("[|<progress|]></progress>", "`progress` has no label")]
    [InlineData("[|<button|]> </button>", "`button` has no words")]
    [InlineData("[|<iframe|] src=\"page.html\"></iframe>", "`iframe` has no `title`")]
    public void Pictures_and_controls_without_a_name_are_reported(string body, string message) =>
        Check(body, "CFG6009 " + message);

    [Theory]
    [InlineData("<img alt=\"\" src=\"data:image/png;base64,A\">")]
    [InlineData("<label>Speed <input></label>")]
    [InlineData("<label for=\"s\">Speed</label><input id=\"s\">")]
    [InlineData("<h2 id=\"s\">Speed</h2><input aria-labelledby=\"s\">")]
    [InlineData("<select aria-label=\"Speed\"><option>x</option></select>")]
    [InlineData("<input type=\"hidden\"><input type=\"submit\" value=\"x\">")]
    [InlineData("<button>Sort</button>")]
    [InlineData("<button><img alt=\"Sort\" src=\"data:image/png;base64,A\"></button>")]
    [InlineData("<button aria-label=\"Sort\"></button>")]
    [InlineData("<svg role=\"img\" viewBox=\"0 0 1 1\"><title>Port</title></svg>")]
    [InlineData("<svg role=\"img\" aria-label=\"Port\" viewBox=\"0 0 1 1\"></svg>")]
    [InlineData("<svg aria-hidden=\"true\" viewBox=\"0 0 1 1\"></svg>")]
    public void Named_ones_are_fine(string body) => Accept(body);

    [Fact]
    public void A_label_for_a_control_that_is_not_there_is_reported() =>
        Check("[|<label|] for=\"gone\">x</label>", "CFG6002 `for` names the id `gone`, which is not on the page");

    [Fact]
    public void A_drawing_is_reported_at_its_own_place() => Check(
        "<p>x</p>\n<p>y</p>\n<div>\n  [|<svg|] role=\"img\" viewBox=\"0 0 1 1\"></svg></div>",
        "CFG6009 `svg` with the role `img` has no name");
}
