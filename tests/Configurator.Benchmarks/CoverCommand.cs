using System.Globalization;
using Configurator.Core.Logic.Covering;

namespace Configurator.Benchmarks;

/// <summary>Covers every allowed pair of values by few rows and prints them, then their number.</summary>
internal static class CoverCommand
{
    private const ulong Seed = 1;

    /// <summary>Values looked at while improving; tens of seconds.</summary>
    private const long Work = 4_000_000_000;

    /// <param name="constraints">A file that is missing or empty means that all rows are allowed.</param>
    public static int Run(string model, string constraints, TextWriter output)
    {
        var read = CoverModel.Read(
            File.ReadAllText(model),
            File.Exists(constraints) ? File.ReadAllText(constraints) : ""
        );
        var rows = new CoverModelSpace(read).IsEmpty ? [] : Cover.Find(() => new CoverModelSpace(read), Seed, Work);
        foreach (var row in rows)
        {
            output.WriteLine(string.Join(' ', row.Select(value => value.ToString(CultureInfo.InvariantCulture))));
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"size\t{rows.Count}"));
        return 0;
    }
}
