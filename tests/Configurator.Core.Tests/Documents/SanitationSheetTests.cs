using System.Collections.Immutable;
using Configurator.Core.Documents;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering;
using Configurator.Core.Logic;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Documents;

/// <summary>The sanitation sheets of the demonstration catalogue, as a crew gets them.</summary>
public class SanitationSheetTests
{
    private static readonly Lazy<ImmutableArray<Page>> Sheets = new(() =>
        [
            .. Documenter
                .Compose(Engineer.Compute(Prover.Prove(DemoCatalogue.Whole)).Value, "")
                .Value.Pages.Where(page => page.Kind == "sanitation"),
        ]);

    [Fact]
    public void Every_configuration_has_a_sheet_in_both_languages() => Assert.Equal(
        [("en", 13), ("es", 13)],
        Sheets.Value.GroupBy(page => page.Words.Language).Select(pages => (pages.Key, pages.Count())).Order());

    [Fact]
    public void The_spanish_sheets_are_spanish_throughout() => Assert.All(
        Sheets.Value.Where(page => page.Words.Language == "es").SelectMany(Additions),
        addition => Assert.Null(addition.Passage.Language));

    [Fact]
    public void The_switch_leads_from_one_language_to_the_other() => Assert.All(
        Sheets.Value,
        page => Assert.Equal(
            page.Words.Language == "en" ? [null, "sanitation.es.html"] : ["sanitation.html", null],
            page.Translations.Select(translation => translation.Href)));

    // Source: the hazards that the definitions name; nobody is warned of what is not there.
    [Theory]
    [InlineData("printed-pudding", "Laser", true)]
    [InlineData("classic-yoghurt", "Laser", false)]
    [InlineData("flushed-cream", "Nitrogen suffocates", true)]
    [InlineData("classic-yoghurt", "Nitrogen suffocates", false)]
    [InlineData("flushed-mousse", "Hydrogen peroxide", true)]
    [InlineData("crumble-layers", "Hot water scalds", true)]
    [InlineData("flushed-cream", "Hot water scalds", true)]
    [InlineData("wash-hall-drink", "Ultraviolet light", true)]
    [InlineData("classic-yoghurt", "The raised seal head", true)]
    [InlineData("fruit-puree", "The raised seal head", false)]
    public void A_caution_stands_where_something_fitted_calls_for_it(string configuration, string start, bool stands) =>
        Assert.Equal(
            stands,
            Blocks<Caution>(Sheet(configuration)).SelectMany(caution => caution.Lines).Any(line =>
                line.StartsWith(start, StringComparison.Ordinal)));

    [Fact]
    public void Purge_air_is_kept_on_and_the_reason_is_given() => Assert.Contains(
        "Purge air | KEEP ON | It keeps water out of the motors",
        Blocks<Table>(Sheet("crumble-layers")).SelectMany(table => table.Rows).Select(row =>
            string.Join(" | ", row.Cells.Select(cell => cell.Text))));

    [Fact]
    public void The_upgrade_sends_the_hot_lance_where_it_may_go_and_keeps_it_from_the_aisle()
    {
        var rinse = Lines(Sheet("crumble-layers"), "step-2");
        Assert.Contains(
            "Cup and film zone, Filling and sealing zone, Lower frame, Outfeed zone: hot water to 80 °C (175 °F), lance moving, 0.5 m (20 in) from lenses, motors, connectors, seals and bearings.",
            rinse);
        Assert.Contains("Service aisle: hose the floor only, at low pressure. Wipe the control box by hand; never aim at it.", rinse);
        Assert.DoesNotContain("Service aisle: low pressure only, from the hose.", rinse);
    }

    [Fact]
    public void The_steps_stand_in_the_order_of_the_closed_list() => Assert.All(
        Sheets.Value,
        page => Assert.Equal(
            Enumerable.Range(1, 7).Select(number => $"step-{number}"),
            Blocks<Steps>(page).SelectMany(steps => steps.Items).Select(step => step.Id).Where(id => id.StartsWith("step-", StringComparison.Ordinal))));

    // Source: common practice, no source: an order that is read once and done has at most about thirty words.
    [Fact]
    public void An_order_is_short() => Assert.All(
        Sheets.Value.SelectMany(page => Blocks<Steps>(page)).SelectMany(steps => steps.Items).SelectMany(step => step.Lines),
        line => Assert.All(
            line.Split(". "),
            sentence => Assert.True(sentence.Split(' ').Length <= 40, sentence)));

    private static Page Sheet(string configuration) => Sheets.Value.Single(page =>
        page.Path.EndsWith($"/{configuration}/sanitation.html", StringComparison.Ordinal));

    private static IEnumerable<T> Blocks<T>(Page page) => page.Sections.SelectMany(section => section.Blocks).OfType<T>();

    private static IEnumerable<Addition> Additions(Page page) =>
        Blocks<Steps>(page).SelectMany(steps => steps.Items).SelectMany(step => step.Additions);

    private static ImmutableArray<string> Lines(Page page, string step) =>
        Blocks<Steps>(page).SelectMany(steps => steps.Items).Single(item => item.Id == step).Lines;
}
