using Configurator.Core.Review;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Review;

/// <summary>Two states of the small catalogue of <c>tests/Cases/base</c>, and how they are compared.</summary>
internal static class ReviewPair
{
    public const string Machine = "machines/tray-one/machine.yaml";
    public const string Plan = "machines/tray-one/port-plan.yaml";
    public const string Salad = "machines/tray-one/configurations/salad.yaml";
    public const string Delivered = "machines/tray-one/as-built/t1-0001.yaml";
    public const string Recipe = "machines/tray-one/recipes/green-salad.yaml";
    public const string Reject = "options/checking/reject.yaml";
    public const string Film = "options/lids/top-film.yaml";
    public const string FilmNotes = "options/lids/top-film.md";
    public const string Eye = "options/devices/contrast-eye.yaml";

    public const string Accepted =
        "accepted:\n  - {finding: ports.spare/main, by: controls lead, because: The spare ports come with the next master, until: 2027-03-31}\n";

    private const string NotWith =
        "not-with:\n  - {option: snap-lid, because: A snap lid comes off where the reject belt turns down}\n";

    /// <summary>One change of every sort, each small enough to follow by hand.</summary>
    public static BaseCatalogue Changed { get; } = Appending(
        BaseCatalogue.Whole
            .Replacing(Reject, NotWith, "")
            .Replacing(Film, "price: 900 EUR", "requires:\n  - {option: tray-count, because: The film stops when trays stop}\nprice: 900 EUR")
            .Replacing(Plan, "tray-count/tray-eye/1: main:1", "tray-count/tray-eye/1: main:2")
            .Replacing(Recipe, "40 percent", "45 percent")
            .Replacing(Eye, "price: 240 EUR", "price: 250 EUR")
            .Replacing(FilmNotes, "a soft cloth", "a soft wet cloth")
            .Replacing(Machine, "spare-ports: 1", "spare-ports: 6"),
        Salad,
        Accepted);

    public static BaseCatalogue Appending(BaseCatalogue catalogue, string path, string text) =>
        catalogue.And(path, catalogue.TextOf(path) + text);

    public static ReviewReport Compare(BaseCatalogue before, BaseCatalogue after, DateOnly? on = null) => Reviewer.Compare(
        new("before", before.Sources, before.Check()), new("after", after.Sources, after.Check()), on);

    /// <summary>Kind, level, machine left out, and all that is said, a line each.</summary>
    public static string Said(this ReviewReport report, params ReviewTopic[] topics) => string.Join('\n', report.Changes
        .Where(change => topics.Length == 0 || topics.Contains(change.Kind.Topic))
        .Select(change => $"{change.Kind.Id}: {change.Sentence}"));

    public static Change The(this ReviewReport report, string kind) =>
        Assert.Single(report.Changes, change => change.Kind.Id == kind);
}
