using System.Text.Json;
using Configurator.Core.Diagnostics;
using Configurator.Core.Review;
using Configurator.Core.Review.Kinds;
using Configurator.Core.Review.Printing;
using Configurator.Core.Tests.Support;
using Json.Schema;

namespace Configurator.Core.Tests.Review;

/// <summary>SARIF and JSON forms against their schemas.</summary>
public class ReviewFormTests
{
    private static readonly ReviewReport Report = ReviewPair.Compare(BaseCatalogue.Whole, ReviewPair.Changed, new(2027, 3, 2));

    private static readonly ReviewReport Broken = ReviewPair.Compare(
        BaseCatalogue.Whole, ReviewPair.Changed.Replacing(ReviewPair.Eye, "kind: sensor", "kind: senser"));

    // Source: the published schema, see tests/Data/README.md. It is of draft-04, whose `id` later drafts call `$id`.
    private static readonly JsonSchema Sarif = JsonSchema.FromText(
        File.ReadAllText(Path.Combine(Repository.Folder, "tests", "Data", "sarif", "sarif-2.1.0.schema.json"))
            .Replace("http://json-schema.org/draft-04/schema#", "http://json-schema.org/draft-07/schema#", StringComparison.Ordinal)
            .Replace("\"id\": \"https://raw", "\"$id\": \"https://raw", StringComparison.Ordinal),
        new BuildOptions { SchemaRegistry = new() });

    private static readonly JsonSchema Own = JsonSchema.FromText(
        File.ReadAllText(Path.Combine(Repository.Folder, "site-templates", "schemas", ReviewSchema.Name)),
        new BuildOptions { SchemaRegistry = new() });

    public static TheoryData<ReviewReport> Reports => new(Report, Broken, ReviewPair.Compare(BaseCatalogue.Whole, BaseCatalogue.Whole));

    [Theory]
    [MemberData(nameof(Reports))]
    public void A_sarif_log_is_valid(ReviewReport report) => Assert.Empty(Faults(Sarif, SarifOf(report)));

    [Fact]
    public void The_schema_of_sarif_sees_a_mistake() => Assert.NotEmpty(
        Faults(Sarif, SarifOf(Report).Replace("\"level\": \"error\"", "\"level\": \"fatal\"", StringComparison.Ordinal)));

    [Theory]
    [MemberData(nameof(Reports))]
    public void A_review_as_json_is_valid(ReviewReport report) =>
        Assert.Empty(Faults(Own, ReviewJson.Of(report, ReviewVerdict.Usual)));

    [Fact]
    public void The_schema_of_reviews_sees_a_mistake() => Assert.NotEmpty(
        Faults(Own, ReviewJson.Of(Report, ReviewVerdict.Usual).Replace("\"fails\"", "\"failed\"", StringComparison.Ordinal)));

    [Fact]
    public void Results_point_to_their_rules_and_faults_are_told_once()
    {
        using var log = JsonDocument.Parse(SarifOf(Broken));
        var run = log.RootElement.GetProperty("runs")[0];
        var rules = run.GetProperty("tool").GetProperty("driver").GetProperty("rules").EnumerateArray().Select(rule => rule.GetProperty("id").GetString()).ToList();
        var results = run.GetProperty("results").EnumerateArray().ToList();
        Assert.All(results, result => Assert.Equal(result.GetProperty("ruleId").GetString(), rules[result.GetProperty("ruleIndex").GetInt32()]));
        Assert.Contains(results, result => result.GetProperty("ruleId").GetString() == "CFG2008" || result.GetProperty("ruleId").GetString()!.StartsWith("CFG2", StringComparison.Ordinal));
        Assert.DoesNotContain(results, result => result.GetProperty("ruleId").GetString() == DefinitionKinds.FaultAdded.Id);
    }

    // Law: a fingerprint names the same result whatever lines stand above it.
    [Fact]
    public void Fingerprints_do_not_change_with_lines_and_are_unique()
    {
        var moved = ReviewPair.Changed;
        foreach (var path in new[] { ReviewPair.Plan, ReviewPair.Salad, ReviewPair.Film, ReviewPair.Recipe })
        {
            moved = moved.And(path, "# a remark\n\n" + moved.TextOf(path));
        }

        var prints = Prints(Report);
        Assert.Equal(prints, Prints(ReviewPair.Compare(BaseCatalogue.Whole, moved, new(2027, 3, 2))));
        Assert.Equal(prints.Count, prints.Distinct(StringComparer.Ordinal).Count());
        Assert.InRange(prints.Count, 10, 1000);
    }

    [Fact]
    public void What_was_wrong_before_is_marked_as_unchanged()
    {
        var broken = ReviewPair.Changed.Replacing(ReviewPair.Eye, "kind: sensor", "kind: senser");
        var again = SarifOf(ReviewPair.Compare(broken, broken));
        Assert.Contains("\"baselineState\": \"unchanged\"", again, StringComparison.Ordinal);
        Assert.DoesNotContain("\"baselineState\": \"new\"", again, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("error", true)]
    [InlineData("never", false)]
    [InlineData("home-moved", true)]
    [InlineData("machine-added", false)]
    [InlineData("machine-added,warning", true)]
    public void The_verdict_follows_levels_and_kinds(string failOn, bool fails) =>
        Assert.Equal(fails, ReviewVerdict.Parse(failOn)!.Fails(Report));

    [Theory]
    [InlineData("")]
    [InlineData("fatal")]
    [InlineData("error,")]
    [InlineData("never,error")]
    public void What_is_no_verdict_is_refused(string failOn) => Assert.Null(ReviewVerdict.Parse(failOn));

    [Fact]
    public void Kinds_have_names_of_their_own() => Assert.Equal(
        ChangeKinds.All.Length, ChangeKinds.All.Select(kind => kind.Id).Distinct(StringComparer.Ordinal).Count());

    private static string SarifOf(ReviewReport report) => ReviewSarif.Of(report, RuleBook.Rules, "1.0.0");

    private static List<string> Prints(ReviewReport report)
    {
        using var log = JsonDocument.Parse(SarifOf(report));
        return [.. log.RootElement.GetProperty("runs")[0].GetProperty("results").EnumerateArray()
            .Select(result => result.GetProperty("partialFingerprints").GetProperty("configurator/v1").GetString()!)];
    }

    private static List<string> Faults(JsonSchema schema, string json)
    {
        using var document = JsonDocument.Parse(json);
        var result = schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        return result.IsValid ? [] : [.. (result.Details ?? []).Where(detail => detail.Errors is not null)
            .SelectMany(detail => detail.Errors!.Select(error => $"{detail.InstanceLocation}: {error.Value}"))];
    }
}
