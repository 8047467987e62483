using Configurator.Core.Model;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

public class SiteBindingTests
{
    [Fact]
    public void Without_a_file_the_defaults_hold() => Assert.Equal(
        ("Machine catalogue", "en", DesignationStyle.Iec81346, UnitStyle.Metric), Summary(Check.Small));

    [Fact]
    public void What_the_file_says_holds() => Assert.Equal(
        ("Cups", "es,en", DesignationStyle.Flat, UnitStyle.Both),
        Summary(Check.Small.With("site: cups\ntitle: Cups\nlanguages: [es, en, es]\ndesignations: flat\nunits: both\n")));

    [Theory]
    [InlineData("designations: [|round|]", "CFG2012 `round` is not one of `flat`, `iec-81346`")]
    [InlineData("units: [|imperial|]", "CFG2012 `imperial` is not one of `both`, `metric`, `us`")]
    [InlineData("languages: [[|english|]]", "CFG2006 `english` is not a language code such as `en`")]
    [InlineData("[|colour|]: red", "CFG2004 a site has no key `colour`")]
    public void What_it_cannot_say_is_reported(string line, string message) =>
        Check.Small.With($"site: cups\ntitle: Cups\n{line}\n").Says(message);

    private static (string Title, string Languages, DesignationStyle Designations, UnitStyle Units) Summary(Check check)
    {
        var site = check.Catalogue.Site;
        return (site.Title.ToString(), string.Join(',', site.Languages), site.Designations, site.Units);
    }
}
