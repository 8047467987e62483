using System.Collections.Frozen;
using System.Text;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Diagnostics;

/// <summary>Inputs that no page can show: bytes, sizes, links. Their pages illustrate them; this table makes
/// them.</summary>
internal static class HardExamples
{
    private const string Salad = "machines/tray-one/configurations/salad.yaml";
    private const string Notes = "options/lids/top-film.md";

    private static readonly Dictionary<string, BaseCatalogue> Made = new(StringComparer.Ordinal)
    {
        ["CFG1001"] = BaseCatalogue.Whole.And(Salad, [.. "title: "u8, 0xE9]),
        ["CFG1002"] = BaseCatalogue.With(Notes, new string(' ', (1024 * 1024) + 1)),
        ["CFG1003"] = BaseCatalogue.Whole.Refusing(new(Notes, "it is a symbolic link", "put a copy of the file here")),
        ["CFG1010"] = BaseCatalogue.With(Salad, $"options: {new string('[', 64)}"),
        ["CFG1011"] = BaseCatalogue.With(Salad, Repeated("- 1\n", 200_001)),
        ["CFG1014"] = BaseCatalogue.Whole.Replacing(Salad, "Salad tray", "Salad\u202E yart"),
    };

    public static FrozenDictionary<string, BaseCatalogue> ByCode { get; } =
        Made.ToFrozenDictionary(StringComparer.Ordinal);

    private static string Repeated(string text, int times) => new StringBuilder().Insert(0, text, times).ToString();
}
