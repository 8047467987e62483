using Configurator.Core.Model;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

public class NotesBindingTests
{
    private const string Film = "options/small/film.md";

    [Fact]
    public void Each_section_reaches_its_subject_and_its_step()
    {
        var notes = Check.Small.At(Film,
            """

            ## Sales

            Seals *every* cup.

            ## Sanitation

            ### Run out

            1. Run the film out.

            ### Pre-rinse

            1. Cover the roll.

            ### Dry and release

            - Dry the rollers.

            """).Catalogue.Options[new("film")].Notes.Sections;
        Assert.Equal(
            [
                (NoteSubject.Sales, null, 4, "Seals *every* cup.\n"),
                (NoteSubject.Sanitation, CleaningStep.RunOut, 10, "1. Run the film out.\n"),
                (NoteSubject.Sanitation, CleaningStep.PreRinse, 14, "1. Cover the roll.\n"),
                (NoteSubject.Sanitation, CleaningStep.DryAndRelease, 18, "- Dry the rollers.\n"),
            ],
            notes.Select(note => (note.Subject, note.Step, note.Span.Line, note.Markdown)));
    }

    // Source: the closed list of steps in the format's page, in the order of a wet clean.
    [Theory]
    [InlineData("Run out", CleaningStep.RunOut)]
    [InlineData("Flush", CleaningStep.Flush)]
    [InlineData("Park", CleaningStep.Park)]
    [InlineData("Heat off", CleaningStep.HeatOff)]
    [InlineData("Gas off", CleaningStep.GasOff)]
    [InlineData("Selector", CleaningStep.Selector)]
    [InlineData("Access", CleaningStep.Access)]
    [InlineData("Dry clean and secure", CleaningStep.DryCleanAndSecure)]
    [InlineData("Pre-rinse", CleaningStep.PreRinse)]
    [InlineData("Foam and scrub", CleaningStep.FoamAndScrub)]
    [InlineData("Rinse", CleaningStep.Rinse)]
    [InlineData("Inspect", CleaningStep.Inspect)]
    [InlineData("Sanitize", CleaningStep.Sanitize)]
    [InlineData("Dry and release", CleaningStep.DryAndRelease)]
    public void Every_cleaning_step_has_its_heading(string heading, CleaningStep step) => Assert.Equal(
        step, Assert.Single(Check.Small.At(Film, $"## Sanitation\n### {heading}\nx\n").Catalogue.Options[new("film")].Notes.Sections).Step);

    [Fact]
    public void A_heading_that_no_document_takes_is_marked() => Check.Small
        .At(Film, "## Sales\nx\n## [|Servise|]\ny\n")
        .Says("CFG2018 no document takes a section `Servise`\nto fix: replace it with `Service`");

    [Fact]
    public void A_heading_like_no_other_is_answered_with_all() => Check.Small
        .At(Film, "## [|History|]\ny\n")
        .Says("CFG2018 no document takes a section `History`\nto fix: use one of `Operation`, `Sales`, `Sanitation`, `Service`, `Wiring`");

    [Fact]
    public void A_step_that_is_not_in_the_list_is_marked() => Check.Small
        .At(Film, "## Sanitation\n### [|Prerinse|]\ny\n")
        .Says("CFG2018 no document takes a section `Prerinse`\nto fix: replace it with `Pre-rinse`");

    [Fact]
    public void A_sanitation_note_that_names_no_step_is_refused_where_it_starts() => Check.Small
        .At(Film, "## Sanitation\n\n[||]Run the film out.\n\n### Rinse\nx\n")
        .Says("CFG2025 a crew cannot tell when this is to be done\nto fix: put it under a heading that names its step, such as `### Run out` or `### Foam and scrub`");

    [Fact]
    public void Small_headings_outside_sanitation_are_text() => Assert.Equal(
        "### Rolls\nx\n", Assert.Single(Check.Small.At(Film, "## Service\n### Rolls\nx\n").Catalogue.Options[new("film")].Notes.Sections).Markdown);

    [Fact]
    public void Text_before_the_first_heading_is_reported_where_it_stands() => Check.Small
        .At(Film, "\n[||]Film from a roll.\n\n## Sales\nx\n")
        .Says("CFG2018 text before the first heading appears in no document\nto fix: put it under a heading such as `## Sales`");

    [Fact]
    public void A_heading_inside_a_code_fence_is_code() => Assert.Equal(
        "```\n## Not a heading\n```\n", Assert.Single(Check.Small.At(Film, "## Service\n```\n## Not a heading\n```\n").Catalogue.Options[new("film")].Notes.Sections).Markdown);

    [Fact]
    public void Notes_in_another_language_carry_it_in_their_name() => Assert.Equal(
        ["en", "es"],
        Check.Small.At(Film, "## Sales\nx\n").At("options/small/film.es.md", "## Sales\ny\n").Catalogue.Options[new("film")].Notes.Sections
            .Select(note => note.Language).Order(StringComparer.Ordinal));

    [Fact]
    public void Headings_stay_english_in_every_language() => Check.Small
        .At("options/small/film.es.md", "## [|Ventas|]\ny\n")
        .Says("CFG2018 no document takes a section `Ventas`");

    [Theory]
    [InlineData("options/small/foil.md", "option")]
    [InlineData("options/devices/lamp.md", "device")]
    [InlineData("machines/cup-two/about.md", "machine")]
    [InlineData("machines/cup-one/other.md", "definition")]
    public void Notes_beside_no_definition_are_reported(string path, string what) => Check.Small
        .At(path, "[||]## Sales\nx\n")
        .Says($"CFG2018 there is no {what} beside these notes\nto fix: rename the file after its definition, or delete it");

    [Fact]
    public void Notes_of_an_option_in_another_familys_folder_are_beside_no_definition() => Check.Small
        .At("options/other/film.md", "[||]## Sales\nx\n")
        .Says("CFG2018 there is no option beside these notes");

    [Fact]
    public void Notes_of_a_faulty_option_are_not_reported_as_well() => Check.Small
        .At(Film, "## Sales\nx\n")
        .Changing(SmallCatalogue.Option("film"), "summary: Seals every cup with film from a roll", "summary:[||]")
        .Says("CFG2006 there is no value");

    [Fact]
    public void The_prose_of_a_machine_is_kept_whole() =>
        Assert.Equal("# Anything\n", Check.Small.At("machines/cup-one/about.md", "# Anything\n").TheMachine.About!.Text);

    [Fact]
    public void A_language_in_a_name_is_two_letters() => Check.Small
        .At("options/small/film.spanish.md", "[||]## Sales\nx\n")
        .Says("CFG2018 there is no option beside these notes");
}
