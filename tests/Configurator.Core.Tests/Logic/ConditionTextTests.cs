using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Core.Tests.Logic;

public class ConditionTextTests
{
    private static readonly Condition Film = One("film");
    private static readonly Condition Foil = One("foil");

    [Fact]
    public void Nothing_in_a_list_is_said_as_nothing()
    {
        Assert.Equal("nothing", ConditionText.Of(new AllOf([], default)));
        Assert.Equal("something that does not exist", ConditionText.Of(new AnyOf([], default)));
    }

    [Fact]
    public void A_list_of_one_is_said_as_that_one() => Assert.Equal("`film`", ConditionText.Of(new AnyOf([new AllOf([Film], default)], default)));

    [Fact]
    public void Lists_within_lists_are_set_in_brackets() => Assert.Equal(
        "(`film` or `foil`) and no `foil`", ConditionText.Of(new AllOf([new AnyOf([Film, Foil], default), new NoneOf([Foil], default)], default)));

    [Fact]
    public void Options_may_be_called_by_their_titles() =>
        Assert.Equal("Lid FILM", ConditionText.Of(Film, option => "Lid " + option.Value.ToUpperInvariant()));

    [Fact]
    public void Options_are_listed_with_the_word_before_the_last() =>
        Assert.Equal("`a`, `b` and `c`", ConditionText.List([new("a"), new("b"), new("c")], "and"));

    private static OptionCount One(string option) => new(new(option), 1, null, default);
}
