using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Binding;

/// <summary>For which markets an option is released.</summary>
public class MarketBindingTests
{
    [Fact]
    public void A_market_that_is_no_option_is_reported_where_it_stands() => Check.Small
        .Changing(SmallCatalogue.Option("film"), "title: Lid film", "title: Lid film\nmarkets: [[|fil|]]")
        .Says(
            """
            CFG2003 there is no option `fil`
            to fix: replace it with `film`
            """);
}
