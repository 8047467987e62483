using Configurator.Core.Loading;
using Configurator.Core.Sources;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Loading;

public class LoaderTests
{
    [Fact]
    public void Mistakes_in_two_files_are_both_reported() => Check.Small
        .Changing(SmallCatalogue.Option("film"), "title: Lid film", "title: [|&t|] Lid film")
        .Changing(SmallCatalogue.Device("eye"), "current: 40 mA", "current: [|*t|]")
        .Says(
            "CFG1005 alias `t`: a reviewer must see every value where it applies",
            "CFG1005 anchor `t`: a reviewer must see every value where it applies");

    [Fact]
    public void A_device_that_cannot_be_read_is_not_missed_where_it_is_named() => Check.Small
        .At(SmallCatalogue.Device("eye"), "device: eye\ntitle: [|\"Contrast sensor|]\n")
        .Says("CFG1004 while scanning a quoted scalar, found unexpected end of stream");

    [Fact]
    public void An_option_that_cannot_be_read_is_not_missed_where_it_is_named() => Check.Small
        .Changing(SmallCatalogue.Option("cup-check"), "title: Cup check", "title: [|!!str|] Cup check")
        .Changing(SmallCatalogue.Option("cup-check"), "device: eye", "device: [|*eye|]")
        .Says(
            "CFG1006 tag `!!str`: values get their type from their key",
            "CFG1005 alias `eye`: a reviewer must see every value where it applies");

    [Fact]
    public void A_machine_that_cannot_be_read_is_not_missed_where_it_is_named() => Check.Small
        .Machine("choices:", "[|\t|]choices:")
        .Says("CFG1004 while scanning a mapping, found invalid tab as indentation");

    [Fact]
    public void A_port_plan_that_cannot_be_read_leaves_the_homes_unjudged() => Check.Small
        .At(SmallCatalogue.PortPlan, "port-plan: cup-one\nhomes: {[||]\n")
        .Says("CFG1004 while parsing a node, did not find expected node content");

    [Fact]
    public void A_recipe_that_cannot_be_read_is_not_missed_by_its_configuration() => Check.Small
        .Changing(SmallCatalogue.Water, "cup-eye: {", "cup-eye: [|&all|] {")
        .Says("CFG1005 anchor `all`: a reviewer must see every value where it applies");

    [Fact]
    public void A_file_that_the_walk_refused_is_reported_by_its_name()
    {
        var said = Loader.Load(SourceSet.Of([], [new("options/link.yaml", "the file is a link", "put the file itself there")])).Diagnostics;
        CheckWords.Same(["CFG1003 the file is a link\nto fix: put the file itself there"], [SourceSpan.FileStart("options/link.yaml")], [], said);
    }

    [Fact]
    public void Diagnostics_of_many_files_come_in_the_order_of_their_paths()
    {
        var files = Enumerable.Range(0, 50).Select(i => (FormattableString.Invariant($"options/small/o{i:00}.yaml"), "option: *a\n")).Reverse();
        var said = CheckLoading.Load([.. files]).Diagnostics;
        Assert.Equal(50, said.Length);
        Assert.Equal(said.Select(diagnostic => diagnostic.Span).Order(), said.Select(diagnostic => diagnostic.Span));
    }

    [Fact]
    public void Notes_and_templates_are_text_and_every_other_file_is_kept_as_it_is()
    {
        var set = CheckLoading.Load(("options/small/film.md", "## Sales\n"), ("site-templates/page.cshtml", "<p>"), ("site-templates/a.svg", "\0\u202E")).Value;
        Assert.Equal("options/small/film.md", Assert.Single(set.Notes).Path);
        Assert.Equal("<p>", Assert.Single(set.Templates).Text);
        Assert.Equal("site-templates/a.svg", Assert.Single(set.Assets).Path);
    }

    [Fact]
    public void A_hidden_character_in_notes_is_reported()
    {
        var said = Assert.Single(CheckLoading.Load(("options/small/film.md", "## Sales\na\u202Eb\n")).Diagnostics);
        Assert.Equal("CFG1014 @ options/small/film.md(2,2)", $"{said.Rule.Code} @ {said.Span}");
    }
}
