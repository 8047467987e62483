using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

public class KeyTests
{
    [Fact]
    public void An_unknown_key_is_marked_and_the_nearest_that_is_absent_is_offered() => Check.Small
        .Changing(SmallCatalogue.Device("eye"), "current: 40 mA", "current: 40 mA\n[|reponse|]: 0.5 ms")
        .Says(
            """
            CFG2004 a device has no key `reponse`
            to fix: replace it with `response`
            """);

    [Fact]
    public void A_misspelt_key_is_not_missing_as_well() => Check.Small
        .Changing(SmallCatalogue.Option("film"), "summary:", "[|sumary|]:")
        .Says(
            """
            CFG2004 an option has no key `sumary`
            to fix: replace it with `summary`
            """);

    [Fact]
    public void A_key_that_is_like_no_other_is_answered_with_all_that_there_are() => Check.Small
        .Machine("{from: box-top, to: middle}", "{from: box-top, to: middle, [|colour|]: red}")
        .Says(
            """
            CFG2004 an edge has no key `colour`
            to fix: use one of `from`, `to`, `length`
            """);

    [Fact]
    public void A_key_that_is_there_already_is_not_offered_again() => Check.Small
        .Changing(SmallCatalogue.Option("film"), "title: Lid film", "title: Lid film\n[|titel|]: Film")
        .Says(
            """
            CFG2004 an option has no key `titel`
            to fix: use one of `option`, `title`, `summary`, `formerly`, `offered-on`, `quantity`, `requires`, `not-with`, `comes-with`, `price`, `lead-time`, `released`, `markets`, `rate-at-most`, `raises-rate`, `fits`, `washing`, `touches-box`
            """);

    [Fact]
    public void A_missing_key_is_reported_where_its_map_starts_with_what_to_write() => Check.Small
        .Machine("{station: outfeed, title: Outfeed, area: wet, node: far-end, drop: 700 mm}", "[|{|]station: outfeed, title: Outfeed, area: wet, node: far-end}")
        .Says(
            """
            CFG2005 this station lacks `drop`
            to fix: add `drop:` and a quantity with its unit, such as `600 mm`
            """);

    [Fact]
    public void Two_missing_keys_of_a_definition_are_both_reported_at_its_first_key() => Check.Small
        .With("[|[|option|]|]: rinse\noffered-on: [cup-one]\n")
        .Says("CFG2005 this option lacks `summary`", "CFG2005 this option lacks `title`");

    [Fact]
    public void Every_level_reports_its_own_mistakes_in_one_run() => Check.Small
        .Machine("document: C1", "document: [|c1|]")
        .Machine("wash: foam", "wash: [|soap|]")
        .Machine("drop: 500 mm", "drop: [|500|]")
        .Says(
            "CFG2006 `c1` is not capital letters and digits such as `P4`",
            "CFG2012 `soap` is not one of `dry`, `foam`, `hot-high-pressure`, `rinse`",
            "CFG2010 `500` has no unit");

    [Fact]
    public void A_key_without_a_value_is_marked_behind_its_colon() => Check.Small
        .Changing(SmallCatalogue.Option("film"), "title: Lid film", "title:[||]")
        .Says(
            """
            CFG2006 there is no value
            to fix: write a text, or a map of languages such as `{en: Lid sensor, es: Sensor de tapa}`, or remove the key
            """);

    [Fact]
    public void A_blank_value_is_no_value() => Check.Small
        .Changing(SmallCatalogue.Option("film"), "title: Lid film", "title: [|\"  \"|]")
        .Says("CFG2006 there is no value");
}
