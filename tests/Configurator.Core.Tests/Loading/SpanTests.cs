using Configurator.Core.Loading;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Loading;

public class SpanTests
{
    [Fact]
    public void Plain_keys_and_values_are_marked_whole() => CheckLoading.ScalarsStand(
        """
        [|option|]: [|film|]
        [|title|]: [|Lid film on a roll|]   # not this
        [|list|]:
          - [|first one|]
          - [|second|]: [|2 mm|]
            [|third|]: [|-3|]

        """);

    [Fact]
    public void Quotes_belong_to_what_they_enclose() => CheckLoading.ScalarsStand(
        """
        [|"option"|]: [|'it''s film'|]
        [|'title'|]: [|"a \"lid\""|]

        """);

    [Fact]
    public void Flow_keys_and_values_are_marked_whole() => CheckLoading.ScalarsStand(
        """
        {[|option|]: [|film|], [|list|]: [ [|one|],  [|two|] , [|'three'|] ], [|map|]: {[|a|]: [|b|]}}

        """);

    [Fact]
    public void A_value_over_several_lines_is_marked_to_the_end_of_its_first() => CheckLoading.ScalarsStand(
        """
        [|option|]: [|film|]
        [|folded|]: [|one
          two
          three|]
        [|quoted|]: [|"one
          two"|]
        [|last|]: [|x|]

        """);

    [Fact]
    public void A_block_of_lines_is_marked_at_its_indicator() => CheckLoading.ScalarsStand(
        """
        [|option|]: [|film|]
        [|text|]: [||
          one
          two
        |][|last|]: [|x|]

        """);

    [Fact]
    public void A_value_that_is_not_written_is_a_place_behind_its_colon() => CheckLoading.ScalarsStand(
        """
        [|option|]:[||]
        [|title|]: [|x|]

        """);

    [Fact]
    public void A_block_map_stands_at_its_first_key_and_a_flow_map_at_its_brace()
    {
        var root = CheckLoading.Root("option: film\nblock:\n  key: x\nflow: {key: x}\n");
        Assert.Equal((3, 3, 3), Place(root["block"]!));
        Assert.Equal((4, 7, 1), Place(root["flow"]!));
    }

    [Fact]
    public void A_list_stands_at_its_first_dash_or_its_bracket()
    {
        var root = CheckLoading.Root("option: film\nblock:\n  - x\nflow: [x]\n");
        Assert.Equal((3, 3, 1), Place(root["block"]!));
        Assert.Equal((4, 7, 1), Place(root["flow"]!));
    }

    // Source: YAML 1.2.2 section 8.1: a folded block joins lines by spaces, a literal one keeps them.
    [Fact]
    public void Blocks_of_lines_are_read_as_yaml_says()
    {
        var root = CheckLoading.Root("folded: >\n  one\n  two\nliteral: |\n  one\n  two\n");
        Assert.Equal("one two\n", Assert.IsType<ScalarSyntax>(root["folded"]).Text);
        Assert.Equal("one\ntwo\n", Assert.IsType<ScalarSyntax>(root["literal"]).Text);
    }

    // Source: YAML 1.2.2 section 10.3.2: NO, 010 and 1_000 are no booleans or numbers; here all are kept as written.
    [Theory]
    [InlineData("NO")]
    [InlineData("010")]
    [InlineData("1_000")]
    [InlineData("2026-10-02")]
    [InlineData("~")]
    [InlineData("null")]
    [InlineData("1.0")]
    public void Plain_values_are_kept_as_written(string written)
    {
        var scalar = Assert.IsType<ScalarSyntax>(CheckLoading.Root($"option: {written}\n")["option"]);
        Assert.Equal(written, scalar.Text);
        Assert.True(scalar.IsPlain);
    }

    private static (int Line, int Column, int Length) Place(SyntaxNode node) => (node.Span.Line, node.Span.Column, node.Span.Length);
}
