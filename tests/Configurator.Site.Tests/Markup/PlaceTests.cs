using Configurator.Core.Sources;
using Configurator.Site.Markup;
using Markdig.Syntax;
using SourceSpan = Configurator.Core.Sources.SourceSpan;

namespace Configurator.Site.Tests.Markup;

public class PlaceTests
{
    private const string Text = "first\nsecond ü😀 end\n\nlast";

    // Counted by hand in the text above, from line 10 on.
    [Theory]
    [InlineData(0, 4, 10, 1, 5)]
    [InlineData(6, 11, 11, 1, 6)]
    [InlineData(13, 13, 11, 8, 1)]
    [InlineData(17, 19, 11, 12, 3)]
    [InlineData(22, 25, 13, 1, 4)]
    public void A_part_has_the_line_and_column_of_its_file(int start, int end, int line, int column, int length) =>
        Assert.Equal(new SourceSpan("a.md", line, column, length), SpanOf(start, end));

    [Fact]
    public void Of_a_part_with_several_lines_the_first_is_marked() =>
        Assert.Equal(new SourceSpan("a.md", 10, 1, 5), SpanOf(0, 25));

    [Theory]
    [InlineData(-5, -1)]
    [InlineData(100, 200)]
    [InlineData(0, -1)]
    public void A_part_that_lies_outside_does_no_harm(int start, int end) =>
        Assert.Equal(0, SpanOf(start, end).Length);

    private static SourceSpan SpanOf(int start, int end) =>
        new Prose(new SourceText("a.md", Text), FirstLine: 10).SpanOf(new ParagraphBlock { Span = new(start, end) });
}
