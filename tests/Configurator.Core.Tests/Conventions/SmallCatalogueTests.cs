using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Conventions;

public class SmallCatalogueTests
{
    [Fact]
    public void Nothing_is_wrong_with_the_small_catalogue() => Check.Small.Says();
}
