using System.Diagnostics;
using System.Globalization;
using System.Text;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Loading;

/// <summary>What YAML allows and definitions do not: it hides from a reviewer what is in force.</summary>
public class RefusedSyntaxTests
{
    [Fact]
    public void An_anchor_and_its_alias_are_both_reported() => CheckLoading.Says(
        """
        option: film
        a: [|&here|] 2 mm
        b: [|*here|]

        """,
        """
        CFG1005 anchor `here`: a reviewer must see every value where it applies
        to fix: write the value out
        """,
        """
        CFG1005 alias `here`: a reviewer must see every value where it applies
        to fix: write the value out
        """);

    [Fact]
    public void An_anchor_on_a_map_a_list_or_a_key_is_reported() => CheckLoading.Says(
        """
        option: film
        a: [|&map|] {b: c}
        d: [|&list|] [e]
        [|&key|] f: g

        """,
        "CFG1005 anchor `map`: a reviewer must see every value where it applies",
        "CFG1005 anchor `list`: a reviewer must see every value where it applies",
        "CFG1005 anchor `key`: a reviewer must see every value where it applies");

    [Theory]
    [InlineData("!!str")]
    [InlineData("!own")]
    [InlineData("!<tag:example.org,2026:x>")]
    [InlineData("!!python/object/apply:os.system")]
    public void A_tag_is_reported_and_nothing_is_made_of_it(string tag)
    {
        var diagnostic = CheckLoading.OnlyDiagnostic($"option: {tag} film\n");
        Assert.Equal("CFG1006", diagnostic.Rule.Code);
        Assert.Equal("remove the tag", diagnostic.Fix!.Message);
        Assert.Equal((1, 9), (diagnostic.Span.Line, diagnostic.Span.Column));
    }

    [Fact]
    public void A_merge_key_is_reported_with_its_alias() => CheckLoading.Says(
        """
        option: film
        a: [|&base|] {b: c}
        d:
          [|<<|]: [|*base|]

        """,
        "CFG1005 anchor `base`: a reviewer must see every value where it applies",
        """
        CFG1012 merge key `<<`: a reviewer must see every value where it applies
        to fix: write the values out
        """,
        "CFG1005 alias `base`: a reviewer must see every value where it applies");

    [Fact]
    public void A_quoted_key_that_looks_like_a_merge_key_is_a_key() =>
        Assert.Equal("<<", CheckLoading.Root("option: film\n\"<<\": x\n").Entries[1].Key.Text);

    [Fact]
    public void A_second_document_is_reported_where_it_starts() => CheckLoading.Says(
        """
        option: film
        [|---|]
        option: other

        """,
        """
        CFG1007 a second document starts here; a file holds one
        to fix: move it to a file of its own
        """);

    [Fact]
    public void One_document_between_markers_is_one_document() => CheckLoading.Root("---\noption: film\n...\n");

    [Theory]
    [InlineData("")]
    [InlineData("\n\n  \n")]
    [InlineData("# only a comment\n# and another\n")]
    [InlineData("---\n")]
    public void A_file_that_says_nothing_is_reported(string text) => CheckLoading.SaysOfFile(
        Encoding.UTF8.GetBytes(text), "CFG1008 the file holds no definition\nto fix: fill it or delete it");

    [Theory]
    [InlineData("[|just words|]\n")]
    [InlineData("[|-|] a\n- b\n")]
    [InlineData("[|{|]}\n")]
    public void A_file_that_is_no_map_is_reported(string marked) => CheckLoading.Says(
        marked, "CFG1015 a definition starts with its kind, such as `option: lid-mark-sensor`");

    [Fact]
    public void A_key_given_twice_is_reported_at_both_places() => CheckLoading.Says(
        """
        option: film
        (|title|): one
        fits:
          - {(|fit|): a, device: b, [|fit|]: c}
        [|title|]: two

        """,
        "CFG1009 `fit` stands twice in one place\nnote: `fit` is first given here\nto fix: keep one of the two",
        "CFG1009 `title` stands twice in one place\nnote: `title` is first given here\nto fix: keep one of the two");

    [Fact]
    public void A_key_given_three_times_is_reported_twice() => CheckLoading.Says(
        "(|a|): x\n[|a|]: y\n[|\"a\"|]: z\n", "CFG1009 `a` stands twice in one place", "CFG1009 `a` stands twice in one place");

    [Fact]
    public void The_same_key_in_two_maps_is_no_duplicate() => CheckLoading.Root("a: {b: x}\nc: {b: x}\n");

    [Theory]
    [InlineData("option: film\n? [|{|]a: b}\n: c\n")]
    [InlineData("option: film\n[|{|]a: b}: c\n")]
    [InlineData("option: film\n? [|-|] a\n: c\n")]
    [InlineData("option: film\n: [|c|]\n")]
    public void A_key_that_is_no_single_word_is_reported(string marked) => CheckLoading.Says(
        marked, "CFG1013 a key must be a single word or number\nto fix: write `key: value`");

    [Fact]
    public void An_alias_without_its_anchor_is_an_alias() => CheckLoading.Says(
        "option: [|*nowhere|]\n", "CFG1005 alias `nowhere`: a reviewer must see every value where it applies");

    [Fact]
    public void A_value_that_holds_itself_is_refused() => CheckLoading.Says(
        "option: [|&me|] [x, [|*me|]]\n",
        "CFG1005 anchor `me`: a reviewer must see every value where it applies",
        "CFG1005 alias `me`: a reviewer must see every value where it applies");

    // Fifty levels of ten aliases would be 10^50 values; each alias is refused where it stands instead.
    [Fact]
    public void A_bomb_of_aliases_does_not_go_off()
    {
        var text = new StringBuilder("a0: &a0 x\n");
        for (var level = 1; level <= 50; level++)
        {
            var of = FormattableString.Invariant($"*a{level - 1}");
            text.Append(CultureInfo.InvariantCulture, $"a{level}: &a{level} [{string.Join(", ", Enumerable.Repeat(of, 10))}]\n");
        }

        var watch = Stopwatch.StartNew();
        var said = CheckLoading.Load([.. CheckLoading.Utf8(text.ToString())]).Diagnostics;
        Assert.Equal(51 + 500, said.Length);
        Assert.All(said, diagnostic => Assert.Equal("CFG1005", diagnostic.Rule.Code));
        Assert.InRange(watch.Elapsed, TimeSpan.Zero, TimeSpan.FromSeconds(5));
    }

    [Theory]
    [InlineData("option: [|&a|] [|!!str|] film\n")]
    [InlineData("option: [|!!str|] [|&a|] film\n")]
    [InlineData("option: [|&a|]   [|!!str|] film\n")]
    public void Anchor_and_tag_are_marked_each_in_its_place(string marked) =>
        CheckLoading.Says(
            marked,
            [.. new[] { ("&a", "CFG1005 anchor `a`: a reviewer must see every value where it applies"), ("!!str", "CFG1006 tag `!!str`: values get their type from their key") }
                .OrderBy(said => marked.IndexOf(said.Item1, StringComparison.Ordinal))
                .Select(said => said.Item2)]);
}
