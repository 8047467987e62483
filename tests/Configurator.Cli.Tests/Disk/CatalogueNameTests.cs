using Configurator.Cli.Disk;
using Configurator.Core.Sources;

namespace Configurator.Cli.Tests.Disk;

/// <summary>Which names a file of the catalogue may have.</summary>
public class CatalogueNameTests
{
    private static RefusedFile OddName(string path) => new(
        path,
        "the name has characters that cannot be seen or is not UTF-8",
        "rename it with lower-case letters, digits and hyphens");

    [Theory]
    [InlineData("options/lane.yml", ".yaml", "lane.yaml")]
    [InlineData("options/lane.YAML", ".yaml", "lane.yaml")]
    [InlineData("options/lane.YML", ".yaml", "lane.yaml")]
    [InlineData("options/lane.es.Md", ".md", "lane.es.md")]
    [InlineData("machines/a/machine.Yaml", ".yaml", "machine.yaml")]
    [InlineData("site-templates/site.yml", ".yaml", "site.yaml")]
    [InlineData("site-templates/Page.CSHTML", ".cshtml", "Page.cshtml")]
    public void A_file_with_nearly_the_right_ending_is_refused_with_the_right_name(
        string path, string ending, string name)
    {
        using var folder = new TempFolder();
        folder.Write(path, "");

        CatalogueCheck.Refuses(folder, new RefusedFile(
            path, $"only files that end in `{ending}` are read", $"rename it to `{name}`"));
    }

    [Theory]
    [InlineData("options/notes.txt")]
    [InlineData("options/photo.png")]
    [InlineData("options/LICENSE")]
    [InlineData("machines/sorter-s2/page.cshtml")]
    [InlineData("machines/sorter-s2/machine.yaml.bak")]
    public void A_stray_file_among_the_definitions_is_refused_so_that_nobody_thinks_it_counts(string path)
    {
        using var folder = new TempFolder();
        folder.Write(path, "");

        CatalogueCheck.Refuses(folder, new RefusedFile(
            path, "nothing reads this file: it is neither `.yaml` nor `.md`", "move it out of the catalogue"));
    }

    [Theory]
    [InlineData("a\u001b[2J.yaml", @"a\u{1b}[2J.yaml")]
    [InlineData("a\nb.yaml", @"a\u{a}b.yaml")]
    [InlineData("a\u0085b.yaml", @"a\u{85}b.yaml")]
    [InlineData("a\u202elmay.yaml", @"a\u{202e}lmay.yaml")]
    [InlineData("a\u200bb.yaml", @"a\u{200b}b.yaml")]
    [InlineData("a\ufffdb.yaml", @"a\u{fffd}b.yaml")]
    public void A_name_with_characters_that_deceive_is_refused_and_shown_escaped(string name, string shown)
    {
        using var folder = new TempFolder();
        folder.Write($"options/{name}", "");

        CatalogueCheck.Refuses(folder, OddName($"options/{shown}"));
    }

    [Fact]
    public void A_name_that_is_not_UTF8_is_refused_and_shown_escaped()
    {
        using var folder = new TempFolder();
        Directory.CreateDirectory(folder["options"]);
        Shell.Run(folder["options"], @"touch $'caf\xe9.yaml'; mkdir $'\xff'; touch $'\xff/a.yaml'");

        CatalogueCheck.Refuses(folder, OddName(@"options/\u{fffd}"), OddName(@"options/caf\u{fffd}.yaml"));
    }

    [Fact]
    public void A_name_in_another_script_is_a_name_like_any_other()
    {
        using var folder = new TempFolder();
        folder.Write("options/caf\u00e9 \u65e5\u672c.yaml", "");

        var file = Assert.Single(CatalogueReader.Read(folder.Root).Sources.Files);
        Assert.Equal("options/caf\u00e9 \u65e5\u672c.yaml", file.Path);
    }

    [Fact]
    public void Files_and_folders_that_differ_only_in_case_are_told_since_a_checkout_elsewhere_would_lose_one()
    {
        using var folder = new TempFolder();
        folder.Write("options/Sound.yaml", "");
        folder.Write("options/lanes.txt/.keep", "");
        folder.Write("options/LANES.txt/.keep", "");
        folder.Write("options/sound.yaml", "");

        var refused = CatalogueReader.Read(folder.Root).Sources.Refused;

        Assert.Equal(
            [
                new(
                    "options/lanes.txt",
                    "its name differs from `options/LANES.txt` only in case; some disks keep only one",
                    "rename one of the two"),
                new(
                    "options/sound.yaml",
                    "its name differs from `options/Sound.yaml` only in case; some disks keep only one",
                    "rename one of the two"),
            ],
            refused.ToArray());
    }
}
