using Configurator.Cli.Tests.Disk;

namespace Configurator.Cli.Tests.Hostile;

/// <summary>Twelve pigeons for eleven holes: few rules that no search of this kind can refute in reasonable time.</summary>
/// <remarks>Source: Haken, The intractability of resolution, 1985.</remarks>
internal static class HostilePigeons
{
    private const string Machine = "machines/tray-one/machine.yaml";
    private const int Holes = 11;

    public static void Lay(TempFolder at)
    {
        for (var option = 0; option < (Holes + 1) * Holes; option++)
        {
            at.Write(FormattableString.Invariant($"options/many/o{option}.yaml"), HostileMade.Option(option, ""));
        }

        var pigeons = HostileMade.Repeat(Holes + 1, pigeon => Choice("pigeon", pigeon, "one-or-more", Holes, hole => (pigeon * Holes) + hole));
        var holes = HostileMade.Repeat(Holes, hole => Choice("hole", hole, "at-most-one", Holes + 1, pigeon => (pigeon * Holes) + hole));
        HostileMade.Change(at, Machine, "choices:\n", $"choices:\n{pigeons}{holes}");
    }

    private static FormattableString Choice(string name, int number, string take, int count, Func<int, int> option)
    {
        var members = string.Join(", ", Enumerable.Range(0, count).Select(i => FormattableString.Invariant($"o{option(i)}")));
        return $"  - {{choice: {name}-{number}, title: x, take: {take}, of: [{members}], because: x}}\n";
    }
}
