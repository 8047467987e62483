using Configurator.Core.Sources;
using Configurator.Site.Inspecting;

namespace Configurator.Site.Tests.Inspecting;

// Source: CSS Values 4, 4.5 (url); CSS Syntax 3, 4.3.4 and 4.3.7 (strings and escapes).
public class CssReferencesTests
{
    [Theory]
    [InlineData("a { background: url(p.png) }", "p.png")]
    [InlineData("a { background: url( \"p.png\" ) }", "p.png")]
    [InlineData("a { background: url('p.png') no-repeat, URL(q.png) }", "p.png q.png")]
    [InlineData("@import \"b.css\";", "b.css")]
    [InlineData("@import url(b.css) print;", "b.css")]
    [InlineData("@font-face { src: local(x), url(f.svg#a) format('svg') }", "f.svg#a")]
    [InlineData("a { background: -webkit-image-set('p.png' 1x) }", "p.png")]
    [InlineData("a { background: \\000075 rl(p.png) }", "p.png")]
    [InlineData("/* url(a.png) */ a { } /* @import 'b.css'; */", "")]
    [InlineData("a::after { content: 'see url' } .curl { color: red }", "")]
    public void Every_name_of_another_file_is_found(string css, string expected) => Assert.Equal(
        expected, string.Join(' ', CssReferences.In(new SourceText("_site/a.css", css)).Select(it => it.Written)));

    [Fact]
    public void Each_has_its_place_and_comments_do_not_shift_it()
    {
        var found = CssReferences.In(
            new SourceText("_site/a.css", "/* a\n b */ a {\n  background: url(p.png);\n}\n")).Single();
        Assert.Equal(new SourceSpan("_site/a.css", 3, 15, "url(p.png".Length), found.Span);
    }

    [Theory]
    [InlineData("@import 'b.css';", ReferenceUse.Request)]
    [InlineData("a { background: url(p.png) }", ReferenceUse.Picture)]
    public void A_sheet_is_fetched_and_anything_else_may_be_a_picture(string css, object use) =>
        Assert.Equal(use, CssReferences.In(new SourceText("a.css", css)).Single().Use);
}
