using CsCheck;

namespace Configurator.Site.Tests.Inspecting;

public class GraphTests
{
    private static readonly string[] Names = ["a.html", "b.html", "c/d.html", "c/e.html"];

    /// <summary>For each page whether it is there, and to which pages and places it links.</summary>
    private static Gen<(bool There, (int Page, int Place)[] Links)[]> Sites { get; } =
        Gen.Select(Gen.Bool, Gen.Select(Gen.Int[0, Names.Length - 1], Gen.Int[0, 3]).Array[0, 4]).Array[Names.Length];

    // Second algorithm: the pages are numbers here; nothing is written, parsed or resolved.
    [Fact]
    public void A_site_has_as_many_broken_links_as_its_plan() => Sites.Sample(plan =>
    {
        var written = plan.Select(
            (page, i) => (page.There, File: (Names[i], Body(i, page.Links)))).Where(page => page.There);
        var found = Finished.Inspect(written.Select(page => page.File)).Select(it => it.Rule.Code).ToArray();

        var links = plan.Where(page => page.There).SelectMany(page => page.Links).ToArray();
        Assert.Equal(links.Count(link => !plan[link.Page].There), found.Count(code => code == "CFG6001"));
        Assert.Equal(
            links.Count(link => plan[link.Page].There && link.Place > 1), found.Count(code => code == "CFG6002"));
        Assert.DoesNotContain(found, code => code is not ("CFG6001" or "CFG6002"));
    });

    /// <summary>Each page has the places 0 and 1.</summary>
    private static string Body(int page, (int Page, int Place)[] links) => Finished.Page(
        "<p id=\"place-0\">x</p><p id=\"place-1\">y</p>" + string.Concat(
            links.Select(link => Link(page, link))), Names[page]);

    private static string Link(int from, (int Page, int Place) to) =>
        $"<a href=\"{Up(from)}{Names[to.Page]}#place-{to.Place}\">x</a>";

    private static string Up(int from) => Names[from].Contains('/', StringComparison.Ordinal) ? "../" : "";
}
