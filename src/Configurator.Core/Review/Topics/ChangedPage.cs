namespace Configurator.Core.Review.Topics;

/// <summary>A page that both sides have and that says something else.</summary>
/// <param name="Sections">Which of its sections differ, in words.</param>
internal sealed record ChangedPage(string Path, string Title, string Sections)
{
    public string Name => $"`{Path[(Path.LastIndexOf('/') + 1)..]}`";
}
