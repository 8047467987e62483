using Configurator.Core.Logic;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Logic;

/// <summary>An order is completed by what comes with it, and with that again.</summary>
public class CompletionTests
{
    private static readonly Check Chain = Check.Small
        .Changing(SmallCatalogue.Option("film"), "offered-on", "comes-with: [cup-check]\noffered-on")
        .Changing(SmallCatalogue.Option("cup-check"), "offered-on", "comes-with: [heads]\noffered-on")
        .Changing(SmallCatalogue.Option("heads"), "from: 1", "from: 2");

    [Fact]
    public void What_comes_along_brings_what_comes_along_with_it() =>
        Assert.Equal("cup-check 1, film 1, heads 2; added cup-check, heads", Completed(Chain, "film"));

    [Fact]
    public void What_comes_in_numbers_comes_in_the_smallest() => Assert.Equal("cup-check 1, heads 2; added heads", Completed(Chain, "cup-check"));

    [Fact]
    public void What_was_ordered_is_not_added_and_keeps_its_number() =>
        Assert.Equal("cup-check 1, film 1, heads 7; added cup-check", Completed(Chain, "film", "7 x heads"));

    [Fact]
    public void Options_that_bring_each_other_come_once() => Assert.Equal(
        "agitator 1, counter 1; added counter",
        Completed(
            Check.Small
                .Changing(SmallCatalogue.Option("agitator"), "offered-on", "comes-with: [counter]\noffered-on")
                .Changing(SmallCatalogue.Option("counter"), "offered-on", "comes-with: [agitator]\noffered-on"),
            "agitator"));

    [Fact]
    public void An_option_that_is_not_offered_here_is_left_out() => Assert.Equal("film 1; added ", Completed(Check.Small, "film", "waffle"));

    [Fact]
    public void What_nothing_brings_is_not_there() => Assert.Equal("; added ", Completed(Chain));

    private static string Completed(Check check, params string[] picks)
    {
        var configuration = Completion.Complete(check.TheMachine, CheckBuild.OrderOf(picks));
        return string.Join(", ", configuration.Quantities.Select(pair => $"{pair.Key} {pair.Value}")) + "; added " + string.Join(", ", configuration.Added);
    }
}
