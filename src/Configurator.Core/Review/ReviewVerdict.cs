using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review;

/// <summary>What makes a review fail: changes of a level and above, or of kinds.</summary>
/// <param name="Written">As the user wrote it.</param>
/// <param name="Least">Null where no level fails.</param>
public sealed record ReviewVerdict(string Written, Severity? Least, ImmutableArray<ChangeKind> Kinds)
{
    public const string Never = "never";

    public static ReviewVerdict Usual { get; } = new("error", Severity.Error, []);

    /// <summary>Words for levels, <c>never</c> and ids of kinds, with commas between; null for anything else.</summary>
    public static ReviewVerdict? Parse(string text)
    {
        Severity? least = null;
        var kinds = ImmutableArray.CreateBuilder<ChangeKind>();
        foreach (var word in text.Split(','))
        {
            if (LevelOf(word) is { } level)
            {
                least = least < level ? least : level;
            }
            else if (ChangeKinds.All.FirstOrDefault(kind => kind.Id == word) is { } kind)
            {
                kinds.Add(kind);
            }
            else if (word != Never || text != Never)
            {
                return null;
            }
        }

        return new(text, least, kinds.ToImmutable());
    }

    public bool Fails(Change change) => change.Level >= Least || Kinds.Contains(change.Kind);

    public bool Fails(ReviewReport report) => report.Changes.Any(Fails);

    private static Severity? LevelOf(string word) =>
        word switch
        {
            "error" => Severity.Error,
            "warning" => Severity.Warning,
            "note" => Severity.Note,
            _ => null,
        };
}
