using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

public class ParameterBindingTests
{
    private static readonly string Eye = SmallCatalogue.Device("eye");

    [Fact]
    public void A_parameter_has_words_or_a_range() => Check.Small
        .Changing(Eye, "{parameter: pulses, title: Pulses a cup, index: 62, type: uint8, from: 1, to: 200, step: 1}", "{parameter: [|pulses|], title: Pulses a cup, index: 62, type: uint8}")
        .Says("CFG2005 `from` is missing: a parameter has `words`, or `from`, `to` and `step` in one unit\nto fix: add `from:`");

    [Fact]
    public void A_range_has_both_ends() => Check.Small
        .Changing(Eye, "parameter: pulses", "parameter: [|pulses|]")
        .Changing(Eye, "from: 1, to: 200, step: 1", "from: 1, step: 1")
        .Says("CFG2005 `to` is missing: a parameter has `words`, or `from`, `to` and `step` in one unit");

    [Fact]
    public void A_range_is_in_one_unit() => Check.Small
        .Changing(Eye, "parameter: hold", "parameter: [|hold|]")
        .Changing(Eye, "to: 500 ms", "to: 0.5 s")
        .Says("CFG2005 `to` is missing: a parameter has `words`, or `from`, `to` and `step` in one unit");

    [Fact]
    public void A_parameter_taken_twice_is_reported_at_the_second() => Check.Small
        .Changing(Eye, "parameter: output", "parameter: (|output|)")
        .Changing(Eye, "parameter: pulses", "parameter: [|output|]")
        .Says("CFG2008 the parameter `output` is already taken\nnote: it is taken here");

    [Theory]
    [InlineData("from: 0 ms", "from: [|low|]", "`low` does not fit the parameter `hold`")]
    [InlineData("from: 0 ms", "from: [|0ms|]", "`0ms` does not fit the parameter `hold`")]
    [InlineData("from: 0 ms", "from: [|10 AWG|]", "`10 AWG` does not fit the parameter `hold`")]
    public void An_end_of_a_range_is_a_number_or_a_quantity(string was, string now, string message) => Check.Small
        .Changing(Eye, was, now)
        .Says($"CFG2019 {message}\nto fix: write a bare number or a quantity such as `40 percent`");

    // Source: IO-Link Interface and System Specification v1.1.x: indices have 16 bits, subindices 8.
    [Theory]
    [InlineData("index: 62", "index: [|65536|]", "`65536` is not a whole number from 0 to 65535")]
    [InlineData("index: 62", "index: 62, subindex: [|256|]", "`256` is not a whole number from 0 to 255")]
    public void An_index_has_its_range(string was, string now, string message) => Check.Small
        .Changing(Eye, was, now)
        .Says("CFG2013 " + message);

    [Theory]
    [InlineData("output: light", "output: [|bright|]", "`bright` does not fit the parameter `output`", "one of `light`, `dark`")]
    [InlineData("output: light", "output: [|0|]", "`0` does not fit the parameter `output`", "one of `light`, `dark`")]
    [InlineData("output: light", "pulses: [|4 ms|]", "`4 ms` does not fit the parameter `pulses`", "a bare number")]
    [InlineData("output: light", "hold: [|20|]", "`20` does not fit the parameter `hold`", "a value in `ms`")]
    [InlineData("output: light", "hold: [|2 V|]", "`2 V` does not fit the parameter `hold`", "a value in `ms`")]
    [InlineData("output: light", "hold: [|12ms|]", "`12ms` does not fit the parameter `hold`", "a value in `ms`")]
    public void A_fixed_value_has_its_parameters_form(string was, string now, string message, string wanted) => Check.Small
        .Changing(SmallCatalogue.Option("cup-check"), was, now)
        .Says($"CFG2019 {message}\nto fix: write {wanted}");

    [Theory]
    [InlineData("hold: 20 ms")]
    [InlineData("hold: 0.02 s")]
    [InlineData("pulses: 4")]
    [InlineData("output: dark")]
    public void A_value_of_the_parameters_form_is_accepted_in_any_unit(string set) => Check.Small
        .Changing(SmallCatalogue.Option("cup-check"), "output: light", set)
        .Says();

    [Fact]
    public void A_recipes_value_is_kept_in_the_parameters_unit()
    {
        var recipe = Check.Small.Changing(SmallCatalogue.Water, "threshold: 42 percent", "hold: 0.25 s").Catalogue.Recipes.Single();
        Assert.Equal("250", recipe.Settings.Single().Values["hold"].Number.ToString());
    }

    [Fact]
    public void A_smallest_value_above_the_largest_is_reported_at_both() => Check.Small
        .Changing(SmallCatalogue.Device("eye"), "from: 0 ms, to: 500 ms", "from: [|600 ms|], to: (|500 ms|)")
        .Says("CFG2013 `from: 600 ms` is above `to: 500 ms`\nto fix: swap `from` and `to`");

    // Source: ISO 4217 names currencies, not rates between them.
    [Fact]
    public void A_value_in_another_currency_does_not_fit() => Check.Small
        .Changing(SmallCatalogue.Device("eye"), "from: 0 ms, to: 500 ms, step: 1 ms", "from: 0 EUR, to: 500 EUR, step: 1 EUR")
        .Changing(SmallCatalogue.Water, "threshold: 42 percent", "threshold: 42 percent, hold: [|5 USD|]")
        .Says("CFG2019 `5 USD` does not fit the parameter `hold`\nto fix: write a value in `EUR`");
}
