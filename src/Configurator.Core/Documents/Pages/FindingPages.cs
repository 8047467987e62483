using Configurator.Core.Diagnostics;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Sources;

namespace Configurator.Core.Documents.Pages;

/// <summary>One page a code: what it means, an example, how to fix it, why we check it.</summary>
internal static class FindingPages
{
    public static IEnumerable<Page> Compose(DocumentContext context) =>
        [List(context), .. RuleBook.Codes.Select(code => Code(context, code))];

    private static Page List(DocumentContext context)
    {
        var links = context.On(PagePaths.Findings);
        return new(PagePaths.Findings, "list", context.Words.FindingPages, context.Words)
        {
            Crumbs = [links.Catalogue],
            Sections =
            [
                new(
                    "codes",
                    context.Words.Findings,
                    [
                        new LinkList([
                            .. RuleBook.Codes.Select(code => new LinkItem(
                                links.To(PagePaths.Finding(code), TitleOf(code)),
                                ""
                            )),
                        ]),
                    ]
                ),
            ],
        };
    }

    private static Page Code(DocumentContext context, string code)
    {
        var path = PagePaths.Finding(code);
        var links = context.On(path);
        return new(path, "finding", TitleOf(code), context.Words)
        {
            Crumbs = [links.Catalogue, links.To(PagePaths.Findings, context.Words.FindingPages)],
            Sections =
            [
                .. Parts(code)
                    .Select(part => new Section(
                        part.Heading.ToLowerInvariant().Replace(' ', '-'),
                        part.Heading,
                        [new Passage(part.Text, SourceSpan.FileStart($"{code}.md"), BelowLevel: 2)]
                    )),
            ],
        };
    }

    /// <summary>The first line, without its mark.</summary>
    private static string TitleOf(string code) => RuleBook.Page(code)!.Split('\n')[0].TrimStart('#', ' ');

    /// <summary>The page's headings of the second level with what stands below them; those inside an example are its
    /// text.</summary>
    private static List<(string Heading, string Text)> Parts(string code)
    {
        var parts = new List<(string Heading, string Text)>();
        var isExample = false;
        foreach (var line in RuleBook.Page(code)!.Split('\n'))
        {
            isExample ^= line.StartsWith("```", StringComparison.Ordinal);
            if (!isExample && line.StartsWith("## ", StringComparison.Ordinal))
            {
                parts.Add((line[3..].Trim(), ""));
            }
            else if (parts.Count > 0)
            {
                parts[^1] = (parts[^1].Heading, parts[^1].Text + line + "\n");
            }
        }

        return parts;
    }
}
