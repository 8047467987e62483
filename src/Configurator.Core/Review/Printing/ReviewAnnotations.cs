using System.Text;
using Configurator.Core.Diagnostics.Printing;

namespace Configurator.Core.Review.Printing;

/// <summary>The worst changes as annotations on the lines of a pull request; those that a level has no room for are in
/// every other form of the review.</summary>
public static class ReviewAnnotations
{
    /// <param name="folder">The catalogue's, from the repository's top; empty where it is the top.</param>
    public static string Of(ReviewReport report, string folder = "")
    {
        var text = new StringBuilder();
        foreach (
            var level in report
                .Changes.Where(change => change.Line is not null)
                .GroupBy(change => change.Level)
                .OrderByDescending(level => level.Key)
        )
        {
            foreach (var change in level.Take(WorkflowCommand.EachLevelMax))
            {
                text.Append(
                        WorkflowCommand.Of(
                            change.Level,
                            change.Line!.Value.Below(folder),
                            change.Kind.Title,
                            change.Details.Prepend(change.Sentence)
                        )
                    )
                    .Append('\n');
            }
        }

        return text.ToString();
    }
}
