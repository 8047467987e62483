using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Diagnostics.Printing;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Engineering;
using Configurator.Core.Review;
using Configurator.Core.Review.Printing;

namespace Configurator.Core.Documents.Pages;

/// <summary>A review as a page of the preview: the site after the change, with the site before it below
/// <see cref="BeforeFolder"/>.</summary>
public static class ReviewPage
{
    public const string Path = "review.html";
    public const string BeforeFolder = "before/";

    private const int RowsMax = 500;
    private const int LinksMax = 3;

    /// <param name="hasBefore">The site before the change is there to be linked to.</param>
    public static Page Compose(EngineeredCatalogue after, ReviewReport report, ReviewVerdict verdict, bool hasBefore)
    {
        var words = new SiteWords(after.Catalogue.Site.Languages[0]);
        return new(Path, "review", words.Review, words)
        {
            SiteTitle = after.Catalogue.Site.Title.In(words.Language),
            Crumbs = [new(after.Catalogue.Site.Title.In(words.Language), PagePaths.Catalogue)],
            Lead = words.ReviewLead,
            Sections =
            [
                new("verdict", words.ReviewVerdict, Verdict(words, report, verdict)),
                .. report
                    .Changes.GroupBy(change => change.Kind.Topic)
                    .Select(topic => new Section(
                        ReviewSchema.Word(topic.Key),
                        TopicTitles.Of(topic.Key),
                        [
                            .. topic
                                .GroupBy(change => change.Kind)
                                .Select(kind => Of(words, kind.Key, [.. kind], hasBefore)),
                        ]
                    )),
            ],
        };
    }

    /// <summary>The first page with a way to the review at its top.</summary>
    public static Page Announce(Page catalogue) =>
        catalogue with
        {
            Sections =
            [
                new(
                    "review",
                    catalogue.Words.Review,
                    [new LinkList([new(new(catalogue.Words.Review, Path), catalogue.Words.ReviewLead)])]
                ),
                .. catalogue.Sections,
            ],
        };

    private static ImmutableArray<Block> Verdict(SiteWords words, ReviewReport report, ReviewVerdict verdict)
    {
        ImmutableArray<string> lines =
        [
            .. ReviewHeadlines.Of(report),
            .. new[] { ReviewHeadlines.Unchanged(report) }.Where(line => line.Length > 0),
        ];
        return
        [
            new Paragraph(Sentence(verdict.Say(report))),
            new Facts([Fact.Of(words.Before, report.Before), Fact.Of(words.Now, report.After)]),
            .. lines.Select(line => new Paragraph(Plain(line) + ".")),
            .. report.Limits.IsEmpty
                ? ImmutableArray<Block>.Empty
                : [new Caution(words.NotCompared, [.. report.Limits.Select(Plain)])],
        ];
    }

    private static Table Of(SiteWords words, ChangeKind kind, ImmutableArray<Change> changes, bool hasBefore)
    {
        var more = changes.Length - RowsMax;
        var caption = string.Create(CultureInfo.InvariantCulture, $"{kind.Title} ({changes.Length}): {kind.Meaning}");
        return Filled(
            new(
                kind.Id,
                caption
                    + (more > 0 ? string.Create(CultureInfo.InvariantCulture, $"; the first {RowsMax} are shown") : ""),
                [
                    new(words.What),
                    new(words.Machine),
                    new(words.Before),
                    new(words.Now),
                    new(words.InConfigurations),
                    new(words.Remark),
                    new(words.Level),
                    new(words.SeePages),
                ],
                [.. changes.Take(RowsMax).Select(change => Of(words, change, hasBefore))]
            )
        );
    }

    /// <summary>Without the columns in which no row says anything.</summary>
    private static Table Filled(Table table)
    {
        var filled = Enumerable
            .Range(0, table.Columns.Length)
            .Where(column => table.Rows.Any(row => !row.Cells[column].IsEmpty))
            .ToList();
        return table with
        {
            Columns = [.. filled.Select(column => table.Columns[column])],
            Rows = [.. table.Rows.Select(row => row with { Cells = [.. filled.Select(column => row.Cells[column])] })],
        };
    }

    private static Row Of(SiteWords words, Change change, bool hasBefore) =>
        new(
            [
                Plain(change.Subject),
                change.Machine is { } machine ? machine.Value : "",
                Plain(change.Before),
                Plain(change.After),
                Plain(change.Where),
                Plain(string.Join("; ", change.Details.Prepend(change.Remark).Where(line => line.Length > 0))),
                DiagnosticText.Word(change.Level),
                Cell.Of(
                    Links(hasBefore ? change.PagesBefore : [], words.PageBefore, BeforeFolder)
                        .Concat(Links(change.PagesAfter, words.PageNow, ""))
                ),
            ],
            change.Level == Diagnostics.Severity.Error ? "fail" : ""
        );

    private static IEnumerable<Link> Links(ImmutableArray<string> pages, string word, string folder) =>
        pages
            .Take(LinksMax)
            .Select(page => new Link(
                pages.Length == 1 ? word : $"{word}: {page[(page.LastIndexOf('/') + 1)..]}",
                folder + page
            ));

    private static string Sentence(string text) => char.ToUpperInvariant(text[0]) + Plain(text[1..]) + ".";

    /// <summary>Pages show names without backticks.</summary>
    private static string Plain(string text) => Printable.Of(text.Replace("`", "", StringComparison.Ordinal));
}
