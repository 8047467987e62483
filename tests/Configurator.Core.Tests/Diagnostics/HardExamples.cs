using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Diagnostics;

/// <summary>Inputs that no page can show: bytes, sizes, links. Their pages illustrate them; this table makes
/// them.</summary>
internal static class HardExamples
{
    private const string Salad = "machines/tray-one/configurations/salad.yaml";
    private const string Notes = "options/lids/top-film.md";

    private const string Machine = "machines/tray-one/machine.yaml";

    /// <summary>More spare ports are asked for than a master has, and that is accepted.</summary>
    private static readonly BaseCatalogue WithAcceptance = BaseCatalogue.Whole
        .Replacing(Machine, "spare-ports: 1", "spare-ports: 6")
        .And(Salad, BaseCatalogue.Whole.TextOf(Salad) + """
            accepted:
              - {finding: ports.spare/main, by: controls lead, because: The next option needs no port, until: 2027-03-31}

            """);

    private static readonly Dictionary<string, BaseCatalogue> Made = new(StringComparer.Ordinal)
    {
        ["CFG1001"] = BaseCatalogue.Whole.And(Salad, [.. "title: "u8, 0xE9]),
        ["CFG1002"] = BaseCatalogue.With(Notes, new string(' ', (1024 * 1024) + 1)),
        ["CFG1003"] = BaseCatalogue.Whole.Refusing(new(Notes, "it is a symbolic link", "put a copy of the file here")),
        ["CFG1010"] = BaseCatalogue.With(Salad, $"options: {new string('[', 64)}"),
        ["CFG1011"] = BaseCatalogue.With(Salad, Repeated("- 1\n", 200_001)),
        ["CFG3015"] = WithColours(301, "choices:\n", Choice),
        ["CFG3016"] = WithColours(100, "rules:\n", Rules),
        ["CFG4903"] = WithAcceptance.On(2027, 4, 1),
        ["CFG4904"] = WithAcceptance.On(2027, 3, 15),
        ["CFG1014"] = BaseCatalogue.Whole.Replacing(Salad, "Salad tray", "Salad\u202E yart"),
    };

    public static FrozenDictionary<string, BaseCatalogue> ByCode { get; } =
        Made.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The base catalogue with so many options more, and something about them in its machine.</summary>
    private static BaseCatalogue WithColours(int count, string key, Func<ImmutableArray<string>, string> text)
    {
        ImmutableArray<string> colours =
            [.. Enumerable.Range(1, count).Select(number => FormattableString.Invariant($"colour-{number}"))];
        return colours.Aggregate(
            BaseCatalogue.Whole.Replacing(Machine, key, key + text(colours)),
            (catalogue, colour) => catalogue.And(
                $"options/colours/{colour}.yaml",
                $"option: {colour}\ntitle: Colour\nsummary: A colour\noffered-on: [tray-one]\n"));
    }

    private static string Choice(ImmutableArray<string> colours) =>
        $"  - {{choice: colour, title: Colour, take: exactly-one, of: [{string.Join(", ", colours)}], because: x}}\n";

    /// <summary>Each two of them rule each other out: none of these rules follows from the others.</summary>
    private static string Rules(ImmutableArray<string> colours) => string.Concat(colours.SelectMany((left, i) => colours
        .Skip(i + 1)
        .Select(right => $"  - {{rule: no-{left}-{right}, never: {{all: [{left}, {right}]}}, because: x}}\n")));

    private static string Repeated(string text, int times) => new StringBuilder().Insert(0, text, times).ToString();
}
