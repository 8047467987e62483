using System.Collections.Immutable;
using System.Globalization;
using System.IO.Compression;
using Configurator.Core.Logic.Formulas;

namespace Configurator.Benchmarks;

/// <summary>Reads the open DIMACS CNF format, plain or compressed with gzip.</summary>
internal static class Dimacs
{
    /// <exception cref="FormatException">The text is not DIMACS CNF.</exception>
    public static Formula Read(string path)
    {
        using var file = File.OpenRead(path);
        using Stream bytes = path.EndsWith(".gz", StringComparison.Ordinal) ? new GZipStream(file, CompressionMode.Decompress) : file;
        using var text = new StreamReader(bytes);
        return Read(text);
    }

    public static Formula Read(TextReader text)
    {
        var variables = -1;
        var clauses = ImmutableArray.CreateBuilder<Clause>();
        var literals = new List<Literal>();
        while (text.ReadLine() is { } line)
        {
            if (line.StartsWith('c') || line.Length == 0)
            {
                continue;
            }

            if (line.StartsWith('p'))
            {
                variables = int.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[2], CultureInfo.InvariantCulture);
            }
            else if (line.StartsWith('%'))
            {
                break;
            }
            else
            {
                ReadLiterals(line, literals, clauses);
            }
        }

        return variables < 0 ? throw new FormatException("there is no line `p cnf VARIABLES CLAUSES`")
            : new([.. Enumerable.Repeat(2, variables)], clauses.ToImmutable());
    }

    private static void ReadLiterals(string line, List<Literal> literals, ImmutableArray<Clause>.Builder clauses)
    {
        foreach (var word in line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            var number = int.Parse(word, CultureInfo.InvariantCulture);
            if (number == 0)
            {
                clauses.Add(new([.. literals], clauses.Count));
                literals.Clear();
            }
            else
            {
                literals.Add(number > 0 ? Literal.True(number - 1) : Literal.False(-number - 1));
            }
        }
    }
}
