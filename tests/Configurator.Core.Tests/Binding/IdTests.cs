using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

public class IdTests
{
    private const string Form = "is not made of lower-case words and digits joined by hyphens";

    [Theory]
    [InlineData("Outfeed", "outfeed")]
    [InlineData("out feed", "out-feed")]
    [InlineData("out_feed", "out-feed")]
    [InlineData("out--feed", "out-feed")]
    [InlineData("outfeed-", "outfeed")]
    [InlineData("-outfeed", "outfeed")]
    public void A_malformed_id_is_reported_with_a_well_formed_one(string id, string mended) => Check.Small
        .Machine("station: outfeed, title", $"station: [|{id}|], title")
        .Changing(SmallCatalogue.Option("cup-check"), "[outfeed]", $"[{mended}]")
        .Changing(SmallCatalogue.Option("heads"), "outfeed]", $"{mended}]")
        .Changing(SmallCatalogue.Option("counter"), "count-hub, device: hub-4, stations: [outfeed]", $"count-hub, device: hub-4, stations: [{mended}]")
        .Changing(SmallCatalogue.Option("counter"), "count-eye, device: prox, stations: [outfeed]", $"count-eye, device: prox, stations: [{mended}]")
        .Machine("device: master-4, station: outfeed", $"device: master-4, station: {mended}")
        .Says($"CFG2007 `{id}` {Form}\nto fix: replace it with `{mended}`");

    [Theory]
    [InlineData("2nd-lid")]
    [InlineData("\u0440\u0443\u043B\u043E\u043D")]
    [InlineData("!!")]
    public void An_id_of_which_nothing_can_be_kept_is_reported(string id) => Check.Small
        .Machine("choice: lid", $"choice: [|\"{id}\"|]")
        .Says($"CFG2007 `{id}` {Form}\nto fix: choose words such as `lid-mark-sensor`");

    // Source: names that Windows keeps for devices (Win32 file naming), and words that definitions use themselves.
    [Theory]
    [InlineData("con")]
    [InlineData("true")]
    [InlineData("null")]
    [InlineData("no")]
    [InlineData("off")]
    [InlineData("aux")]
    [InlineData("nul")]
    [InlineData("com1")]
    [InlineData("lpt9")]
    [InlineData("standard")]
    [InlineData("direct")]
    public void A_reserved_name_is_no_id(string id) => Check.Small
        .Machine("choice: lid", $"choice: [|{id}|]")
        .Says($"CFG2007 `{id}` is a reserved name");

    [Fact]
    public void An_id_of_sixty_four_characters_is_accepted() =>
        Check.Small.Machine("choice: lid", "choice: " + new string('a', 64)).Says();

    [Fact]
    public void An_id_of_sixty_five_characters_is_not() => Check.Small
        .Machine("choice: lid", $"choice: [|{new string('a', 65)}|]")
        .Says($"CFG2007 `{new string('a', 65)}` has 65 characters; 64 is the limit\nto fix: choose words such as `lid-mark-sensor`");

    [Fact]
    public void An_id_that_is_not_its_files_name_is_reported_with_that_name() => Check.Small
        .Changing(SmallCatalogue.Option("agitator"), "option: agitator", "option: [|stirring|]")
        .Says(
            """
            CFG2009 the id `stirring` differs from the name `agitator` of its file
            to fix: replace it with `agitator`, or rename
            """);

    [Fact]
    public void A_machine_is_named_by_its_folder() => Check.Small
        .Machine("machine: cup-one", "machine: [|cup-two|]")
        .Says("CFG2009 the id `cup-two` differs from the name `cup-one` of its folder");

    [Fact]
    public void A_port_plan_is_named_by_its_folder() => Check.Small
        .Changing(SmallCatalogue.PortPlan, "port-plan: cup-one", "port-plan: [|cup-two|]")
        .Says("CFG2009 the id `cup-two` differs from the name `cup-one` of its folder");

    [Theory]
    [InlineData(SmallCatalogue.Plain)]
    [InlineData(SmallCatalogue.Delivered)]
    public void A_record_names_the_machine_in_whose_folder_it_lies(string path) => Check.Small
        .Changing(path, "machine: cup-one", "machine: [|cup-two|]")
        .Says("CFG2009 the id `cup-two` differs from the name `cup-one` of its folder");

    [Fact]
    public void A_recipe_of_another_machine_in_this_folder_is_reported_and_not_missed() => Check.Small
        .Changing(SmallCatalogue.Water, "machine: cup-one", "machine: [|cup-two|]")
        .Says("CFG2009 the id `cup-two` differs from the name `cup-one` of its folder");

    [Fact]
    public void An_id_taken_twice_is_reported_at_both_places() => Check.Small
        .At("options/other/film.yaml", "option: (|film|)\ntitle: Film\nsummary: Film\noffered-on: [cup-one]\n")
        .Changing(SmallCatalogue.Option("film"), "option: film", "option: [|film|]")
        .Says("CFG2008 the option `film` is already taken\nnote: it is taken here\nto fix: choose another name");

    [Fact]
    public void A_station_taken_twice_is_reported_at_the_second() => Check.Small
        .Machine("- {station: filler, title: Filler", "- {station: (|filler|), title: Filler, area: wet, node: middle, drop: 1 m}\n  - {station: [|filler|], title: Filler")
        .Says("CFG2008 the station `filler` is already taken\nnote: it is taken here");

    [Theory]
    [InlineData("- {area: wet,", "- {area: (|wet|), title: a, class: food, wash: dry}\n  - {area: [|wet|],", "area `wet`")]
    [InlineData("- {node: middle,", "- {node: (|middle|), x: 3 m, y: 0 m, z: 2 m}\n    - {node: [|middle|],", "node `middle`")]
    [InlineData("- {master: extra,", "- {master: (|extra|), device: master-4, station: filler}\n    - {master: [|extra|],", "master `extra`")]
    [InlineData("- choice: lid", "- {choice: (|lid|), title: a, take: one-or-more, of: [film, precut, heads]}\n  - choice: [|lid|]", "choice `lid`")]
    public void A_name_taken_twice_on_a_machine_is_reported_at_the_second(string was, string now, string name) =>
        Check.Small.Machine(was, now).Says($"CFG2008 the {name} is already taken\nnote: it is taken here");
}
