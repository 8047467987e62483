using System.Text;
using System.Text.RegularExpressions;
using Configurator.Core.Diagnostics;
using Configurator.Core.Review;
using Configurator.Core.Review.Kinds;
using Configurator.Core.Review.Printing;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Review;

/// <summary>Words of a stranger's change cannot command the build log, nor write Markdown of their own.</summary>
public partial class HostileReviewTests
{
    private const string Evil =
        "::error::forged ##[add-mask]x <img src=x onerror=alert(1)> [a](javascript:b) @team https://evil.example www.evil.example | `x` *b* ~~s~~ # h";

    private static readonly BaseCatalogue Hostile = BaseCatalogue.Whole
        .Replacing(ReviewPair.Film, "price: 900 EUR", $"requires:\n  - {{option: tray-count, because: \"{Evil}\"}}\nprice: 900 EUR")
        .Replacing(ReviewPair.FilmNotes, "a soft cloth", Evil)
        .And("options/lids/evil.yaml", $"option: evil\ntitle: \"{Evil}\"\noffered-on: [tray-one]\nprice: 1 EUR\n");

    private static readonly ReviewReport Report = ReviewPair.Compare(BaseCatalogue.Whole, Hostile);

    public static TheoryData<string> Forms => new(
        ReviewMarkdown.Of(Report, ReviewVerdict.Usual),
        ReviewText.Of(Report, ReviewVerdict.Usual),
        ReviewAnnotations.Of(Report),
        ReviewJson.Of(Report, ReviewVerdict.Usual),
        ReviewSarif.Of(Report, RuleBook.Rules, "1"));

    // Source: the runner takes a line that starts with `::name`, and `##[name` anywhere, for a command.
    [Theory]
    [MemberData(nameof(Forms))]
    public void No_form_holds_a_command_of_theirs(string form)
    {
        Assert.Contains("forged", form, StringComparison.Ordinal);
        Assert.DoesNotContain("##[", form, StringComparison.Ordinal);
        Assert.DoesNotContain(form.Split('\n'), line => line.TrimStart().StartsWith("::", StringComparison.Ordinal)
            && !Ours().IsMatch(line));
    }

    [Fact]
    public void Markdown_says_their_words_and_does_nothing()
    {
        var markdown = ReviewMarkdown.Of(Report, ReviewVerdict.Usual);
        Assert.Contains("forged", markdown, StringComparison.Ordinal);
        foreach (var harm in new[] { "<img", "](javascript", "@team", "https://", "www.evil", "*b*", "~~s" })
        {
            Assert.DoesNotContain(harm, markdown.Replace("\\<", "", StringComparison.Ordinal).Replace("\\*", "", StringComparison.Ordinal)
                .Replace("\\~", "", StringComparison.Ordinal).Replace("\\]", "", StringComparison.Ordinal), StringComparison.Ordinal);
        }
    }

    // Source: GitHub Flavored Markdown, tables: an unescaped bar ends a cell, in code too.
    [Fact]
    public void Every_row_of_a_table_has_as_many_cells_as_its_head()
    {
        var columns = 0;
        foreach (var line in ReviewMarkdown.Of(Report, ReviewVerdict.Usual).Split('\n'))
        {
            var cells = line.StartsWith("| ", StringComparison.Ordinal) ? line.Replace("\\|", "", StringComparison.Ordinal).Count(c => c == '|') : 0;
            Assert.True(columns == 0 || cells == 0 || cells == columns, line);
            columns = cells;
        }
    }

    [Theory]
    [InlineData("a `b|c` d", "a `b\\|c` d")]
    [InlineData("# no heading", "\\# no heading")]
    [InlineData("- no list", "\\- no list")]
    [InlineData("1 < 2 > 1", "1 \\< 2 \\> 1")]
    [InlineData("a lone ` tick", "a lone \\` tick")]
    [InlineData("``", "")]
    [InlineData("a\nb\u001b[2J", "a b\\\\u001B\\[2J")]
    [InlineData("me@example.org", "me@&#8203;example.org")]
    [InlineData("http://x www.x", "http:&#8203;//x www&#46;x")]
    public void Text_is_escaped_where_it_would_be_markup(string text, string markdown) =>
        Assert.Equal(markdown, MarkdownText.Of(text));

    // Source: step summaries hold 1 MiB; the limit here is smaller so that a small review shows it.
    [Theory]
    [InlineData(600)]
    [InlineData(1500)]
    public void A_summary_is_cut_at_a_line_and_says_how_many_are_left_out(int most)
    {
        var whole = ReviewMarkdown.Of(Report, ReviewVerdict.Usual);
        var cut = ReviewMarkdown.Of(Report, ReviewVerdict.Usual, most);
        var marker = cut.LastIndexOf("\n\n**", StringComparison.Ordinal);
        Assert.InRange(Encoding.UTF8.GetByteCount(cut), 1, most);
        Assert.StartsWith(cut[..marker] + "\n", whole, StringComparison.Ordinal);
        Assert.Equal(
            $"**{whole[(marker + 1)..].Split('\n').Length} lines were left out**: more than a summary can hold.\n",
            cut[(marker + 2)..]);
    }

    [Fact]
    public void Ten_thousand_changes_still_fit_a_summary()
    {
        var many = Report with
        {
            Changes = [.. ChangeKinds.All.SelectMany(kind => Enumerable.Range(0, 1000).Select(i => new Change(kind, $"`thing-{i}`", []) { Before = Evil, After = Evil, Remark = Evil, Details = [Evil] }))],
        };
        var summary = ReviewMarkdown.Of(many, ReviewVerdict.Usual);
        Assert.InRange(Encoding.UTF8.GetByteCount(summary), 100_000, ReviewMarkdown.BytesMax);
    }

    [GeneratedRegex("^::(error|warning|notice) file=[^:,]+,line=[0-9]+,endLine=[0-9]+,col=[0-9]+,endColumn=[0-9]+,title=[^:,]+::",
        RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Ours();
}
