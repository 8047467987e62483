using System.IO.Compression;
using System.Text;
using Configurator.Benchmarks;
using Configurator.Core.Logic.Formulas;

namespace Configurator.Core.Tests.Logic.Compiling;

// Source: DIMACS, Satisfiability suggested format, 1993; every expected clause is read off by hand.
public class DimacsTests
{
    [Fact]
    public void Comments_and_empty_lines_are_passed_over_wherever_they_stand() =>
        Check("c first\n\np cnf 3 2\nc 1 salt\n1 -2 0\n\nc between\n3 0\n", 3, "1 -2", "3");

    [Fact]
    public void A_line_may_hold_several_clauses() => Check("p cnf 3 3\n1 0 -2 3 0 -1 0\n", 3, "1", "-2 3", "-1");

    [Fact]
    public void A_clause_may_run_over_several_lines() => Check("p cnf 3 1\n1\n-2\n3 0\n", 3, "1 -2 3");

    [Fact]
    public void Words_may_be_set_apart_by_any_blanks() => Check("p  cnf\t2   1 \r\n  1\t -2  0\r\n", 2, "1 -2");

    [Fact]
    public void The_last_clause_may_lack_its_zero() => Check("p cnf 2 2\n1 0\n2", 2, "1", "2");

    [Fact]
    public void A_line_with_a_percent_sign_ends_the_clauses() => Check("p cnf 2 1\n1 2 0\n%\n0\n", 2, "1 2");

    [Fact]
    public void A_zero_alone_is_a_clause_that_never_holds() => Check("p cnf 1 1\n0\n", 1, "");

    [Fact]
    public void A_formula_may_have_no_variable_at_all() => Check("p cnf 0 0\n", 0);

    [Theory]
    [InlineData("1 2 0\n", "line 1: a clause stands before the line `p cnf VARIABLES CLAUSES`")]
    [InlineData("c nothing\n", "line 1: there is no line `p cnf VARIABLES CLAUSES`")]
    [InlineData("p cnf 1 1\np cnf 2 1\n", "line 2: there is a second line `p cnf`")]
    [InlineData("p dnf 1 1\n", "line 1: not `p cnf VARIABLES CLAUSES` with at most 10000000 variables")]
    [InlineData("p cnf 99999999999 1\n", "line 1: not `p cnf VARIABLES CLAUSES` with at most 10000000 variables")]
    [InlineData("p cnf 10000001 1\n", "line 1: not `p cnf VARIABLES CLAUSES` with at most 10000000 variables")]
    [InlineData("p cnf 2 1\n1 3 0\n", "line 2: `3` is not a number from -2 to 2")]
    [InlineData("p cnf 2 1\n1\n-99999999999 0\n", "line 3: `-99999999999` is not a number from -2 to 2")]
    [InlineData("p cnf 2 1\n1 x 0\n", "line 2: `x` is not a number from -2 to 2")]
    public void A_text_that_is_no_such_formula_is_refused_with_its_line(string text, string message) =>
        Assert.Equal(message, Assert.Throws<FormatException>(() => Dimacs.Read(new StringReader(text))).Message);

    [Theory]
    [InlineData("plain.cnf", false)]
    [InlineData("packed.cnf.gz", true)]
    public void A_file_is_read_plain_or_compressed(string name, bool isCompressed)
    {
        var folder = Directory.CreateTempSubdirectory("dimacs");
        try
        {
            var path = Path.Combine(folder.FullName, name);
            using (
                Stream file = File.Create(path),
                    bytes = isCompressed ? new GZipStream(file, CompressionMode.Compress) : file
            )
            {
                bytes.Write(Encoding.UTF8.GetBytes("p cnf 2 1\n-1 2 0\n"));
            }

            Assert.Equal(["-1 2"], Dimacs.Read(path).Clauses.Select(Words));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static void Check(string text, int variables, params string[] clauses)
    {
        var formula = Dimacs.Read(new StringReader(text));
        Assert.Equal(Enumerable.Repeat(2, variables), formula.Sizes);
        Assert.Equal(clauses, formula.Clauses.Select(Words));
    }

    private static string Words(Clause clause) =>
        string.Join(
            ' ',
            clause.Literals.Select(literal =>
                literal == Literal.True(literal.Variable) ? $"{literal.Variable + 1}" : $"{-literal.Variable - 1}"
            )
        );
}
