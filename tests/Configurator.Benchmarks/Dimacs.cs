using System.Collections.Immutable;
using System.Globalization;
using System.IO.Compression;
using Configurator.Core.Logic.Formulas;

namespace Configurator.Benchmarks;

/// <summary>Reads the open DIMACS CNF format, plain or compressed with gzip.</summary>
/// <remarks>
/// Source: DIMACS, Satisfiability suggested format, 1993. The number of clauses announced is not held against the file,
/// and the last clause may lack its zero: both are common.
/// </remarks>
internal sealed class Dimacs
{
    private const int VariablesMax = 10_000_000;

    private readonly ImmutableArray<Clause>.Builder _clauses = ImmutableArray.CreateBuilder<Clause>();
    private readonly List<Literal> _open = [];
    private int? _variables;
    private int _line;

    private Dimacs() { }

    /// <exception cref="FormatException">The text is not DIMACS CNF.</exception>
    public static Formula Read(string path)
    {
        using var file = File.OpenRead(path);
        using Stream bytes = path.EndsWith(".gz", StringComparison.Ordinal)
            ? new GZipStream(file, CompressionMode.Decompress)
            : file;
        using var text = new StreamReader(bytes);
        return Read(text);
    }

    /// <exception cref="FormatException">The text is not DIMACS CNF.</exception>
    public static Formula Read(TextReader text)
    {
        var reader = new Dimacs();
        while (text.ReadLine() is { } line && !line.StartsWith('%'))
        {
            reader._line++;
            reader.ReadLine(line.AsSpan().Trim());
        }

        return reader.Finish();
    }

    private void ReadLine(ReadOnlySpan<char> line)
    {
        if (line.StartsWith("p"))
        {
            _variables = _variables is null ? ReadHeader(line) : throw Wrong("there is a second line `p cnf`");
        }
        else if (!line.IsEmpty && !line.StartsWith("c"))
        {
            ReadLiterals(line);
        }
    }

    private int ReadHeader(ReadOnlySpan<char> line) =>
        line.ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries) is ["p", "cnf", var variables, _]
        && int.TryParse(variables, NumberStyles.None, CultureInfo.InvariantCulture, out var count)
        && count <= VariablesMax
            ? count
            : throw Wrong(
                FormattableString.Invariant($"not `p cnf VARIABLES CLAUSES` with at most {VariablesMax} variables")
            );

    private void ReadLiterals(ReadOnlySpan<char> line)
    {
        var most = _variables ?? throw Wrong("a clause stands before the line `p cnf VARIABLES CLAUSES`");
        foreach (var range in line.SplitAny(' ', '\t'))
        {
            if (line[range] is { IsEmpty: false } word)
            {
                Take(
                    int.TryParse(word, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)
                    && number >= -most
                    && number <= most
                        ? number
                        : throw Wrong(
                            FormattableString.Invariant($"`{word.ToString()}` is not a number from {-most} to {most}")
                        )
                );
            }
        }
    }

    private void Take(int number)
    {
        if (number != 0)
        {
            _open.Add(number > 0 ? Literal.True(number - 1) : Literal.False(-number - 1));
        }
        else
        {
            EndClause();
        }
    }

    private void EndClause()
    {
        _clauses.Add(new([.. _open], _clauses.Count));
        _open.Clear();
    }

    private Formula Finish()
    {
        if (_open.Count > 0)
        {
            EndClause();
        }

        return new(
            [.. Enumerable.Repeat(2, _variables ?? throw Wrong("there is no line `p cnf VARIABLES CLAUSES`"))],
            _clauses.ToImmutable()
        );
    }

    private FormatException Wrong(string what) => new(FormattableString.Invariant($"line {_line}: {what}"));
}
