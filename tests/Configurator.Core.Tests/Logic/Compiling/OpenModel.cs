using System.Globalization;
using System.Numerics;
using Configurator.Benchmarks;
using Configurator.Core.Logic.Formulas;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Logic.Compiling;

/// <summary>A formula of <c>tests/Data/option-models</c> with what is published about it.</summary>
/// <param name="Core">Number of variables true in every solution.</param>
/// <param name="Dead">Number of variables true in none.</param>
internal sealed record OpenModel(
    string File,
    int Variables,
    int Clauses,
    BigInteger Count,
    int Core,
    int Dead,
    string Sha256
)
{
    public static string Folder { get; } = System.IO.Path.Combine(Repository.Folder, "tests", "Data", "option-models");

    public string Path => System.IO.Path.Combine(Folder, File);

    public Formula Formula => Dimacs.Read(Path);

    public static OpenModel Of(string file)
    {
        var lines = System.IO.File.ReadAllLines(System.IO.Path.Combine(Folder, "counts.csv"));
        var heads = lines[0].Split(',');
        var row = lines.Select(line => line.Split(',')).Single(cells => cells[0] == file);
        string Cell(string head) => row[Array.IndexOf(heads, head)];
        int Number(string head) => int.Parse(Cell(head), CultureInfo.InvariantCulture);
        return new(
            file,
            Number("variables"),
            Number("clauses"),
            BigInteger.Parse(Cell("count"), CultureInfo.InvariantCulture),
            Number("core"),
            Number("dead"),
            Cell("sha256")
        );
    }
}
