using Configurator.Core.Diagnostics;

namespace Configurator.Site.Inspecting;

/// <summary>WCAG 2.2, 1.3.1 and technique G141: headings show the order of a page.</summary>
internal static class HeadingChecks
{
    public static IEnumerable<Diagnostic> Check(HtmlPage page)
    {
        var (last, firsts) = (0, 0);
        foreach (var heading in page.Document.QuerySelectorAll("h1,h2,h3,h4,h5,h6"))
        {
            var level = heading.LocalName[1] - '0';
            if (level == 1 && ++firsts > 1)
            {
                yield return InspectionDiagnostics.SecondTop(page.SpanOf(heading));
            }
            else if (level > last + 1)
            {
                yield return InspectionDiagnostics.SkippedLevel(level, last, page.SpanOf(heading));
            }

            last = level;
        }

        if (firsts == 0)
        {
            yield return InspectionDiagnostics.NoTop(page.Start);
        }
    }
}
