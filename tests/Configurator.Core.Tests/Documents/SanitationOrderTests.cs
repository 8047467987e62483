using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Configurator.Core.Documents;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Model;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Documents;

/// <summary>What the crew's sheets must get right in their order: power, lock, try, open; then power again.</summary>
public class SanitationOrderTests
{
    private static readonly Lazy<ImmutableArray<Page>> Sheets = new(() =>
        [.. DemoCatalogue.Documents.Pages.Where(page => page.Kind == "sanitation")]);

    // Source: common practice, no source: empty and flushed first, then cooling, gas, keys; guards last of all.
    [Fact]
    public void What_needs_power_stands_in_one_order_whatever_brings_it()
    {
        var order = CleaningSteps.UnderPower.Select(step => $"before-{WordLists.Plain(step).Replace(' ', '-')}").ToList();
        Assert.All(Sheets.Value, page =>
        {
            var ids = Steps(page).Select(step => step.Id).Where(id => !id.StartsWith("step-", StringComparison.Ordinal)).ToList();
            Assert.Equal(order.Where(ids.Contains), ids);
        });
    }

    // Source: 29 CFR 1910.147(d): isolate, lock, relieve, verify, and only then work.
    [Fact]
    public void Everything_is_locked_then_tried_then_opened() => Assert.All(
        Sheets.Value,
        page => Assert.Equal(
            [page.Words.LockAll, page.Words.TryIt, page.Words.OpenNow],
            Steps(page).Single(step => step.Id == "step-1").Lines.Take(3)));

    // The panel is dark from lock-out on, so nothing may be read off it there.
    [Theory]
    [InlineData("en", "panel shows|on the panel|from the panel|run one row")]
    [InlineData("es", "panel mues|en el panel|desde el panel|pase una fila")]
    public void Nothing_that_needs_power_stands_between_lock_out_and_unlocking(string language, string words) => Assert.All(
        Sheets.Value.Where(page => page.Words.Language == language).SelectMany(Steps)
            .Where(step => step.Id.StartsWith("step-", StringComparison.Ordinal)).SelectMany(step => step.Additions),
        addition => Absent(words, addition.Passage.Markdown));

    [Fact]
    public void Notes_name_a_temperature_together_with_what_measures_it() => Assert.All(
        Sheets.Value.SelectMany(Everything).Where(text => text.Contains("40 °C", StringComparison.Ordinal)),
        text => Assert.True(
            text.Contains("hermometer", StringComparison.Ordinal) || text.Contains("ermómetro", StringComparison.Ordinal)
                || text.Contains("(2 %, 40 °C, 10 min)", StringComparison.Ordinal),
            text));

    [Fact]
    public void Unlocking_comes_before_what_is_tried_and_the_empty_run_before_what_is_seen_in_it()
    {
        var lines = Lists(Sheet("printed-pudding", "en")).Single(list => list.Title.StartsWith("Before production", StringComparison.Ordinal)).Items;
        Assert.Equal("Still locked: tools counted, wash hoods off, parts back; guards back last", lines[0]);
        Assert.StartsWith("Everybody clear", lines[1], StringComparison.Ordinal);
        var start = lines.IndexOf("Guards shut, reset: start empty");
        Assert.StartsWith("Guards shut, reset. Heads lifted clear of the bars", lines[start - 1], StringComparison.Ordinal);
        Assert.StartsWith("Bars still in, each guard", lines[start - 2], StringComparison.Ordinal);
        Assert.StartsWith("Bars still in, each emergency stop", lines[start - 3], StringComparison.Ordinal);
        Assert.StartsWith("Open the air valve", lines[start - 4], StringComparison.Ordinal);
        Assert.Equal("Scrap the first pieces", lines[^1]);
    }

    // Source: common practice, no source: nothing that suffocates or burns is let in before the machine has run empty.
    [Theory]
    [InlineData("flushed-cream", "Nitrogen", "unlock and open the gas hand valve")]
    [InlineData("flushed-mousse", "Nitrogen, Peroxide", "unlock and open the peroxide hand valve")]
    public void Gases_and_media_stay_locked_until_the_machine_has_run_empty(string configuration, string media, string opened)
    {
        var lines = Lists(Sheet(configuration, "en")).Single(list => list.Title.StartsWith("Before production", StringComparison.Ordinal)).Items;
        Assert.EndsWith($"Still locked: {media}", lines[1], StringComparison.Ordinal);
        Assert.Contains(lines.Skip(lines.IndexOf("Guards shut, reset: start empty")), line => line.Contains(opened, StringComparison.Ordinal));
        Assert.True(
            lines.IndexOf("Wait until the room-oxygen lamp is green; not green: all out, air the room")
                < lines.IndexOf("Open the air valve slowly; hands clear"));
    }

    [Fact]
    public void What_is_raised_is_blocked_before_anything_is_switched_off_and_each_bar_comes_out_again() => Assert.All(
        Sheets.Value,
        page =>
        {
            var raised = Blocks<Table>(page).Single(table => table.Id == "energies").Rows
                .Select(row => row.Cells[0].Text).TakeWhile(text => text == page.Words.OfEnergy(Energy.Gravity)).Count();
            var all = Blocks<Table>(page).Single(table => table.Id == "energies").Rows.Count(row => row.Cells[0].Text == page.Words.OfEnergy(Energy.Gravity));
            Assert.Equal(all, raised);
            var parked = Steps(page).Where(step => step.Id == "before-park").SelectMany(step => step.Additions).Count();
            Assert.Equal(all, parked);
            Assert.Equal(all > 0, Steps(page).Any(step => step.Lines.Contains(page.Words.BarsIn)));
            var bars = Lists(page).SelectMany(list => list.Items).SingleOrDefault(line => line.Contains("____ =", StringComparison.Ordinal));
            Assert.Equal(all, bars is null ? 0 : bars.Split('(')[1].Split(')')[0].Split(", ").Length);
        });

    // Source: common practice, no source: what protects is on before the act that it protects from.
    [Fact]
    public void What_protects_is_put_on_before_the_act()
    {
        var mousse = Steps(Sheet("flushed-mousse", "en")).ToList();
        Assert.Contains(
            mousse.Single(step => step.Id == "before-gas-off").Additions,
            addition => addition.Passage.Markdown.Contains("Put on a personal oxygen meter now", StringComparison.Ordinal));
        var dry = mousse.Single(step => step.Id == "step-1").Lines.ToList();
        Assert.True(dry.FindIndex(line => line.Contains("rinse the mist chamber", StringComparison.Ordinal)) is > 0 and var rinse
            && rinse < dry.FindIndex(line => line.StartsWith("Take product", StringComparison.Ordinal)));
        Assert.All(Sheets.Value, page =>
        {
            var rinsing = Steps(page).Single(step => step.Id == "step-2").Lines.ToList();
            Assert.InRange(rinsing.IndexOf(page.Words.HotWaterGear), 0, 1);
        });
    }

    // Source: 29 CFR 1910.1200 labels: chlorine with acid gives chlorine gas.
    [Theory]
    [InlineData("classic-yoghurt", "Acid foam: then quat or peracetic; no chlorinated foam, no chlorine.")]
    [InlineData("classic-yoghurt", "Chlorinated foam: then quat or chlorine; no acid foam, no peracetic.")]
    [InlineData("classic-yoghurt", "Caustic foam: then quat or chlorine or peracetic.")]
    [InlineData("classic-yoghurt", "Peracetic is an acid.")]
    public void Agents_of_one_day_stand_in_one_row(string configuration, string row) => Assert.Contains(
        Steps(Sheet(configuration, "en")).Single(step => step.Id == "step-3").Lines,
        line => line.StartsWith("One row a day.", StringComparison.Ordinal) && line.Contains(row, StringComparison.Ordinal));

    [Fact]
    public void What_is_seen_in_the_first_run_comes_after_the_start()
    {
        var lines = Lists(Sheet("crumble-layers", "en")).Single(list => list.Title.StartsWith("Before production", StringComparison.Ordinal)).Items;
        var start = lines.IndexOf("Guards shut, reset: start empty");
        Assert.Contains("Wash key back in, turned to Production", lines.Take(start));
        Assert.Contains("One row without cups: the panel shows every lane as missing", lines.Skip(start));
    }

    [Fact]
    public void What_must_not_be_covered_is_not_ticked_off() => Assert.All(
        Sheets.Value,
        page => Assert.All(
            Lists(page),
            list => Assert.Equal(list.Title != page.Words.NeverCoverTitle && list.Items[0] != page.Words.Nothing, list.HasBoxes)));

    [Theory]
    [InlineData("crumble-layers", true)]
    [InlineData("flushed-cream", false)]
    public void The_map_says_where_something_fitted_changes_the_washing(string configuration, bool says) => Assert.Equal(
        says,
        Everything(Sheet(configuration, "en")).Any(text => text.Contains("not washed as on the standard machine", StringComparison.Ordinal)));

    [Fact]
    public void The_control_box_is_wiped_and_the_floor_below_it_hosed() => Assert.Contains(
        "Service aisle: hose the floor only, at low pressure. Wipe the control box by hand; never aim at it.",
        Steps(Sheet("classic-yoghurt", "en")).Single(step => step.Id == "step-2").Lines);

    // Source: 29 CFR 1910.134(b) and 1910.146(b) define an oxygen-deficient atmosphere as below 19.5 percent by volume.
    [Theory]
    [InlineData("en", "below 19.5 %", "leave at once; go back in only when")]
    [InlineData("es", "por debajo de 19,5 %", "salga de inmediato; vuelva a entrar solo")]
    public void The_oxygen_level_is_named_with_what_to_do(string language, string level, string order)
    {
        var caution = Blocks<Caution>(Sheet("flushed-cream", language)).SelectMany(block => block.Lines).Single(line => line.Contains(level, StringComparison.Ordinal));
        Assert.Contains(order, caution, StringComparison.Ordinal);
        Assert.Contains(
            Steps(Sheet("flushed-cream", language)).Single(step => step.Id == "before-gas-off").Additions,
            addition => addition.Passage.Markdown.Contains("19", StringComparison.Ordinal));
    }

    [Fact]
    public void Both_languages_give_as_many_orders_at_each_step() => Assert.All(
        Sheets.Value.Where(page => page.Words.Language == "en"),
        page => Assert.Equal(
            Orders(page),
            Orders(Sheets.Value.Single(other => other.Path == page.Path.Replace(".html", ".es.html", StringComparison.Ordinal)))));

    // Words that a crew in the trade does not use, or reads as something else.
    [Fact]
    public void The_spanish_sheets_use_the_words_of_the_trade() => Assert.All(
        Sheets.Value.Where(page => page.Words.Language == "es").SelectMany(Everything),
        text => Absent("consignaci|aire de presurización|purgar|matriz de corte|haragán|bandejas de cables|un palmo|concentrador|choque frío|código local|códigos locales|dentro del chorro|conectores de los actuadores", text));

    private static IEnumerable<(string, int, int)> Orders(Page page) => Steps(page).Select(step => (
        step.Id, step.Lines.Length, step.Additions.Sum(addition => Items(addition.Passage.Markdown).Count())));

    private static void Absent(string words, string text) => Assert.All(
        words.Split('|'), word => Assert.DoesNotContain(word, text, StringComparison.OrdinalIgnoreCase));

    private static Page Sheet(string configuration, string language) => Sheets.Value.Single(page =>
        page.Words.Language == language && page.Path.Contains($"/{configuration}/", StringComparison.Ordinal));

    private static IEnumerable<T> Blocks<T>(Page page) => page.Sections.SelectMany(section => section.Blocks).OfType<T>();

    private static IEnumerable<Step> Steps(Page page) => Blocks<Steps>(page).SelectMany(steps => steps.Items);

    private static IEnumerable<CheckList> Lists(Page page) => Blocks<CheckLists>(page).SelectMany(lists => lists.Lists);

    private static IEnumerable<string> Everything(Page page) =>
        [
            .. Blocks<Caution>(page).SelectMany(caution => caution.Lines),
            .. Blocks<Paragraph>(page).Select(paragraph => paragraph.Text),
            .. Blocks<Table>(page).SelectMany(table => table.Rows).SelectMany(row => row.Cells).Select(cell => cell.Text),
            .. Steps(page).SelectMany(step => step.Lines),
            .. Steps(page).SelectMany(step => step.Additions).SelectMany(addition => Items(addition.Passage.Markdown)),
            .. Lists(page).SelectMany(list => list.Items),
        ];

    /// <summary>The orders of a note, each on one line.</summary>
    private static IEnumerable<string> Items(string markdown) =>
        Regex.Split(markdown, @"^\d+\. ", RegexOptions.Multiline | RegexOptions.NonBacktracking).Select(item => item.Replace("\n   ", " ", StringComparison.Ordinal));
}
