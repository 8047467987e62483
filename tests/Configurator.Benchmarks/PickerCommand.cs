using System.Globalization;
using System.Text;
using System.Text.Json;
using Configurator.Cli.Tests.Browser.Picking;
using Configurator.Core.Documents.Picking;
using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Benchmarks;

/// <summary>Writes a page that times the scripts which answer orders in the browser: on the machines of a published
/// site, and on generated rule sets of growing size.</summary>
internal static class PickerCommand
{
    private const string Assets = "site-templates/assets/picker";
    private const string Page = "tests/Configurator.Benchmarks/Picker";
    private const int Seed = 5;

    private static readonly int[] Sizes = [300, 600, 1200];
    private static readonly string[] Names = ["diagram", "solver", "rules", "reasons", "order"];

    /// <param name="site">A published site, whose machines are timed too.</param>
    /// <param name="folder">Where the page goes.</param>
    public static int Run(string site, string folder, TextWriter output)
    {
        Directory.CreateDirectory(folder);
        var scripts = new List<string>();
        foreach (var name in Names)
        {
            File.Copy(Path.Combine(Assets, name + ".js"), Path.Combine(folder, name + ".js"), overwrite: true);
            scripts.Add(name);
        }

        File.WriteAllText(Path.Combine(folder, "sets.js"), $"var sets = [\n{string.Join(",\n", Machines(site).Concat(Generated()))}\n];\n");
        scripts.Add("sets");
        var index = File.ReadAllText(Path.Combine(Page, "page.html"));
        var tags = string.Join('\n', scripts.Select(name => $"<script src=\"{name}.js\"></script>"));
        File.WriteAllText(Path.Combine(folder, "index.html"), index.Replace("SCRIPTS", tags, StringComparison.Ordinal));
        File.Copy(Path.Combine(Page, "page.js"), Path.Combine(folder, "page.js"), overwrite: true);
        File.Copy(Path.Combine(Page, "clicks.js"), Path.Combine(folder, "clicks.js"), overwrite: true);
        foreach (var page in Directory.EnumerateFiles(Path.Combine(site, "machines"), "order.html", SearchOption.AllDirectories))
        {
            WriteClicks(page, folder);
        }

        output.WriteLine($"open {Path.GetFullPath(Path.Combine(folder, "index.html"))}, and clicks-MACHINE.html beside it");
        return 0;
    }

    /// <summary>The page as published, which then clicks itself.</summary>
    private static void WriteClicks(string page, string folder)
    {
        var home = Path.GetDirectoryName(Path.GetFullPath(page))!;
        var root = new Uri(Path.GetFullPath(Path.Combine(home, "..", "..")) + "/").AbsoluteUri;
        var text = File.ReadAllText(page)
            .Replace("\"../../", $"\"{root}", StringComparison.Ordinal)
            .Replace("src=\"order-rules.js\"", $"src=\"{new Uri(Path.Combine(home, "order-rules.js")).AbsoluteUri}\"", StringComparison.Ordinal)
            .Replace("</head>", "  <script src=\"clicks.js\" defer></script>\n</head>", StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(folder, $"clicks-{Path.GetFileName(home)}.html"), text);
    }

    private static IEnumerable<string> Machines(string site) =>
        Directory
            .EnumerateFiles(Path.Combine(site, "machines"), "order-rules.js", SearchOption.AllDirectories)
            .Order(StringComparer.Ordinal)
            .Select(path =>
            {
                var text = File.ReadAllText(path);
                return Set(Path.GetFileName(Path.GetDirectoryName(path)!), text[text.IndexOf('{', StringComparison.Ordinal)..].TrimEnd('\n', ';'));
            });

    private static IEnumerable<string> Generated() =>
        Sizes.Select(size => Set(
            string.Create(CultureInfo.InvariantCulture, $"generated, {size} options"),
            DataOf(GeneratedMachines.Of(size, counted: 0, reach: 3, Seed))));

    private static string Set(string name, string data) =>
        string.Create(CultureInfo.InvariantCulture, $"{{ name: \"{name}\", bytes: {data.Length}, data: {data} }}");

    private static string DataOf(Machine machine)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.WriteStartObject();
            PickerOptions.Write(json, machine, "en");
            PickerRules.Write(json, OrderLogic.Of(machine), "en");
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray());
    }
}
