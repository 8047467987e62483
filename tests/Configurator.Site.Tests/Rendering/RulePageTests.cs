using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;
using Configurator.Site.Inspecting;
using Configurator.Site.Markup;
using Configurator.Site.Rendering;

namespace Configurator.Site.Tests.Rendering;

/// <summary>The page of each code says what the code does, and its example does it.</summary>
public partial class RulePageTests
{
    public static TheoryData<string> Codes { get; } = [.. All.Select(rule => rule.Code)];

    private static ImmutableArray<Rule> All =>
        [.. RenderingDiagnostics.All, .. MarkupDiagnostics.All, .. InspectionDiagnostics.All];

    [Fact]
    public void Codes_are_unique_and_of_their_stage()
    {
        Assert.Equal(All.Length, All.DistinctBy(rule => rule.Code).Count());
        Assert.All(RenderingDiagnostics.All, rule => Assert.StartsWith("CFG50", rule.Code, StringComparison.Ordinal));
        Assert.All(MarkupDiagnostics.All, rule => Assert.StartsWith("CFG51", rule.Code, StringComparison.Ordinal));
        Assert.All(InspectionDiagnostics.All, rule => Assert.StartsWith("CFG60", rule.Code, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Each_code_has_a_page_with_its_title_and_four_sections(string code)
    {
        var page = Page(code);
        Assert.StartsWith($"# {code}: {All.Single(rule => rule.Code == code).Title}\n", page, StringComparison.Ordinal);
        Assert.Equal(
            ["What it means", "Example", "How to fix", "Why we check it"],
            Heading().Matches(Fence().Replace(page, "")).Select(match => match.Groups["words"].Value));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_example_of_each_page_raises_the_code_and_no_other(string code)
    {
        SourceText[] files = [.. Fence().Matches(Page(code)).Select(FileIn)];
        var raised = Notes(files).Concat(Templates(files)).Concat(Finished(files)).Select(it => it.Rule.Code);
        Assert.Equal([code], raised.Distinct(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Each_page_can_be_shown_as_a_note_without_a_word_of_complaint(string code) =>
        Assert.Empty(MarkdownRenderer.Render(Page(code), code + ".md", firstLine: 1, belowLevel: 1).Diagnostics);

    private static SourceText FileIn(Match fence) => new(fence.Groups["path"].Value, fence.Groups["text"].Value);

    private static IEnumerable<Diagnostic> Notes(IEnumerable<SourceText> files) => files
        .Where(file => file.Path.EndsWith(".md", StringComparison.Ordinal))
        .SelectMany(file => MarkdownRenderer.Render(file.Text, file.Path, firstLine: 1, belowLevel: 2).Diagnostics);

    private static ImmutableArray<Diagnostic> Templates(IEnumerable<SourceText> files)
    {
        var templates = TemplateSet.Of(files.Where(file => file.Path.EndsWith(".cshtml", StringComparison.Ordinal)));
        var jobs = templates.Templates.Keys.Where(key => key == "Page.cshtml").Select(
            key => new PageJob("index.html", key, key));
        return new PageRenderer(templates).RenderAll([.. jobs]).Diagnostics;
    }

    private static ImmutableArray<Diagnostic> Finished(IEnumerable<SourceText> files) => Inspector.Inspect(
        Inspecting.Finished.Files(files
            .Where(file => file.Path.StartsWith("_site/", StringComparison.Ordinal))
            .Select(file => (file.Path["_site/".Length..], file.Text)))).Diagnostics;

    private static string Page(string code)
    {
        using var stream = typeof(Rule).Assembly.GetManifestResourceStream($"Pages/{code}.md");
        Assert.NotNull(stream);
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    [GeneratedRegex(
        @"^## (?<words>.*)$", RegexOptions.Multiline | RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Heading();

    [GeneratedRegex(
        @"^```\w+ (?<path>\S+)\n(?<text>.*?)^```$",
        RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Fence();
}
