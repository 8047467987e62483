using Configurator.Core.Model;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

public class RecipeBindingTests
{
    [Theory]
    [InlineData("[|cup-ey|]: {threshold: 42 percent}", "there is no fit `cup-ey`", "replace it with `cup-eye`")]
    [InlineData("[|cup-eye/2|]: {threshold: 42 percent}", "there is no fit `cup-eye/2`", "replace it with `cup-eye/1`")]
    [InlineData("cup-eye: {[|treshold|]: 42 percent}", "there is no parameter of `eye` `treshold`", "replace it with `threshold`")]
    public void A_name_that_is_not_there_is_marked(string settings, string message, string fix) => Check.Small
        .Changing(SmallCatalogue.Water, "cup-eye: {threshold: 42 percent}", settings)
        .Says($"CFG2003 {message}\nto fix: {fix}");

    [Theory]
    [InlineData("[|42|]", "a value in `percent`")]
    [InlineData("[|42 mm|]", "a value in `percent`")]
    [InlineData("[|high|]", "a value in `percent`")]
    [InlineData("[|42%|]", "a value in `percent`")]
    [InlineData("[|16 AWG|]", "a value in `percent`")]
    public void A_value_that_does_not_fit_its_parameter_is_marked(string value, string wanted)
    {
        var text = value[2..^2];
        Check.Small.Changing(SmallCatalogue.Water, "42 percent", value)
            .Says($"CFG2019 `{text}` does not fit the parameter `threshold`\nto fix: write {wanted}");
    }

    [Theory]
    [InlineData("Cup-eye")]
    [InlineData("cup-eye/0")]
    [InlineData("cup-eye/x")]
    [InlineData("cup-check/cup-eye/1")]
    public void Settings_are_kept_by_fit_or_by_fit_and_ordinal(string key) => Check.Small
        .Changing(SmallCatalogue.Water, "cup-eye:", $"[|{key}|]:")
        .Says($"CFG2006 `{key}` is not a fit, or `FIT/ORDINAL` such as `mark-eye/2`");

    [Fact]
    public void Settings_of_one_instance_come_before_those_of_its_fit()
    {
        var recipe = Check.Small
            .Changing(SmallCatalogue.Option("cup-check"), "stations: [outfeed]", "stations: [outfeed, filler]")
            .Changing(SmallCatalogue.PortPlan, "  standard/guard/1", "  cup-check/cup-eye/2: front:4\n  standard/guard/1")
            .Changing(SmallCatalogue.Water, "cup-eye: {threshold: 42 percent}", "cup-eye: {threshold: 42 percent}\n  cup-eye/2: {threshold: 7 percent}")
            .Catalogue.Recipes.Single();
        Assert.Equal(("42", "7"), (Threshold(recipe, 1), Threshold(recipe, 2)));
    }

    [Fact]
    public void A_list_of_settings_is_no_map() => Check.Small
        .Changing(SmallCatalogue.Water, "cup-eye: {threshold: 42 percent}", "cup-eye: [|42 percent|]")
        .Says("CFG2006 expected a map");

    [Fact]
    public void Settings_for_the_fit_of_a_faulty_option_are_not_judged() => Check.Small
        .Changing(SmallCatalogue.Option("cup-check"), "fit: cup-eye", "fit: [|Cup-eye|]")
        .Says("CFG2007 `Cup-eye` is not made of lower-case words and digits joined by hyphens");

    [Fact]
    public void Settings_for_a_faulty_device_are_not_judged() => Check.Small
        .Changing(SmallCatalogue.Device("eye"), "parameter: threshold", "parameter: [|Threshold|]")
        .Says("CFG2007 `Threshold` is not made of lower-case words and digits joined by hyphens\nto fix: replace it with `threshold`");

    [Fact]
    public void A_recipe_says_nothing_of_a_fit_that_has_no_parameters() => Check.Small
        .Changing(SmallCatalogue.Water, "cup-eye: {threshold: 42 percent}", "count-eye: {[|threshold|]: 42 percent}")
        .Says("CFG2003 there is no parameter of `prox` `threshold`");

    private static string Threshold(Recipe recipe, int ordinal) =>
        recipe.For(new("cup-check", new("cup-eye"), ordinal))!.Values["threshold"].Number.ToString()!;
}
