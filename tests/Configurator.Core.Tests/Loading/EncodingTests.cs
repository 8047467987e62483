using System.Text;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Loading;

public class EncodingTests
{
    private const string NotUtf8 = "CFG1001 the file is not UTF-8 text\nto fix: save it as UTF-8";

    [Fact]
    public void Latin_1_is_not_text() =>
        CheckLoading.SaysOfFile([.. "title: Caf"u8, 0xE9, .. "\n"u8], NotUtf8);

    [Fact]
    public void Utf_16_is_not_text() =>
        CheckLoading.SaysOfFile([0xFF, 0xFE, .. Encoding.Unicode.GetBytes("option: film\n")], NotUtf8);

    // Source: RFC 3629 section 3: the surrogates U+D800 to U+DFFF have no UTF-8 form.
    [Fact]
    public void A_lone_surrogate_is_not_text() =>
        CheckLoading.SaysOfFile([.. "title: "u8, 0xED, 0xA0, 0x80, .. "\n"u8], NotUtf8);

    // Source: RFC 3629 section 3: a character has one form, the shortest.
    [Fact]
    public void An_overlong_slash_is_not_text() =>
        CheckLoading.SaysOfFile([.. "title: "u8, 0xC0, 0xAF, .. "\n"u8], NotUtf8);

    [Fact]
    public void A_character_cut_off_at_the_end_is_not_text() =>
        CheckLoading.SaysOfFile([.. "title: "u8, 0xE2, 0x82], NotUtf8);

    [Fact]
    public void A_byte_order_mark_is_dropped_and_moves_nothing()
    {
        var root = CheckLoading.Root([0xEF, 0xBB, 0xBF, .. "option: film\n"u8]);
        Assert.Equal("option", root.Entries[0].Key.Text);
        Assert.Equal((1, 1, 6), (root.Entries[0].Key.Span.Line, root.Entries[0].Key.Span.Column, root.Entries[0].Key.Span.Length));
    }

    [Fact]
    public void A_second_byte_order_mark_is_an_invisible_character()
    {
        var diagnostic = CheckLoading.OnlyDiagnostic("\uFEFF\uFEFFoption: film\n");
        Assert.Equal("character U+FEFF cannot be seen and is not allowed", diagnostic.Message);
        Assert.Equal((1, 1), (diagnostic.Span.Line, diagnostic.Span.Column));
    }

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\r")]
    [InlineData("\n")]
    public void Line_ends_of_every_system_give_the_same_places(string lineEnd)
    {
        var root = CheckLoading.Root($"option: film{lineEnd}{lineEnd}title: Lid{lineEnd}");
        Assert.Equal((3, 8), (root["title"]!.Span.Line, root["title"]!.Span.Column));
        Assert.Equal("film", Assert.IsType<Core.Loading.ScalarSyntax>(root["option"]).Text);
    }

    [Fact]
    public void A_text_that_ends_without_a_line_end_is_read_whole() =>
        Assert.Equal((2, 8, 3), PlaceOf("option: film\ntitle: Lid", "title"));

    // Columns count UTF-16 units, as editors do: the clapper board takes two.
    [Fact]
    public void Characters_outside_the_first_plane_count_twice() =>
        Assert.Equal((1, 23, 1), PlaceOf("{option: \"\U0001F3AC lid\", a: b}", "a"));

    private static (int Line, int Column, int Length) PlaceOf(string text, string key)
    {
        var span = CheckLoading.Root(text)[key]!.Span;
        return (span.Line, span.Column, span.Length);
    }
}
