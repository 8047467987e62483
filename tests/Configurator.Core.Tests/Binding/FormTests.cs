using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

/// <summary>A value of the wrong form: a list where a map belongs, a word where a number does.</summary>
public class FormTests
{
    [Fact]
    public void A_list_where_a_map_belongs_is_reported_at_its_start() => Check.Small
        .Machine("trunk: {power: trunk-power, network: trunk-network}", "trunk:\n    [|-|] trunk-power\n    - trunk-network")
        .Says(
            """
            CFG2006 expected a trunk: a map with the keys `power`, `network`
            to fix: this is a list; write it as said
            """);

    [Fact]
    public void A_word_where_a_list_belongs_is_reported() => Check.Small
        .Changing(SmallCatalogue.Option("film"), "offered-on: [cup-one]", "offered-on: [|cup-one|]")
        .Says(
            """
            CFG2006 expected a list; each item a machine's id
            to fix: this is a single value; write it as said
            """);

    [Fact]
    public void A_map_where_a_word_belongs_is_reported() => Check.Small
        .Changing(SmallCatalogue.Device("eye"), "kind: sensor", "kind: [|{|]sensor: yes}")
        .Says(
            """
            CFG2006 expected one of `actuator`, `cap`, `controller`, `cordset`, `drive`, `hub`, `io-link-master`, `motor`, `operator`, `panel-part`, `safety`, `sensor`, `splitter`, `supply`, `valve-manifold`
            to fix: this is a map; write it as said
            """);

    [Fact]
    public void A_map_in_the_middle_of_a_list_is_reported_alone() => Check.Small
        .Changing(SmallCatalogue.Option("film"), "offered-on: [cup-one]", "offered-on: [cup-one, [|{|]machine: cup-two}]")
        .Says("CFG2006 expected a machine's id");

    [Theory]
    [InlineData("direct-inputs: 2", "direct-inputs: [|two|]", "`two` is not a whole number from 0 to 1000000")]
    [InlineData("direct-inputs: 2", "direct-inputs: [|2.0|]", "`2.0` is not a whole number from 0 to 1000000")]
    [InlineData("direct-inputs: 2", "direct-inputs: [|2_0|]", "`2_0` is not a whole number from 0 to 1000000")]
    [InlineData("direct-inputs: 2", "direct-inputs: [|0x2|]", "`0x2` is not a whole number from 0 to 1000000")]
    [InlineData("direct-inputs: 2", "direct-inputs: [|99999999999|]", "`99999999999` is not a whole number from 0 to 1000000")]
    [InlineData("extension: true", "extension: [|yes|]", "`yes` is not `true` or `false`")]
    [InlineData("extension: true", "extension: [|True|]", "`True` is not `true` or `false`")]
    [InlineData("extension: true", "extension: [|\"true\"|]", "`true` is not `true` or `false`")]
    [InlineData("revision: A", "revision: [|a|]", "`a` is not a revision such as `B`")]
    [InlineData("revision: A", "revision: [|A-1|]", "`A-1` is not a revision such as `B`")]
    [InlineData("document: C1", "document: [|1C|]", "`1C` is not capital letters and digits such as `P4`")]
    public void A_value_that_has_not_its_form_is_reported(string was, string now, string message) =>
        Check.Small.Machine(was, now).Says("CFG2006 " + message);

    // Source: ISO 8601 calendar dates, with a day that exists.
    [Theory]
    [InlineData("14.03.2026")]
    [InlineData("2026-3-14")]
    [InlineData("2026-02-29")]
    [InlineData("2026-03-14T00:00")]
    public void A_date_is_year_month_and_day(string date) => Check.Small
        .Changing(SmallCatalogue.Delivered, "2026-03-14", $"[|{date}|]")
        .Says($"CFG2006 `{date}` is not a date such as `2026-10-02`\nto fix: write a date such as `2026-10-02`");

    [Theory]
    [InlineData("spare-ports: 1", "spare-ports: [|33|]", "`33` is not a whole number from 0 to 32")]
    [InlineData("spare-ports: 1", "spare-ports: [|-1|]", "`-1` is not a whole number from 0 to 32")]
    [InlineData("document: C1", "document: C1\nlanes: [|0|]", "`0` is not a whole number from 1 to 64")]
    public void A_count_out_of_its_range_is_reported(string was, string now, string message) =>
        Check.Small.Machine(was, now).Says("CFG2013 " + message);

    [Fact]
    public void A_word_that_is_not_in_its_list_is_marked_and_the_nearest_is_offered() => Check.Small
        .Machine("take: exactly-one", "take: [|exactly-on|]")
        .Says(
            """
            CFG2012 `exactly-on` is not one of `at-most-one`, `exactly-one`, `one-or-more`
            to fix: replace it with `exactly-one`
            """);

    [Fact]
    public void A_language_is_two_letters() => Check.Small
        .Changing(SmallCatalogue.Option("film"), "title: Lid film", "title: {en: Lid film, [|english|]: Film, [|ES|]: Tapa}")
        .Says(
            "CFG2017 `english` is not a language code\nto fix: use two letters, such as `en` or `es`",
            "CFG2017 `ES` is not a language code\nto fix: use two letters, such as `en` or `es`");

    [Fact]
    public void A_translation_is_a_single_text() => Check.Small
        .Changing(SmallCatalogue.Option("film"), "title: Lid film", "title: {en: Lid film, es: [|{|]a: b}, de: [|''|]}")
        .Says("CFG2006 expected a text", "CFG2006 there is no value");
}
