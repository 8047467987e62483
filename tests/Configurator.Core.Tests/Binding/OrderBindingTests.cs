using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

/// <summary>Published configurations and delivered machines: what was ordered.</summary>
public class OrderBindingTests
{
    [Fact]
    public void An_unknown_option_is_marked() => Check.Small
        .Changing(SmallCatalogue.Plain, "[film, cup-check]", "[film, [|cup-chek|]]")
        .Says("CFG2003 there is no option `cup-chek`\nto fix: replace it with `cup-check`");

    [Fact]
    public void An_option_that_is_not_offered_on_the_machine_is_marked() => Check.Small
        .With("option: foam\ntitle: Foam\nsummary: Foam\noffered-on: []\n")
        .Changing(SmallCatalogue.Plain, "[film, cup-check]", "[film, [|foam|]]")
        .Says("CFG2014 option `foam` is not offered on `cup-one`");

    [Fact]
    public void An_option_ordered_twice_is_marked_at_the_second() => Check.Small
        .Changing(SmallCatalogue.Plain, "[film, cup-check]", "[(|film|), cup-check, [|film|]]")
        .Says("CFG2008 the option of this order `film` is already taken\nnote: it is taken here");

    [Theory]
    [InlineData(SmallCatalogue.Plain)]
    [InlineData(SmallCatalogue.Delivered)]
    public void An_unknown_machine_is_the_folders_mistake(string path) => Check.Small
        .Changing(path, "machine: cup-one", "machine: [|cup-1|]")
        .Says("CFG2009 the id `cup-1` differs from the name `cup-one` of its folder");

    [Theory]
    [InlineData("heads: [|3|]", "`heads` cannot be ordered 3 times", "write a number from 1 to 2")]
    [InlineData("cup-check: [|2|]", "`cup-check` cannot be ordered 2 times", "write 1, or leave it out")]
    public void A_quantity_that_cannot_be_ordered_is_marked(string quantity, string message, string fix) => Check.Small
        .Changing(SmallCatalogue.Plain, "recipes:", $"quantities: {{{quantity}}}\nrecipes:")
        .Says($"CFG2020 option {message}\nto fix: {fix}");

    [Theory]
    [InlineData("heads: [|0|]", "CFG2013 `0` is not a whole number from 1 to 60")]
    [InlineData("heads: [|61|]", "CFG2013 `61` is not a whole number from 1 to 60")]
    [InlineData("heads: [|two|]", "CFG2006 `two` is not a whole number from 1 to 60")]
    [InlineData("[|head|]: 1", "CFG2003 there is no option `head`")]
    public void A_quantity_that_says_nothing_is_marked(string quantity, string message) => Check.Small
        .Changing(SmallCatalogue.Plain, "recipes:", $"quantities: {{{quantity}}}\nrecipes:")
        .Says(message);

    [Fact]
    public void A_quantity_alone_orders_its_option()
    {
        var order = Check.Small.Changing(SmallCatalogue.Plain, "recipes:", "quantities: {heads: 2}\nrecipes:").Catalogue.Configurations.Single().Order;
        Assert.Equal(["cup-check 1", "film 1", "heads 2"], order.Picks.Select(pick => $"{pick.Key} {pick.Value}"));
    }

    [Fact]
    public void A_document_number_taken_twice_is_marked_at_the_second() => Check.Small
        .Changing(SmallCatalogue.Plain, "document: C1-101", "document: [|C1-101|]")
        .With("configuration: other\nmachine: cup-one\ntitle: Other\ndocument: (|C1-101|)\noptions: [film]\nrevision: A\n")
        .Says("CFG2008 the document number `C1-101` is already taken\nnote: it is taken here\nto fix: choose another name");

    [Fact]
    public void A_document_number_that_differs_in_case_alone_has_not_its_form() => Check.Small
        .Changing(SmallCatalogue.Plain, "document: C1-101", "document: [|c1-101|]")
        .Says("CFG2006 `c1-101` is not a document number such as `P4-101`");

    [Fact]
    public void A_configuration_of_two_machines_is_marked_at_the_second() => Check.Small
        .With(SmallCatalogue.SecondMachine)
        .Changing(SmallCatalogue.Plain, "configuration: plain", "configuration: (|plain|)")
        .At("machines/cup-two/configurations/plain.yaml", "configuration: [|plain|]\nmachine: cup-two\ntitle: Plain\ndocument: C2-1\noptions: []\nrevision: A\n")
        .Says("CFG2008 the configuration `plain` is already taken\nnote: it is taken here");

    [Fact]
    public void An_unknown_recipe_is_marked() => Check.Small
        .Changing(SmallCatalogue.Plain, "recipes: [water]", "recipes: [[|watr|]]")
        .Says("CFG2003 there is no recipe `watr`\nto fix: replace it with `water`");

    [Theory]
    [InlineData("released: {by: controls lead}", "[|{|]by: controls lead}", "this release lacks `on`")]
    [InlineData("released: {on: 2026-10-02}", "[|{|]on: 2026-10-02}", "this release lacks `by`")]
    [InlineData("accepted: [{finding: a, by: b, because: c}]", "[[|{|]finding: a, by: b, because: c}]", "this accepted deviation lacks `until`")]
    [InlineData("history: [{revision: A, by: b, change: c}]", "[[|{|]revision: A, by: b, change: c}]", "this revision step lacks `on`")]
    public void A_record_under_document_control_is_whole(string line, string marked, string message) => Check.Small
        .Changing(SmallCatalogue.Plain, "revision: A\n", $"revision: A\n{line.Split(": ")[0]}: {marked}\n")
        .Says("CFG2005 " + message);

    [Fact]
    public void An_order_of_a_faulty_option_is_not_judged() => Check.Small
        .Changing(SmallCatalogue.Option("film"), "title: Lid film", "[|titel|]: Lid film")
        .Says("CFG2004 an option has no key `titel`");

    [Fact]
    public void What_a_delivered_machine_has_is_bound_like_an_order() => Check.Small
        .Changing(SmallCatalogue.Delivered, "[film, cup-check]", "[film, cup-check, [|stirring|]]")
        .Says("CFG2003 there is no option `stirring`");

    [Fact]
    public void A_delivered_machine_names_its_homes_like_the_plan() => Check.Small
        .Changing(SmallCatalogue.Delivered, "cup-check/cup-eye/1: front:1", "cup-check/cup-eye/1: [|frnt|]:1")
        .Says("CFG2003 there is no master or hub `frnt`\nto fix: replace it with `front`");
}
