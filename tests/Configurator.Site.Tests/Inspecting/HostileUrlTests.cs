using static Configurator.Site.Tests.Inspecting.Finished;

namespace Configurator.Site.Tests.Inspecting;

/// <summary>Addresses that are hardly addresses: each is a finding, none an exception.</summary>
public class HostileUrlTests
{
    [Theory]
    [InlineData("%")]
    [InlineData("%E0%A4%A")]
    [InlineData("%00")]
    [InlineData("%2e%2e/%2e%2e/%2e%2e/etc/passwd")]
    [InlineData("..%2f..%2fetc/passwd")]
    [InlineData("http://[")]
    [InlineData("https")]
    [InlineData("a b c")]
    [InlineData("\\..\\..\\etc")]
    [InlineData("#%")]
    [InlineData("?")]
    [InlineData("日本.html")]
    [InlineData(":")]
    [InlineData("////")]
    public void They_are_reported(string href)
    {
        var found = Inspect(("a/page.html", Page($"<a href=\"{href}\">x</a>")));
        Assert.All(found, it => Assert.StartsWith("CFG60", it.Rule.Code, StringComparison.Ordinal));
        Assert.NotEmpty(found);
    }
}
