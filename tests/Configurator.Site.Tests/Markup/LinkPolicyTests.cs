using Configurator.Site.Markup;

namespace Configurator.Site.Tests.Markup;

public class LinkPolicyTests
{
    [Theory]
    [InlineData("page.html")]
    [InlineData("../a/page.html?b=c#d")]
    [InlineData("#place")]
    [InlineData("?b=c:d")]
    [InlineData("a/b:c")]
    [InlineData("./javascript:alert(1)")]
    [InlineData("javascript%3Aalert(1)")]
    [InlineData("https://example.org")]
    [InlineData("https://example.org:8443/a?b#c")]
    [InlineData("https://[2001:db8::1]/")]
    [InlineData("mailto:a@example.org?subject=x")]
    [InlineData("MAILTO:a@example.org")]
    public void A_link_may_lead_here(string target) => Assert.Null(LinkPolicy.Refusal(target, isImage: false));

    [Theory]
    [InlineData("javascript:alert(1)", "scheme `javascript`")]
    [InlineData("about:blank", "scheme `about`")]
    [InlineData("c:\\a", "it has a character that a link cannot have")]
    [InlineData("c:/a", "scheme `c`")]
    [InlineData(":a", "scheme ``")]
    [InlineData("//example.org", "it does not start at the page")]
    [InlineData("/a.html", "it does not start at the page")]
    [InlineData("https:a", "it is no web address")]
    [InlineData("https://", "it is no web address")]
    [InlineData("a\u0085b", "it has a character that a link cannot have")]
    [InlineData("", "it leads nowhere")]
    public void A_link_may_not_lead_there(string target, string reason) =>
        Assert.Equal(reason, LinkPolicy.Refusal(target, isImage: false));

    [Theory]
    [InlineData("seal.svg", null)]
    [InlineData("../img/seal.png", null)]
    [InlineData("https://example.org/seal.png", "pictures come from the catalogue")]
    [InlineData("mailto:a@example.org", "pictures come from the catalogue")]
    [InlineData("data:image/png;base64,AA", "scheme `data`")]
    public void A_picture_comes_from_the_catalogue(string source, string? reason) =>
        Assert.Equal(reason, LinkPolicy.Refusal(source, isImage: true));
}
