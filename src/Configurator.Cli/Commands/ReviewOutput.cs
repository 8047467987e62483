using Configurator.Cli.Disk;
using Configurator.Core.Review;
using Configurator.Core.Review.Printing;
using Configurator.Site;

namespace Configurator.Cli.Commands;

/// <summary>How a review is printed.</summary>
internal enum ReviewFormat
{
    Text,
    Markdown,
    Github,
    Sarif,
    Json,
}

/// <summary>A review in one of its forms.</summary>
internal static class ReviewOutput
{
    /// <summary>Form of a file by its ending; null where it tells none.</summary>
    public static ReviewFormat? FormatOf(string file) =>
        Path.GetExtension(file) switch
        {
            ".md" => ReviewFormat.Markdown,
            ".sarif" => ReviewFormat.Sarif,
            ".json" => ReviewFormat.Json,
            ".txt" => ReviewFormat.Text,
            _ => null,
        };

    /// <param name="folder">The catalogue's, as <see cref="CatalogueFolder"/> says it for annotations.</param>
    public static string Of(ReviewReport report, ReviewVerdict verdict, ReviewFormat format, string folder) =>
        format switch
        {
            ReviewFormat.Markdown => ReviewMarkdown.Of(report, verdict),
            ReviewFormat.Github => ReviewAnnotations.Of(report, folder) + ReviewText.Verdict(report, verdict),
            ReviewFormat.Sarif => ReviewSarif.Of(report, AllRules.Rules, Shared.Version, folder),
            ReviewFormat.Json => ReviewJson.Of(report, verdict),
            _ => ReviewText.Of(report, verdict),
        };
}
