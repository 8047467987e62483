using Configurator.Core.Diagnostics;

namespace Configurator.Core.Tests.Diagnostics;

public class NearestTests
{
    // Source: counted by hand. Letters that change places with their neighbour count as one edit.
    [Theory]
    [InlineData("lid", "lid", 0)]
    [InlineData("lid", "lids", 1)]
    [InlineData("lids", "lid", 1)]
    [InlineData("lid", "led", 1)]
    [InlineData("tray", "tary", 1)]
    [InlineData("sealer", "dealt", 3)]
    [InlineData("", "lid", 3)]
    [InlineData("ab", "ba", 1)]
    public void Edits_are_letters_put_in_left_out_replaced_or_swapped(string left, string right, int edits) =>
        Assert.Equal(edits, Nearest.Edits(left, right));

    // Law: a way there is a way back.
    [Theory]
    [InlineData("gas-flush", "gas-fulsh")]
    [InlineData("tray-count", "count-tray")]
    [InlineData("a", "")]
    public void Edits_count_the_same_in_both_directions(string left, string right) =>
        Assert.Equal(Nearest.Edits(left, right), Nearest.Edits(right, left));

    [Theory]
    [InlineData("tray-cuont", "tray-count")]
    [InlineData("top-flim", "top-film")]
    [InlineData("snaplid", "snap-lid")]
    [InlineData("rejects", "reject")]
    public void A_slip_of_the_keyboard_finds_the_name_that_was_meant(string written, string meant) =>
        Assert.Equal(meant, Nearest.To(written, ["reject", "snap-lid", "top-film", "tray-count"]));

    [Fact]
    public void Of_two_names_as_near_the_first_in_ordinal_order_is_offered() =>
        Assert.Equal("eye-a", Nearest.To("eye-x", ["eye-c", "eye-a", "eye-b"]));

    [Theory]
    [InlineData("window")]
    [InlineData("")]
    public void A_name_that_is_like_none_gets_no_offer(string written) =>
        Assert.Null(Nearest.To(written, ["reject", "snap-lid", "top-film"]));

    [Theory]
    [InlineData("ab", "xb", true)]
    [InlineData("ab", "xy", false)]
    [InlineData("abcdef", "abcdxy", true)]
    [InlineData("abcdef", "abcxyz", false)]
    public void A_third_of_the_letters_may_be_wrong_and_one_always(string written, string known, bool offered) =>
        Assert.Equal(offered ? known : null, Nearest.To(written, [known]));

    [Fact]
    public void Where_nothing_is_known_nothing_is_offered() => Assert.Null(Nearest.To("reject", []));

    [Fact]
    public void A_text_much_too_long_for_a_name_is_not_compared() =>
        Assert.Null(Nearest.To(new string('a', 65), [new string('a', 64)]));

    [Fact]
    public void A_known_name_much_too_long_is_never_offered() =>
        Assert.Null(Nearest.To(new string('a', 64), [new string('a', 65)]));
}
