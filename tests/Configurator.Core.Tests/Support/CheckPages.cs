using Configurator.Core.Documents;
using Configurator.Core.Documents.Blocks;

namespace Configurator.Core.Tests.Support;

/// <summary>What a finished page of a catalogue says, block by block, in plain lines.</summary>
internal static class CheckPages
{
    /// <summary>The lines of one section of a page.</summary>
    public static string Section(this Check check, string path, string section)
    {
        var page = Documenter.Compose(check.Engineered, "").Value.Pages.Single(page => page.Path == path);
        var found = page.Sections.SingleOrDefault(part => part.Id == section);
        return found is null ? "" : string.Join('\n', found.Blocks.SelectMany(Lines).Prepend($"# {found.Title}"));
    }

    private static IEnumerable<string> Lines(Block block) =>
        block switch
        {
            Paragraph paragraph => [paragraph.Text],
            Passage passage => [passage.Markdown.TrimEnd()],
            Caution caution => caution.Lines,
            Facts facts => facts.Items.Select(fact =>
                $"{fact.Term}: {string.Join(", ", fact.Values.Select(value => value.Text))}"),
            Table table => table.Rows.Select(row => string.Join(" | ", row.Cells.Select(cell => cell.Text))),
            Steps steps => steps.Items.SelectMany(step =>
                step.Lines.Concat(step.Additions.Select(addition => addition.Passage.Markdown.TrimEnd())).Prepend($"## {step.Title}")),
            _ => [block.GetType().Name],
        };
}
