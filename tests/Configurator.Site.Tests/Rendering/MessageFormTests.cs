using System.Text.RegularExpressions;
using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;
using Configurator.Site.Inspecting;
using Configurator.Site.Markup;
using Configurator.Site.Rendering;

namespace Configurator.Site.Tests.Rendering;

/// <summary>Every sentence that these stages can say, with hostile words in it.</summary>
public partial class MessageFormTests
{
    private const string Hostile = "a`b\nc\u0001 [x] ::error::";

    private static readonly SourceSpan Place = new("site-templates/A.cshtml", 1, 1, 0);

    private static readonly Reference Link = new(Hostile, ReferenceUse.Link, Place);

    private static readonly Located<string> Title = new(Hostile, Place);

    public static TheoryData<string, string> Sentences { get; } =
        [.. All.Select(it => new TheoryDataRow<string, string>(it.Rule.Code, it.Message))];

    public static TheoryData<string> Fixes { get; } =
        [.. All.Select(it => it.Fix?.Message).OfType<string>().Distinct(StringComparer.Ordinal)];

    private static IEnumerable<Diagnostic> All => Rendering.Concat(Markup).Concat(Inspection);

    private static IEnumerable<Diagnostic> Rendering =>
    [
        RenderingDiagnostics.CompileError("The name 'x' does not exist in the current context.", "CS0103", Place),
        RenderingDiagnostics.Missing("_A.cshtml", Place),
        RenderingDiagnostics.Missing("../A.cshtml", Place),
        RenderingDiagnostics.Threw("A.cshtml", new InvalidOperationException("first\nsecond."), Place),
        RenderingDiagnostics.WrongModel("A.cshtml", typeof(Dictionary<string, int[]>), null),
        RenderingDiagnostics.WrongModel("A.cshtml", typeof(string), typeof(List<string>)),
        RenderingDiagnostics.TooDeep("A.cshtml", 64, Place),
        RenderingDiagnostics.LayoutCycle("A.cshtml", Place),
        RenderingDiagnostics.NotAllowed("@inject", Place),
    ];

    private static IEnumerable<Diagnostic> Markup =>
    [
        MarkupDiagnostics.TooDeep(Place),
        MarkupDiagnostics.TooLong(50_001, 50_000, Place),
        MarkupDiagnostics.TooManyCells(20_001, 20_000, Place),
        MarkupDiagnostics.Refused(Hostile, isImage: false, "scheme `x`", Place),
        MarkupDiagnostics.Refused(Hostile, isImage: true, "it leads nowhere", Place),
        MarkupDiagnostics.HasHtml(Place),
    ];

    private static IEnumerable<Diagnostic> Inspection =>
    [
        InspectionDiagnostics.NoFile(Link, Hostile, null),
        InspectionDiagnostics.NoFile(Link, "A.html", "a.html"),
        InspectionDiagnostics.LeadsNowhere(Link),
        InspectionDiagnostics.LeavesSite(Link),
        InspectionDiagnostics.NoPlace(Link with { Written = "#" + Hostile }, "a.html"),
        InspectionDiagnostics.NoId("for", Hostile, Place),
        InspectionDiagnostics.SameId(Hostile, Place, Place),
        InspectionDiagnostics.NoTop(Place),
        InspectionDiagnostics.SecondTop(Place),
        InspectionDiagnostics.SkippedLevel(4, 2, Place),
        InspectionDiagnostics.SkippedLevel(2, 0, Place),
        InspectionDiagnostics.Outside(Link),
        InspectionDiagnostics.BadScheme(Link),
        InspectionDiagnostics.NoTitle(Place),
        InspectionDiagnostics.NoLanguage(Place),
        InspectionDiagnostics.SameTitle(Title, Title),
        InspectionDiagnostics.BadPath(Hostile),
        InspectionDiagnostics.BadType(Hostile),
        InspectionDiagnostics.Rooted(Link),
        InspectionDiagnostics.Folder(Link),
        InspectionDiagnostics.Malformed("The given tag cannot be self-closed.", Place),
        InspectionDiagnostics.NotUtf8(Hostile),
    ];

    [Theory]
    [MemberData(nameof(Sentences))]
    public void A_message_starts_small_and_ends_without_a_stop(string code, string message)
    {
        Assert.False(char.IsUpper(message[0]) && char.IsLower(message[1]), $"{code} {message}");
        Assert.DoesNotMatch(@"[.!]$", message);
    }

    // A message is printed on one line; CI takes ` [...]` at its end for the name of a project.
    [Theory]
    [MemberData(nameof(Sentences))]
    public void A_message_is_one_line_with_whole_quotes(string code, string message)
    {
        Assert.DoesNotContain(message, char.IsControl);
        Assert.True(message.Count(character => character == '`') % 2 == 0, $"{code} {message}");
        Assert.DoesNotMatch(ProjectName(), message);
    }

    [Theory]
    [MemberData(nameof(Fixes))]
    public void A_fix_says_what_to_do(string fix)
    {
        Assert.False(char.IsUpper(fix[0]), fix);
        Assert.DoesNotMatch(@"[.!]$", fix);
        Assert.DoesNotContain(fix, char.IsControl);
    }

    [GeneratedRegex(@" \[[^\]]*\]$", RegexOptions.NonBacktracking)]
    private static partial Regex ProjectName();
}
