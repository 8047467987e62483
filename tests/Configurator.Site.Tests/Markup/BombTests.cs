using System.Diagnostics;
using Configurator.Site.Markup;

namespace Configurator.Site.Tests.Markup;

/// <summary>Short texts that would take a long time or much memory.</summary>
public class BombTests
{
    [Theory]
    [InlineData("> ", 2000)]
    [InlineData("- ", 2000)]
    [InlineData("[", 20000)]
    [InlineData("*a_ ", 10000)]
    [InlineData("![", 20000)]
    public void A_note_that_nests_without_end_is_reported_at_its_start(string part, int times) => Assert.Empty(
        Note.Check(
            Repeat(part, times) + "x", "CFG5101 lists, quotes, brackets or emphasis are nested too deeply to be read"));

    // Every row is filled to the width of the widest: 16 kB would become 40 MB.
    [Fact]
    public void A_wide_and_long_table_is_reported_before_it_is_made() => Note.Check(
        "|" + Repeat("a|", 2000) + "\n|" + Repeat("-|", 2000) + "\n" + Repeat("|b|\n", 2000),
        "CFG5101 the note's tables come to 4006002 cells; 20000 is the limit");

    [Fact]
    public void A_note_beyond_the_length_of_a_chapter_is_reported() => Note.Check(
        new string('a', MarkupLimits.CharactersMax + 1), "CFG5101 the note has 50001 characters; 50000 is the limit");

    [Fact]
    public void A_note_of_the_greatest_length_is_read() =>
        Assert.Empty(Note.Read(new string('a', MarkupLimits.CharactersMax)).Diagnostics);

    // Measured on two slow cores: none takes a tenth of this.
    [Theory]
    [InlineData("[a](")]
    [InlineData("[a](<b")]
    [InlineData("[a]: b\n")]
    [InlineData("**")]
    [InlineData("`a``b")]
    [InlineData("&copy;")]
    [InlineData("|")]
    [InlineData("<a ")]
    [InlineData("<!--")]
    [InlineData("\\[")]
    [InlineData("a\n:   b\n\n")]
    [InlineData("- a\n")]
    [InlineData("1) ")]
    [InlineData("\u0000")]
    [InlineData("\ud800")]
    public void Other_repetitions_end_soon_and_in_order(string part)
    {
        var clock = Stopwatch.StartNew();
        var note = Note.Read(Repeat(part, MarkupLimits.CharactersMax / part.Length));
        Assert.InRange(clock.Elapsed, TimeSpan.Zero, TimeSpan.FromSeconds(20));
        Assert.All(
            note.Diagnostics, diagnostic => Assert.StartsWith("CFG51", diagnostic.Rule.Code, StringComparison.Ordinal));
    }

    private static string Repeat(string part, int times) => string.Concat(Enumerable.Repeat(part, times));
}
