using System.Collections.Immutable;
using Configurator.Cli.Disk;
using Configurator.Core.Diagnostics;
using Configurator.Core.Diagnostics.Printing;
using Configurator.Core.Documents.Pages;
using Configurator.Core.Review;
using Configurator.Core.Sources;
using Configurator.Site;

namespace Configurator.Cli.Commands;

/// <summary>Writes the preview of a reviewed change.</summary>
internal static class ReviewPreview
{
    private const int ErrorsShown = 10;

    public static int Write(ReviewRun run, ReviewSide before, ReviewSide after, ReviewReport report)
    {
        var site = ReviewSite.Build(
            before,
            after,
            report,
            run.Verdict,
            new(Shared.Version, after.Name, run.Date),
            TemplateCache.OfUser()
        );
        if (site.HasErrors)
        {
            run.Errors.WriteLine("configurator: no preview was written: the site after the change has errors");
            run.Errors.Write(
                DiagnosticText.Of(
                    site.Diagnostics.Where(diagnostic => diagnostic.Rule.Severity == Severity.Error).Take(ErrorsShown),
                    ImmutableDictionary<string, SourceText>.Empty
                )
            );
            return ExitCodes.Findings;
        }

        var folder = run.Preview!;
        var result = SitePublisher.Publish(folder, site.Value.Files, run.Catalogue, CancellationToken.None);
        foreach (var message in result.Messages)
        {
            run.Errors.WriteLine($"configurator: {message}");
        }

        if (result.Verdict != PublishVerdict.Published)
        {
            return Report.Environment(result.Problem!, run.Errors);
        }

        run.Errors.WriteLine($"configurator: preview in {folder}: open {Path.Combine(folder, ReviewPage.Path)}");
        return ExitCodes.Fine;
    }
}
