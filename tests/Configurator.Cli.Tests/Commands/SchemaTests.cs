using Configurator.Cli.Tests.Disk;
using Configurator.Cli.Tests.Support;

namespace Configurator.Cli.Tests.Commands;

public sealed class SchemaTests
{
    private static readonly string[] Names =
    [
        .. new[] { "as-built", "configuration", "device", "machine", "monitoring", "option", "port-plan", "recipe", "review", "site" }
            .Select(kind => $"{kind}.v1.schema.json"),
    ];

    [Fact]
    public void The_committed_schemas_are_those_that_are_written()
    {
        using var folder = new TempFolder();

        var ran = Tool.Run("schema", "--out", folder["schemas"]);

        Assert.Equal(ExitCodes.Fine, ran.ExitCode);
        Hold(Names, folder, "schemas");
        Repository.Copy(Path.Combine(Repository.Root, "site-templates", "schemas"), folder["committed"]);
        Assert.Equal(folder.Tree("schemas"), folder.Tree("committed"));
    }

    [Fact]
    public void Check_passes_the_committed_schemas()
    {
        var ran = Tool.Run("schema", "--check");

        Assert.Equal(ExitCodes.Fine, ran.ExitCode);
        Assert.Equal("10 schemas in site-templates/schemas are what this version writes\n", ran.Output);
        Assert.Empty(ran.Errors);
    }

    [Fact]
    public void Check_names_what_differs_or_is_missing_and_writes_nothing()
    {
        using var folder = Written();
        folder.Write("schemas/option.v1.schema.json", "{}\n");
        File.Delete(folder["schemas/site.v1.schema.json"]);
        var before = folder.Tree("schemas");

        var ran = Tool.Run("schema", "--check", "--out", folder["schemas"]);

        Assert.Equal(ExitCodes.Findings, ran.ExitCode);
        Assert.Equal(
            $"""
            {folder["schemas/option.v1.schema.json"]} is not what this version writes
            {folder["schemas/site.v1.schema.json"]} is not what this version writes
              to fix: run the same command without `--check`

            """, ran.Output);
        Assert.Equal(before, folder.Tree("schemas"));
    }

    [Fact]
    public void Only_what_differs_is_written_and_said()
    {
        using var folder = Written();
        var untouched = File.GetLastWriteTimeUtc(folder["schemas/machine.v1.schema.json"]);
        var right = File.ReadAllText(folder["schemas/option.v1.schema.json"]);
        folder.Write("schemas/option.v1.schema.json", right.Replace("\n", "\r\n", StringComparison.Ordinal));
        folder.Write("schemas/notes.txt", "ours");

        var ran = Tool.Run("schema", "--out", folder["schemas"] + "/");

        Assert.Equal(
            $"""
            wrote {folder["schemas/option.v1.schema.json"]}
            10 schemas in {folder["schemas"]} are what this version writes

            """, ran.Output);
        Assert.Equal(right, File.ReadAllText(folder["schemas/option.v1.schema.json"]));
        Assert.Equal(untouched, File.GetLastWriteTimeUtc(folder["schemas/machine.v1.schema.json"]));
        Hold(Names.Append("notes.txt").Order(StringComparer.Ordinal), folder, "schemas");
    }

    [Fact]
    public void They_go_into_the_catalogue_where_nothing_else_is_said()
    {
        using var folder = new TempFolder();

        var ran = Tool.Run("schema", "--catalogue", folder.Root);

        Assert.Equal(ExitCodes.Fine, ran.ExitCode);
        Hold(Names, folder, "site-templates/schemas");
    }

    [Fact]
    public void A_folder_that_is_mistyped_does_not_become_a_catalogue()
    {
        using var folder = new TempFolder();

        Refused("there is no folder", Tool.Run("schema", "--catalogue", folder["no-such"]));

        Assert.Empty(folder.Names("."));
    }

    [Fact]
    public void A_folder_without_a_name_is_a_wrong_call() =>
        Assert.Equal(ExitCodes.Usage, Tool.Run("schema", "--out", "").ExitCode);

    [Fact]
    public void No_link_is_followed_and_nothing_else_is_overwritten()
    {
        using var folder = new TempFolder();
        folder.Write("own/option.v1.schema.json", "ours");
        folder.Link("linked", folder["own"]);
        folder.Link("a/site-templates", folder["own"]);
        folder.Link("b/option.v1.schema.json", folder["own/option.v1.schema.json"]);
        folder.Write("c/site.v1.schema.json/mine", "ours");
        folder.Write("file", "ours");
        var before = folder.Tree(".");

        Refused("linked` is not a folder", Tool.Run("schema", "--out", folder["linked"]));
        Refused("linked` is not a folder", Tool.Run("schema", "--out", folder["linked"] + "/"));
        Refused("site-templates` is not a folder", Tool.Run("schema", "--catalogue", folder["a"]));
        Refused("option.v1.schema.json` is not a file", Tool.Run("schema", "--out", folder["b"]));
        Refused("site.v1.schema.json` is not a file", Tool.Run("schema", "--out", folder["c"]));
        Refused("file` is not a folder", Tool.Run("schema", "--out", folder["file"]));

        Assert.Equal(before, folder.Tree("."));
    }

    [Fact]
    public void A_site_does_not_carry_them()
    {
        using var folder = new TempFolder();
        Repository.Copy(Path.Combine(Repository.Cases, "base", "input"), folder["catalogue"]);
        Tool.Run("schema", "--catalogue", folder["catalogue"]);

        Tool.Run("publish", "--catalogue", folder["catalogue"], "--to", folder["site"]);

        Assert.True(File.Exists(folder["site/index.html"]));
        Assert.Empty(Directory.EnumerateFiles(folder["site"], "option.v1.schema.json", SearchOption.AllDirectories));
    }

    /// <summary>Exactly these lie there.</summary>
    private static void Hold(IEnumerable<string> names, TempFolder folder, string path) =>
        Assert.Equal(names, folder.Names(path), StringComparer.Ordinal);

    private static TempFolder Written()
    {
        var folder = new TempFolder();
        Assert.Equal(ExitCodes.Fine, Tool.Run("schema", "--out", folder["schemas"]).ExitCode);
        return folder;
    }

    private static void Refused(string why, Ran ran)
    {
        Assert.Equal(ExitCodes.Environment, ran.ExitCode);
        Assert.Contains(why, ran.Errors, StringComparison.Ordinal);
        Assert.Contains("to fix:", ran.Errors, StringComparison.Ordinal);
    }
}
