namespace Configurator.Cli.Tests.Browser;

/// <summary>Tests that share one published site and one browser, and so take turns.</summary>
[CollectionDefinition(Name)]
public sealed class OneBrowser : ICollectionFixture<Chromium>
{
    public const string Name = "browser";
}
