using System.Text;
using Configurator.Cli.Disk;
using Configurator.Core.Sources;

namespace Configurator.Cli.Tests.Disk;

/// <summary>What is read of a catalogue, and in what order.</summary>
public class CatalogueReaderTests
{
    private static string[] Paths(CatalogueReading reading) => [.. reading.Sources.Files.Select(file => file.Path)];

    private static SourceSet Read(TempFolder folder)
    {
        var reading = CatalogueReader.Read(folder.Root);
        Assert.Null(reading.Problem);
        return reading.Sources;
    }

    [Fact]
    public void Definitions_notes_and_everything_of_the_templates_are_read_in_the_order_of_their_bytes()
    {
        using var folder = new TempFolder();
        string[] paths =
        [
            "machines/sorter-s2/about.md",
            "machines/sorter-s2/configurations/classic.yaml",
            "machines/sorter-s2/machine.yaml",
            "options/b.yaml",
            "options/lanes-2/x.yaml",
            "options/lanes.yaml",
            "options/lanes/twin-lane.es.md",
            "options/lanes/twin-lane.yaml",
            "site-templates/assets/logo.svg",
            "site-templates/page.cshtml",
            "site-templates/schemas/option.schema.json",
            "site-templates/site.yaml",
        ];
        foreach (var path in paths.Reverse())
        {
            folder.Write(path, $"this is {path}");
        }

        folder.Write("README.md", "not ours to read");
        folder.Write("src/Program.cs", "return 0;");

        var sources = Read(folder);

        Assert.Equal(paths, sources.Files.Select(file => file.Path).ToArray());
        Assert.All(
            sources.Files, file => Assert.Equal($"this is {file.Path}", Encoding.UTF8.GetString(file.Bytes.Span)));
        Assert.Empty(sources.Refused);
    }

    [Fact]
    public void Bytes_are_handed_on_as_they_lie_there()
    {
        using var folder = new TempFolder();
        byte[] bytes = [0xEF, 0xBB, 0xBF, 0x00, 0xFF, 0x0D, 0x0A];
        folder.Write("options/odd.yaml", "");
        File.WriteAllBytes(folder["options/odd.yaml"], bytes);
        folder.Write("options/void.yaml", "");

        var files = Read(folder).Files;

        Assert.Equal(bytes, files[0].Bytes.ToArray());
        Assert.True(files[1].Bytes.IsEmpty);
    }

    [Fact]
    public void Hidden_files_and_what_editors_leave_are_passed_over_in_silence()
    {
        using var folder = new TempFolder();
        folder.Write("machines/.git/config.yaml", "");
        folder.Write("machines/.hidden.yaml", "");
        folder.Write("machines/sorter.yaml~", "");
        folder.Write("machines/sorter.yaml.swp", "");
        folder.Write("site-templates/.DS_Store", "");
        folder.Link("machines/.link", "/etc");

        var sources = Read(folder);

        Assert.Empty(sources.Files);
        Assert.Empty(sources.Refused);
    }

    [Theory]
    [InlineData("machines")]
    [InlineData("options")]
    public void One_of_the_two_folders_of_definitions_is_enough(string top)
    {
        using var folder = new TempFolder();
        folder.Write($"{top}/a.yaml", "");

        Assert.Equal([$"{top}/a.yaml"], Paths(CatalogueReader.Read(folder.Root)));
    }

    [Fact]
    public void The_catalogue_may_be_reached_through_a_link_that_the_user_names()
    {
        using var folder = new TempFolder();
        folder.Write("real/options/a.yaml", "");
        folder.Link("linked", "real");

        Assert.Equal(["options/a.yaml"], Paths(CatalogueReader.Read(folder["linked"])));
        Assert.Equal(["options/a.yaml"], Paths(CatalogueReader.Read(folder["linked/"])));
    }

    [Fact]
    public void Reading_twice_gives_the_same()
    {
        using var folder = new TempFolder();
        folder.Write("options/a.yaml", "a");
        folder.Write("options/b.txt", "b");

        var (first, second) = (Read(folder), Read(folder));

        Assert.Equal(
            first.Files.Select(file => file.Path), second.Files.Select(file => file.Path), StringComparer.Ordinal);
        Assert.Equal(first.Refused.AsEnumerable(), second.Refused);
    }
}
