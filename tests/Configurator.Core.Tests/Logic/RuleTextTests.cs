using System.Collections.Immutable;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Tests.Logic.Orders;

namespace Configurator.Core.Tests.Logic;

/// <summary>What a rule of a machine asks for is said as a need, what it keeps out as what cannot be ordered.</summary>
public class RuleTextTests
{
    private static readonly Condition Film = Machines.Taken("film");
    private static readonly Condition Foil = Machines.Taken("foil");
    private static readonly Condition Low = Machines.Taken("low-voltage");

    [Fact]
    public void What_is_needed_is_said_as_a_need()
    {
        Says("every order needs `film`", null, Film);
        Says("an order with `low-voltage` needs `film`", Low, Film);
    }

    [Fact]
    public void What_must_never_come_with_something_cannot_be_ordered_with_it() =>
        Says("`film` cannot be ordered with `low-voltage`", Low, Never(Film));

    [Fact]
    public void Each_of_several_that_must_never_be_is_named_with_or()
    {
        Says("`film` or `foil` cannot be ordered with `low-voltage`", Low, Never(new AnyOf([Film, Foil], default)));
        Says("`film` or `foil` cannot be ordered with `low-voltage`", Low, Never(Film, Foil));
    }

    [Fact]
    public void Things_that_exclude_each_other_cannot_be_ordered_together()
    {
        Says("`film` and `foil` cannot be ordered together", null, Never(new AllOf([Film, Foil], default)));
        Says(
            "`film` and `foil` cannot be ordered together with `low-voltage`",
            Low,
            Never(new AllOf([Film, Foil], default))
        );
    }

    [Fact]
    public void What_must_not_be_missing_is_a_need() =>
        Assert.Null(RuleText.Banned(Machines.Rule("rule", Never(Never(Film)))));

    private static NoneOf Never(params ImmutableArray<Condition> of) => new(of, default);

    private static void Says(string expected, Condition? when, Condition need) =>
        Assert.Equal(expected, RuleText.Of(Machines.Rule("rule", need, when)));
}
