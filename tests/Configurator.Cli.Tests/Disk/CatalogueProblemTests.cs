using Configurator.Cli.Disk;

namespace Configurator.Cli.Tests.Disk;

/// <summary>When there is no catalogue to speak of, that is told instead of files.</summary>
public class CatalogueProblemTests
{
    private static void Fails(string folder, string why, string fix)
    {
        var reading = CatalogueReader.Read(folder);

        Assert.Equal(new(why, fix), reading.Problem);
        Assert.Empty(reading.Sources.Files);
        Assert.Empty(reading.Sources.Refused);
    }

    [Fact]
    public void A_folder_that_is_not_there_is_told()
    {
        using var folder = new TempFolder();

        Fails(
            folder["nowhere"],
            $"there is no folder `{folder["nowhere"]}`",
            "give the folder that holds `machines` and `options`");
    }

    [Fact]
    public void A_file_is_no_catalogue()
    {
        using var folder = new TempFolder();
        folder.Write("file", "");

        Fails(
            folder["file"],
            $"there is no folder `{folder["file"]}`",
            "give the folder that holds `machines` and `options`");
    }

    [Fact]
    public void A_folder_without_machines_and_options_is_no_catalogue()
    {
        using var folder = new TempFolder();
        folder.Write("site-templates/site.yaml", "");
        folder.Write("readme.md", "");

        Fails(
            folder.Root,
            $"`{folder.Root}` has neither a folder `machines` nor a folder `options`",
            "give the folder that holds them");
    }

    [Fact]
    public void A_folder_of_machines_in_upper_case_is_named_as_the_likely_reason()
    {
        using var folder = new TempFolder();
        folder.Write("Machines/a.yaml", "");

        Fails(
            folder.Root,
            $"`{folder.Root}` has neither a folder `machines` nor a folder `options`",
            "in `Machines`: rename it to `machines`");
    }

    [Fact]
    public void A_folder_that_may_not_be_listed_is_told()
    {
        using var folder = new TempFolder();
        folder.Write("locked/machines/a.yaml", "");
        Shell.Run(folder.Root, "chmod 111 locked");

        var reading = Nobody.Does(() => CatalogueReader.Read(folder["locked"]));

        Assert.Equal(
            new(
                $"cannot read the catalogue `{folder["locked"]}`: Access to the path '{folder["locked"]}' is denied",
                "give the account that runs this the right to that path, or choose another"),
            reading.Problem);
    }

    [Fact]
    public void Twenty_thousand_entries_are_read_and_one_more_is_too_many()
    {
        using var folder = new TempFolder();
        Directory.CreateDirectory(folder["options/many"]);
        Directory.CreateDirectory(folder["machines"]);
        Shell.Run(folder["options/many"], "seq -f 'o-%g.yaml' 1 19999 | xargs touch");

        // With the folder itself that is twenty thousand.
        Assert.Equal(19_999, CatalogueReader.Read(folder.Root).Sources.Files.Length);

        folder.Write("machines/one-more.yaml", "");
        Fails(
            folder.Root,
            $"the catalogue `{folder.Root}` has more than 20000 files and folders",
            "keep only definitions, notes and templates there");
    }

    [Fact]
    public void More_than_256_MiB_in_all_are_not_read()
    {
        using var folder = new TempFolder();
        Directory.CreateDirectory(folder["options"]);
        for (var asset = 0; asset < 64; asset++)
        {
            folder.WriteSparse($"site-templates/assets/{asset}.bin", 4 << 20);
        }

        folder.Write("options/last-straw.yaml", "x");
        Fails(
            folder.Root,
            $"the catalogue `{folder.Root}` has more than 256 MiB of files",
            "keep only definitions, notes and templates there");
    }
}
