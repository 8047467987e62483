namespace Configurator.Core.Review;

/// <summary>What a change is about, most expensive first: the order in which a review tells it.</summary>
public enum ReviewTopic
{
    Homes,
    Orders,
    Published,
    Records,
    Hardware,
    Settings,
    Definitions,
    Site,
}
