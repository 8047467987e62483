using System.Text.Json;
using Configurator.Cli.Tests.Disk;
using Configurator.Cli.Tests.Support;
using Configurator.Core.Tests.Support;
using Json.Schema;

namespace Configurator.Cli.Tests.Commands;

/// <summary>The committed schemas, as an editor uses them on the definitions of this repository.</summary>
public sealed class SchemaFileTests
{
    private const string Option = "option.v1.schema.json";
    private const string Reject = "options/checking/reject.yaml";
    private static readonly string Small = Path.Combine(Repository.Cases, "base", "input");
    private static readonly string Schemas = Path.Combine(Repository.Root, "site-templates", "schemas");

    private static readonly Dictionary<string, JsonSchema> ByName = Directory.EnumerateFiles(Schemas).ToDictionary(
        file => Path.GetFileName(file),
        file => JsonSchema.FromText(File.ReadAllText(file), new BuildOptions { SchemaRegistry = new() }),
        StringComparer.Ordinal);

    private static readonly string[] Folders = ["machines", "options", "site-templates"];

    private static IEnumerable<string> Demonstration =>
        Folders.SelectMany(folder => Yaml(Path.Combine(Repository.Root, folder)));

    [Fact]
    public void Every_file_of_the_demonstration_names_its_schema_on_its_first_line()
    {
        Assert.NotEmpty(Demonstration);
        Assert.All(Demonstration, file =>
        {
            var lines = File.ReadAllLines(file);
            var folder = Path.GetRelativePath(Path.GetDirectoryName(file)!, Schemas).Replace('\\', '/');
            Assert.Equal($"# yaml-language-server: $schema={folder}/{SchemaOf(lines)}", lines[0]);
        });
    }

    [Fact]
    public void Every_file_of_the_demonstration_is_valid() => Assert.All(Demonstration, IsValid);

    [Fact]
    public void Every_file_of_the_small_catalogue_is_valid() =>
        Assert.All(Yaml(Small), IsValid);

    [Theory]
    [InlineData("summary: Takes a faulty tray off the line", "sumary: Takes a faulty tray off the line")]
    [InlineData("summary: Takes a faulty tray off the line", "")]
    [InlineData("wiring: inside", "wiring: insid")]
    [InlineData("price: 2400 EUR", "price: 2400")]
    [InlineData("price: 2400 EUR", "price: 2400 mm")]
    [InlineData("price: 2400 EUR", "price:")]
    [InlineData("{option: snap-lid, because:", "{option: snap-lid, becuase:")]
    public void What_an_editor_marks_the_tool_refuses_too(string right, string wrong)
    {
        using var folder = new TempFolder();
        Repository.Copy(Small, folder.Root);
        folder.Write(Reject, Changed(right, wrong));

        Assert.NotEmpty(Faults(Option, Changed(right, wrong)));
        Assert.Contains($"{Reject}(", Tool.Run("check", "--catalogue", folder.Root).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void An_editor_marks_the_place_of_a_fault() =>
        Assert.Contains(Faults(Option, Changed("wiring: inside", "wiring: insid")), place => place == "/fits/0/wiring");

    private static string Changed(string right, string wrong)
    {
        var text = File.ReadAllText(Path.Combine(Small, Reject));
        Assert.Contains(right, text, StringComparison.Ordinal);
        return text.Replace(right, wrong, StringComparison.Ordinal);
    }

    private static IEnumerable<string> Yaml(string folder) =>
        Directory.EnumerateFiles(folder, "*.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal);

    /// <summary>A definition's first key says of which kind it is.</summary>
    private static string SchemaOf(string[] lines) =>
        lines.First(line => line.Length > 0 && line[0] is not ('#' or ' ')).Split(':')[0] + ".v1.schema.json";

    private static void IsValid(string file) =>
        Assert.Empty(Faults(SchemaOf(File.ReadAllLines(file)), File.ReadAllText(file)));

    /// <summary>The places at which a schema refuses something.</summary>
    private static IEnumerable<string> Faults(string schema, string yaml)
    {
        var document = JsonSerializer.SerializeToElement(YamlAsJson.Of(yaml));
        var result = ByName[schema].Evaluate(document, new() { OutputFormat = OutputFormat.List });
        return result.IsValid
            ? []
            : [.. result.Details!.Where(part => !part.IsValid).Select(part => part.InstanceLocation.ToString())];
    }
}
