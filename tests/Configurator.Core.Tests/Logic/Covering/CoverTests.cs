using System.Collections.Immutable;
using System.Globalization;
using Configurator.Benchmarks;
using Configurator.Core.Logic.Covering;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Logic.Covering;

// Source of every bound: tests/Data/option-models/cit/sizes.csv; its README names where each was published.
public class CoverTests
{
    private const long Work = 60_000_000;
    private const long NightlyWork = 4_000_000_000;

    private static readonly string Folder = Path.Combine(Repository.Folder, "tests", "Data", "option-models", "cit");

    public static TheoryData<string> Constrained { get; } =
    ["spins", "bugzilla", "benchmark_3", "benchmark_7", "benchmark_9", "benchmark_23"];

    public static TheoryData<string> Large { get; } = ["spinv", "gcc", "apache"];

    public static TheoryData<string> Uniform { get; } =
    ["3^4", "3^13", "4^15 3^17 2^29", "4^1 3^39 2^35", "2^100", "10^20"];

    [Theory]
    [MemberData(nameof(Constrained))]
    public void Allowed_pairs_are_covered_by_at_most_a_tenth_more_rows_than_the_best_published(string name) =>
        CheckConstrained(name, Work);

    [Trait("Length", "nightly")]
    [Trait("Nightly", "1")]
    [Theory(Explicit = true)]
    [MemberData(nameof(Large))]
    public void Large_inputs_too(string name) => CheckConstrained(name, NightlyWork);

    [Theory]
    [InlineData("3^4")]
    [InlineData("3^13")]
    [InlineData("2^100")]
    public void Uniform_inputs_take_no_more_rows_than_the_best_greedy_tool(string name) => CheckUniform(name, Work);

    [Trait("Length", "nightly")]
    [Trait("Nightly", "1")]
    [Theory(Explicit = true)]
    [MemberData(nameof(Uniform))]
    public void Large_uniform_inputs_too(string name) => CheckUniform(name, NightlyWork);

    // Source: Bush 1952, q*q rows for q + 1 parameters of q values; Kleitman and Spencer 1973 for two values.
    [Theory]
    [InlineData("2^4", 5)]
    [InlineData("2^10", 6)]
    [InlineData("4^5", 16)]
    [InlineData("5^6", 25)]
    [InlineData("7^8", 49)]
    [InlineData("8^9", 64)]
    [InlineData("9^10", 81)]
    [InlineData("3^12", 15)]
    [InlineData("4^3 2^2", 16)]
    public void Constructions_give_their_known_sizes(string name, int rows)
    {
        var constructed = AlgebraicCover.Of(Sizes(name))!;
        Assert.Equal(rows, constructed.Count);
        new CoverCheck(Text(Sizes(name)), "").Covers(constructed);
    }

    // Source: by hand. A single parameter has a row for each value; one value is one row; nothing allowed is no row.
    [Theory]
    [InlineData("5^1", "", 5)]
    [InlineData("1^3", "", 1)]
    [InlineData("66^1 2^3", "", 132)]
    [InlineData("3^1", "1\n1\n- 1\n", 2)]
    public void Small_and_odd_inputs_are_covered(string name, string constraints, int rows) =>
        Assert.Equal(rows, Find(Text(Sizes(name)), constraints, 1_000_000).Count);

    [Fact]
    public void Values_that_no_row_may_have_are_left_out()
    {
        // The first parameter must take its value 1 wherever the second takes 0, and never takes 2.
        const string Constraints = "2\n2\n+ 1 - 3\n1\n- 2\n";
        var rows = Find(Text([3, 2, 2]), Constraints, 1_000_000);
        new CoverCheck(Text([3, 2, 2]), Constraints).Covers(rows);
        Assert.DoesNotContain(rows, row => row[0] == 2 || (row[1] == 0 && row[0] != 1));
    }

    [Theory]
    [InlineData("3\n2\n2 2\n", "", "model: strength 3 is not supported, only pairs (strength 2) are covered")]
    [InlineData("2\n2\n2\n", "", "model: ends where the number of values belongs")]
    [InlineData("2\n2\n2 2 2\n", "", "model: `2` stands after the end")]
    [InlineData("2\n1\n2\n", "1\n1\n- 2\n", "constraints: value number is `2`, not a number from 0 to 1")]
    [InlineData("2\n1\n2\n", "1\n1\n1 1\n", "constraints: `1` stands where a sign (- or +) belongs")]
    public void A_text_that_is_not_in_the_format_is_refused(string model, string constraints, string problem) =>
        Assert.Equal(problem, Assert.Throws<FormatException>(() => CoverModel.Read(model, constraints)).Message);

    [Fact]
    public void The_same_input_gives_the_same_rows() =>
        Assert.Equal(
            Find(Text(Sizes("3^8 2^5")), "", 5_000_000).Select(row => string.Join(' ', row)),
            Find(Text(Sizes("3^8 2^5")), "", 5_000_000).Select(row => string.Join(' ', row))
        );

    private static void CheckConstrained(string name, long work)
    {
        var model = File.ReadAllText(Path.Combine(Folder, name + ".model"));
        var constraints = File.ReadAllText(Path.Combine(Folder, name + ".constraints"));
        var rows = Find(model, constraints, work);
        new CoverCheck(model, constraints).Covers(rows);
        Assert.InRange(rows.Count, 1, Published(name, column: 1) * 11 / 10);
    }

    private static void CheckUniform(string name, long work)
    {
        var rows = Find(Text(Sizes(name)), "", work);
        new CoverCheck(Text(Sizes(name)), "").Covers(rows);
        Assert.InRange(rows.Count, 1, Published(name, column: 2));
    }

    private static List<int[]> Find(string model, string constraints, long work)
    {
        var read = CoverModel.Read(model, constraints);
        return Cover.Find(() => new CoverModelSpace(read), seed: 1, work);
    }

    private static int Published(string name, int column) =>
        int.Parse(
            File.ReadLines(Path.Combine(Folder, "sizes.csv")).Select(line => line.Split(',')).Single(row => row[0] == name)[column],
            CultureInfo.InvariantCulture
        );

    /// <summary>From <c>4^15 3^17</c>: fifteen parameters of four values, then seventeen of three.</summary>
    private static ImmutableArray<int> Sizes(string name) =>
        [
            .. name.Split(' ')
                .Select(part => part.Split('^').Select(word => int.Parse(word, CultureInfo.InvariantCulture)).ToList())
                .SelectMany(part => Enumerable.Repeat(part[0], part[1])),
        ];

    private static string Text(ImmutableArray<int> sizes) =>
        string.Create(CultureInfo.InvariantCulture, $"2\n{sizes.Length}\n{string.Join(' ', sizes)}\n");
}
