using System.Text;
using Configurator.Site.Inspecting;

namespace Configurator.Site.Tests.Inspecting;

// Source: HTML Living Standard, index of attributes: those whose value is a URL.
public class ReferencesTests
{
    [Theory]
    [InlineData("<a href=x>", "Link x")]
    [InlineData("<map><area href=x alt=\"\"></map>", "Link x")]
    [InlineData("<link rel=stylesheet href=x>", "Request x")]
    [InlineData("<link rel=canonical href=x>", "Link x")]
    [InlineData("<link rel=preload as=image imagesrcset='x 1x, y 2x'>", "Picture x, Picture y")]
    [InlineData("<script src=x></script>", "Request x")]
    [InlineData("<img src=x>", "Picture x")]
    [InlineData("<img srcset='x, y 2x'>", "Picture x, Picture y")]
    [InlineData("<picture><source srcset=x></picture>", "Picture x")]
    [InlineData("<video src=x poster=y></video>", "Request x, Request y")]
    [InlineData("<track src=x>", "Request x")]
    [InlineData("<object data=x></object>", "Request x")]
    [InlineData("<form action=x></form>", "Request x")]
    [InlineData("<a ping=x></a>", "Request x")]
    [InlineData("<svg><use xlink:href=x /></svg>", "Request x")]
    [InlineData("<svg><image href=x /></svg>", "Picture x")]
    [InlineData("<meta http-equiv=refresh content='0;url=x'>", "Request x")]
    [InlineData("<meta http-equiv=refresh content='30'>", "")]
    [InlineData("<meta name=description content='url=x'>", "")]
    [InlineData("<p data=x data-href=y title=z>", "")]
    [InlineData("<p>href=x</p>", "")]
    public void Everything_that_names_another_file_is_gathered(string body, string expected)
    {
        var page = HtmlPage.Read("a.html", Encoding.UTF8.GetBytes("<!DOCTYPE html>" + body))!;
        Assert.Equal(expected, string.Join(", ", References.In(page).Select(it => $"{it.Use} {it.Written}")));
    }
}
