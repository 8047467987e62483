using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Configurator.Cli.Tests.Disk;

namespace Configurator.Cli.Tests.Hostile;

/// <summary>Hostile catalogues that cannot lie in a repository: too large, no text, no regular files.</summary>
internal static class HostileMade
{
    private const string Snap = "options/lids/snap-lid.yaml";
    private const string Notes = "options/lids/top-film.md";
    private const string Eye = "options/devices/contrast-eye.yaml";
    private const string Plan = "machines/tray-one/port-plan.yaml";
    private const string Salad = "machines/tray-one/configurations/salad.yaml";
    private const string Machine = "machines/tray-one/machine.yaml";

    public static ImmutableSortedDictionary<string, Action<TempFolder>> All { get; } = new Dictionary<string, Action<TempFolder>>(StringComparer.Ordinal)
    {
        ["deep-blocks"] = at => Add(at, Snap, Repeat(1000, i => $"{new string(' ', i)}a:\n")),
        ["deep-brackets-closed"] = at => Add(at, Snap, $"x: {Repeat(100_000, "[")}{Repeat(100_000, "]")}\n"),
        ["deep-brackets-open"] = at => Add(at, Snap, $"x: {Repeat(100_000, "[")}"),
        ["deep-dashes"] = at => Add(at, Snap, $"x:\n  {Repeat(100_000, "- ")}a\n"),
        ["deep-maps"] = at => Add(at, Snap, $"x: {Repeat(100_000, "{a: ")}"),
        ["deep-question-marks"] = at => Add(at, Snap, $"x:\n  {Repeat(100_000, "? ")}a\n"),
        ["too-large"] = at => Add(at, Snap, $"# {new string('x', 1 << 20)}\n"),
        ["nul"] = at => Add(at, Snap, "# \0\n"),
        ["nul-escaped"] = at => Change(at, Snap, "Presses", "\"\\0 Presses\" #"),
        ["surrogate-bytes"] = at => File.WriteAllBytes(at[Snap], [.. "option: snap-lid\ntitle: "u8, 0xED, 0xA0, 0x80]),
        ["surrogate-escaped"] = at => Change(at, Snap, "Presses", "\"\\uD800 Presses\" #"),
        ["utf-16"] = at => File.WriteAllText(at[Snap], File.ReadAllText(at[Snap]), Encoding.Unicode),
        ["link-to-file"] = at => Link(at, "options/lids/extra.yaml", "/etc/passwd"),
        ["link-to-folder"] = at => Link(at, "options/more", "/etc"),
        ["link-loop"] = at => Link(at, "options/lids/again", ".."),
        ["link-to-itself"] = at => Link(at, "options/lids/self.yaml", "self.yaml"),
        ["link-as-folder"] = at => Shell.Run(at.Root, "mv options elsewhere; ln -s elsewhere options"),
        ["pipe"] = at => Shell.Run(at.Root, $"rm {Snap}; mkfifo {Snap}"),
        ["pipe-as-folder"] = at => Shell.Run(at.Root, "mkfifo options/pipes"),
        ["odd-names"] = at => Shell.Run(at.Root, "touch options/lids/$'a\\nb.yaml' options/lids/$'\\xff.yaml' options/lids/SNAP-LID.yaml"),
        ["folders-without-end"] = at => Directory.CreateDirectory(at["options/" + Repeat(100, "a/")]),
        ["files-10000-empty"] = at => Files(at, 10_000, _ => ""),
        ["files-10000-unknown-names"] = at => Files(at, 10_000, i => Option(i, $"requires: [other-{i}]\n")),
        ["files-10000-good"] = at => Files(at, 10_000, i => Option(i, "formerly: []\n")),
        ["files-21000"] = at => Files(at, 21_000, _ => ""),
        ["keys-60000-good"] = at => Change(at, Eye, "light: 0,", $"light: 0, {Repeat(60_000, i => $"w{i}: {i}, ")}"),
        ["keys-60000-unknown"] = at => Add(at, Snap, Repeat(60_000, i => $"key-{i}: {i}\n")),
        ["homes-30000-unknown"] = at => Change(at, Plan, "homes:\n", $"homes:\n{Repeat(30_000, i => $"  lost/fit-{i}/1: main:1\n")}"),
        ["box-30000-unknown"] = at => Add(at, Plan, Repeat(30_000, i => $"  lost/fit-{i}/1: {{inputs: [1]}}\n")),
        ["box-60000-numbers"] = at => Change(at, Plan, "[1, 2]", $"[1, {Repeat(60_000, "2, ")}1]"),
        ["options-60000-unknown"] = at => Change(at, Salad, "[gas-flush", $"[gas-flush, {Repeat(60_000, i => $"o{i}, ")}reject"),
        ["anchors-50000"] = at => Add(at, Snap, Repeat(50_000, i => $"k{i}: &a{i} v\n")),
        ["documents-200000"] = at => Add(at, Snap, Repeat(200_000, "---\n")),
        ["comments-400000"] = at => Add(at, Snap, Repeat(400_000, "#\n")),
        ["colons-900000"] = at => Add(at, Snap, Repeat(900_000, ":")),
        ["id-of-900000-letters"] = at => Change(at, Snap, "snap-lid\n", Repeat(900_000, "a") + "\n"),
        ["number-of-900000-digits"] = at => Change(at, Snap, "700", Repeat(900_000, "9")),
        ["line-of-900000-letters"] = at => Change(at, Snap, "Presses", Repeat(900_000, "a") + " "),
        ["condition-of-60000-parts"] = at => Add(at, Snap, $"requires: [{{any: [{Repeat(60_000, "top-film, ")}]}}]\n"),
        ["conditions-nested"] = at => Change(at, Machine, "rules:\n", $"rules:\n  - {{rule: nest, because: x, need: {Nested(28)}}}\n"),
        ["choice-of-one-60000-times"] = at => Change(at, Machine, "[snap-lid,", $"[{Repeat(60_000, "snap-lid, ")}"),
        ["rules-9000-alike"] = at => Change(at, Machine, "rules:\n", $"rules:\n{Repeat(9000, Alike)}"),
        ["rules-hard-to-prove"] = HostilePigeons.Lay,
        ["edges-20000"] = at => Change(at, Machine, "  edges:\n", $"  edges:\n{Repeat(20_000, "    - {from: rail-in, to: rail-seal}\n")}"),
        ["notes-table-bomb"] = at => Add(at, Notes, $"\n|{Repeat(2000, "a|")}\n|{Repeat(2000, "-|")}\n{Repeat(2000, "|b|\n")}"),
        ["notes-deep-quotes"] = at => Add(at, Notes, $"\n{Repeat(20_000, "> ")}x\n"),
        ["notes-deep-lists"] = at => Add(at, Notes, $"\n{Repeat(20_000, "- ")}x\n"),
        ["notes-deep-brackets"] = at => Add(at, Notes, $"\n{Repeat(20_000, "[")}x\n"),
        ["notes-too-long"] = at => Add(at, Notes, $"\n{Repeat(200_000, "a ")}\n"),
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    public static void Change(TempFolder at, string path, string was, string now)
    {
        var text = File.ReadAllText(at[path]);
        Assert.Contains(was, text, StringComparison.Ordinal);
        File.WriteAllText(at[path], text.Replace(was, now, StringComparison.Ordinal));
    }

    public static string Repeat(int times, Func<int, FormattableString> part)
    {
        var text = new StringBuilder();
        for (var i = 0; i < times; i++)
        {
            text.Append(part(i).ToString(CultureInfo.InvariantCulture));
        }

        return text.ToString();
    }

    public static string Option(int number, string more) => string.Create(
        CultureInfo.InvariantCulture, $"option: o{number}\ntitle: Option {number}\nsummary: One of many\noffered-on: [tray-one]\n{more}");

    private static string Repeat(int times, string part) => new StringBuilder().Insert(0, part, times).ToString();

    private static void Add(TempFolder at, string path, string text) => File.AppendAllText(at[path], text);

    private static void Link(TempFolder at, string path, string to) => at.Link(path, to);

    private static void Files(TempFolder at, int count, Func<int, string> text)
    {
        for (var i = 0; i < count; i++)
        {
            at.Write(string.Create(CultureInfo.InvariantCulture, $"options/many/o{i}.yaml"), text(i));
        }
    }

    private static FormattableString Alike(int number) =>
        $"  - {{rule: r{number}, need: {{any: [snap-lid, top-film]}}, because: x}}\n";

    /// <summary>Each level doubles what a careless translation would make of the one below.</summary>
    private static string Nested(int levels) => levels == 0
        ? "snap-lid"
        : $"{{none: [{Repeat(30, "{all: [snap-lid, top-film]}, ")}{Nested(levels - 1)}]}}";
}
