using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Documents;

public class SanitationTests
{
    private const string Page = "machines/cup-one/configurations/plain/sanitation.html";

    private static readonly Check WithNotes = Check.Small.At(
        "options/small/film.md",
        """
        ## Sanitation

        ### Heat off

        1. Switch the plate off.

        ### Run out

        1. Run the film out.

        ### Pre-rinse

        1. Cover the roll.

        """);

    [Fact]
    public void What_needs_power_is_done_before_lock_out_in_the_order_of_the_list() => Assert.Equal(
        """
        # Before lock-out, guards shut
        ## Run out
        1. Run the film out.
        ## Heat off
        1. Switch the plate off.
        """,
        WithNotes.Section(Page, "live"));

    [Fact]
    public void Without_anything_to_do_before_lock_out_nothing_is_said_of_it() =>
        Assert.Equal("", Check.Small.Section(Page, "live"));

    [Fact]
    public void A_step_that_nothing_adds_to_is_left_to_the_programme_of_the_plant()
    {
        var steps = WithNotes.Section(Page, "steps");
        Assert.Contains("## Pre-rinse\n1. Cover the roll.\n", steps, StringComparison.Ordinal);
        Assert.Contains("## Sanitize\nAs the plant's programme says.\n", steps, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_kind_of_energy_is_to_be_locked_out() => Assert.Contains(
        "(electric, air, gas, water, steam, product pressure, gravity, heat) before reaching past a guard",
        Check.Small.Section(Page, "before"),
        StringComparison.Ordinal);

    [Fact]
    public void The_page_of_the_option_says_what_comes_before_lock_out_too() => Assert.Equal(
        """
        # Sanitation notes
        Heat off:
        1. Switch the plate off.
        Run out:
        1. Run the film out.
        Pre-rinse:
        1. Cover the roll.
        """,
        WithNotes.Section("options/film.html", "sanitation"));
}
