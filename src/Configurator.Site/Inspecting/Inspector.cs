using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;

namespace Configurator.Site.Inspecting;

/// <summary>
/// Last stage: reads the finished site as a browser would, and says what a reader would stumble over.
/// </summary>
internal static class Inspector
{
    public static Outcome<SiteFiles> Inspect(SiteFiles site) => InspectBeside(site, []);

    /// <param name="beside">Paths of files inspected elsewhere that links may lead to.</param>
    public static Outcome<SiteFiles> InspectBeside(SiteFiles site, ImmutableArray<string> beside)
    {
        ImmutableArray<KeyValuePair<string, ReadOnlyMemory<byte>>> files = [.. site.Files];
        var facts = new PageFacts[files.Length];
        Parallel.For(0, files.Length, i => facts[i] = Read(files[i].Key, files[i].Value));
        var pages = facts
            .Concat(beside.Select(path => new PageFacts(path)))
            .ToDictionary(page => page.Path, StringComparer.Ordinal);
        return new(
            site,
            Repeats.Fold(
                Diagnostic.InOrder([
                    .. site.Files.Keys.SelectMany(PathChecks.Check),
                    .. facts.SelectMany(page => page.Diagnostics),
                    .. facts.SelectMany(page => LinkChecks.Check(page, pages)),
                    .. TitleChecks.Unique(facts),
                ])
            )
        );
    }

    private static PageFacts Read(string path, ReadOnlyMemory<byte> bytes) =>
        SitePath.IsHtml(path) ? ReadMarkup(path, bytes, Checks)
        : SitePath.IsSvg(path) ? ReadMarkup(path, bytes, DrawingChecks.Check)
        : SitePath.IsCss(path) ? ReadSheet(path, bytes)
        : new(path);

    private static PageFacts ReadMarkup(
        string path,
        ReadOnlyMemory<byte> bytes,
        Func<HtmlPage, IEnumerable<Diagnostic>> checks
    )
    {
        if (HtmlPage.Read(path, bytes) is not { } page)
        {
            return new(path) { Diagnostics = [InspectionDiagnostics.NotUtf8(path)] };
        }

        return new(path)
        {
            Ids = page
                .Elements.Select(element => element.GetAttribute("id"))
                .OfType<string>()
                .ToHashSet(StringComparer.Ordinal),
            References = [.. References.In(page)],
            Title = SitePath.IsHtml(path) ? TitleChecks.TitleOf(page) : null,
            Diagnostics = [.. checks(page)],
        };
    }

    private static PageFacts ReadSheet(string path, ReadOnlyMemory<byte> bytes) =>
        SourceText.Decode(new(SitePath.Shown(path), bytes)) is { } sheet
            ? new(path) { References = [.. CssReferences.In(sheet)] }
            : new(path) { Diagnostics = [InspectionDiagnostics.NotUtf8(path)] };

    private static IEnumerable<Diagnostic> Checks(HtmlPage page) =>
        [
            .. MarkupChecks.Check(page),
            .. TitleChecks.Check(page),
            .. IdChecks.Check(page),
            .. HeadingChecks.Check(page),
            .. TableChecks.Check(page),
            .. InlineChecks.Check(page),
            .. NameChecks.Check(page),
        ];
}
