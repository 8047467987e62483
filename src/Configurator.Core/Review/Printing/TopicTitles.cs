namespace Configurator.Core.Review.Printing;

/// <summary>Headings over the topics of a review.</summary>
public static class TopicTitles
{
    public static string Of(ReviewTopic topic) =>
        topic switch
        {
            ReviewTopic.Homes => "Homes and designations",
            ReviewTopic.Orders => "What can be ordered",
            ReviewTopic.Published => "Published configurations and their findings",
            ReviewTopic.Records => "Accepted deviations",
            ReviewTopic.Hardware => "Hardware, loads and price",
            ReviewTopic.Settings => "Recipes, notes and delivered machines",
            ReviewTopic.Definitions => "Definitions",
            _ => "Site",
        };

    /// <summary>Where nothing of the topic changed, in the middle of a sentence.</summary>
    public static string Unchanged(ReviewTopic topic) =>
        topic switch
        {
            ReviewTopic.Homes => "homes and designations",
            ReviewTopic.Orders => "what can be ordered",
            ReviewTopic.Published => "published configurations and their findings",
            ReviewTopic.Records => "accepted deviations",
            ReviewTopic.Hardware => "hardware and loads",
            ReviewTopic.Settings => "recipes, notes and delivered machines",
            ReviewTopic.Definitions => "faults of the definitions",
            _ => "pages",
        };
}
