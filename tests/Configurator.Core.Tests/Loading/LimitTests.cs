using System.Diagnostics;
using System.Globalization;
using System.Text;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Loading;

// The limits are this tool's own: design page section 3 asks for bounded depth and size.
public class LimitTests
{
    private const int Levels = 64;
    private const int Values = 200_000;
    private const int Bytes = 1_048_576;

    /// <summary>Generous: what is refused at its limit takes milliseconds, what is not takes minutes or never returns.</summary>
    private static readonly TimeSpan Fast = TimeSpan.FromSeconds(10);

    [Fact]
    public void A_file_of_one_mebibyte_is_read() => CheckLoading.Root(Sized(Bytes));

    [Fact]
    public void A_file_of_one_byte_more_is_refused() => CheckLoading.SaysOfFile(
        Sized(Bytes + 1),
        """
        CFG1002 the file has 1048577 bytes; 1048576 is the limit
        to fix: split it into several definitions
        """);

    // The root is level 1, each bracket one more, the value in the innermost one the last.
    [Fact]
    public void Sixty_four_levels_are_read() => CheckLoading.Root(Flow(Levels - 2));

    [Fact]
    public void Sixty_five_levels_are_refused_where_the_last_begins() => CheckLoading.Says(
        "a: " + new string('[', Levels - 1) + "[|x|]" + new string(']', Levels - 1) + "\n",
        """
        CFG1010 more than 64 levels of nesting
        to fix: flatten the definition
        """);

    [Fact]
    public void Sixty_four_levels_of_block_lists_are_read() => CheckLoading.Root("a:\n " + Repeat("- ", Levels - 2) + "x\n");

    [Fact]
    public void Sixty_five_levels_of_block_lists_are_refused() => CheckLoading.Says(
        "a:\n " + Repeat("- ", Levels - 1) + "[|x|]\n", "CFG1010 more than 64 levels of nesting");

    // Root, key and list are three values.
    [Fact]
    public void Two_hundred_thousand_values_are_read() => CheckLoading.Root(List(Values - 3) + "]\n");

    [Fact]
    public void One_value_more_is_refused_where_it_stands() => CheckLoading.Says(
        List(Values - 3) + ",[|x|]]\n",
        """
        CFG1011 more than 200000 values in one file
        to fix: split it into several definitions
        """);

    [Theory]
    [InlineData("flow lists", "a: ", "[")]
    [InlineData("flow maps", "a: ", "{a: ")]
    [InlineData("block lists", "a:\n ", "- ")]
    [InlineData("complex keys", "", "? ")]
    [InlineData("explicit flow keys", "a: ", "{? ")]
    public void A_hundred_thousand_levels_are_refused_at_once(string what, string start, string level)
    {
        var watch = Stopwatch.StartNew();
        var diagnostic = CheckLoading.OnlyDiagnostic(start + Repeat(level, 100_000) + "x\n");
        Assert.True(diagnostic.Rule.Code == "CFG1010", $"{what}: {diagnostic.Rule.Code} {diagnostic.Message}");
        Assert.InRange(watch.Elapsed, TimeSpan.Zero, Fast);
    }

    [Fact]
    public void A_hundred_thousand_keys_are_read_in_good_time()
    {
        var text = new StringBuilder();
        for (var i = 0; i < 99_999; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"k{i}: x\n");
        }

        var watch = Stopwatch.StartNew();
        CheckLoading.Root(text.ToString());
        Assert.InRange(watch.Elapsed, TimeSpan.Zero, Fast);
    }

    [Fact]
    public void A_value_of_a_megabyte_is_read_in_good_time()
    {
        var watch = Stopwatch.StartNew();
        CheckLoading.Root("a: \"" + new string('x', 1_000_000) + "\"\n");
        Assert.InRange(watch.Elapsed, TimeSpan.Zero, Fast);
    }

    private static byte[] Sized(int bytes) => Encoding.UTF8.GetBytes("option: film\n#".PadRight(bytes - 1, '-') + "\n");

    private static string Flow(int brackets) => "a: " + new string('[', brackets) + "x" + new string(']', brackets) + "\n";

    private static string List(int items) => "a: [x" + Repeat(",x", items - 1);

    private static string Repeat(string text, int times) => new StringBuilder().Insert(0, text, times).ToString();
}
