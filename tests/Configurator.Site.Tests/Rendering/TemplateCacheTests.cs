using Configurator.Site.Rendering;

namespace Configurator.Site.Tests.Rendering;

public class TemplateCacheTests
{
    [Fact]
    public async Task The_same_text_is_compiled_once_for_all_renderers() =>
        Assert.Same(await PageType("<p>once</p>", ""), await PageType("<p>once</p>", ""));

    [Fact]
    public async Task Another_text_is_another_template() =>
        Assert.NotSame(await PageType("<p>one</p>", ""), await PageType("<p>two</p>", ""));

    [Fact]
    public async Task Other_imports_make_another_template() =>
        Assert.NotSame(await PageType("<p>one</p>", ""), await PageType("<p>one</p>", "@using System.Text\n"));

    // Parts are told apart by their lengths: text cannot pass from one part to the next.
    [Fact]
    public async Task Where_imports_end_and_text_begins_matters() =>
        Assert.NotSame(
            await PageType("<p>x</p>", "@using System.Text\n"), await PageType("@using System.Text\n<p>x</p>", ""));

    [Fact]
    public async Task Each_page_gets_an_instance_of_its_own()
    {
        var compiler = Compiler("<p></p>", "");
        var create = compiler.CreateFactory(await compiler.CompileAsync("Page.cshtml"));
        Assert.NotSame(create(), create());
        Assert.Equal("Page.cshtml", create().Key);
    }

    private static async Task<Type> PageType(string text, string imports) =>
        (await Compiler(text, imports).CompileAsync("Page.cshtml")).Type;

    private static TemplateCompiler Compiler(string text, string imports) =>
        new(new TemplateProject(Pages.Templates(("Page.cshtml", text), ("_ViewImports.cshtml", imports))), [], store: null);
}
