using Configurator.Core.Sources;
using Configurator.Site.Rendering;

namespace Configurator.Site.Tests.Rendering;

public class TemplateSetTests
{
    [Theory]
    [InlineData("site-templates/shared/_Table.cshtml", "shared/_Table.cshtml")]
    [InlineData("Machine.cshtml", "Machine.cshtml")]
    public void A_template_is_known_by_its_path_below_the_templates_folder(string path, string key) =>
        Assert.Equal([key], TemplateSet.Of([new SourceText(path, "")]).Templates.Keys);

    [Fact]
    public void A_template_reports_under_its_path_in_the_catalogue() =>
        Assert.Equal(
            "site-templates/A.cshtml", TemplateSet.Of([new SourceText("A.cshtml", "")]).Templates["A.cshtml"].Path);

    [Fact]
    public void The_catalogues_templates_lie_over_the_defaults()
    {
        var defaults = TemplateSet.Of([new SourceText("A.cshtml", "default"), new SourceText("B.cshtml", "default")]);
        var both = TemplateSet.Of([new SourceText("site-templates/A.cshtml", "own")]).Over(defaults);
        Assert.Equal(["own", "default"], both.Templates.Values.Select(template => template.Text));
    }

    [Theory]
    [InlineData("site-templates/../A.cshtml")]
    [InlineData("/A.cshtml")]
    [InlineData("site-templates/a//B.cshtml")]
    [InlineData("site-templates/./B.cshtml")]
    [InlineData("site-templates\\B.cshtml")]
    [InlineData("site-templates/site.yaml")]
    public void A_path_that_is_no_template_below_the_folder_is_our_mistake_and_throws(string path) =>
        Assert.Throws<ArgumentException>(() => TemplateSet.Of([new SourceText(path, "")]));

    [Fact]
    public void The_imports_of_a_template_are_those_of_each_folder_around_it_outermost_first() => Assert.Equal(
        ["_ViewImports.cshtml", "a/_ViewImports.cshtml", "a/b/_ViewImports.cshtml"],
        TemplateKey.ImportsOf("a/b/C.cshtml"));

    // What the tool carries is what lies in `site-templates` of this repository.
    [Fact]
    public void Every_template_of_the_tool_compiles() =>
        Assert.Empty(new PageRenderer(DefaultTemplates.Load()).CheckAll().Select(it => $"{it.Span}: {it.Message}"));

    [Fact]
    public void Default_templates_and_assets_have_plain_paths()
    {
        var names = DefaultTemplates.Load().Templates.Keys.Concat(DefaultTemplates.Assets().Keys);
        Assert.All(names, name => Assert.DoesNotContain('\\', name));
    }
}
