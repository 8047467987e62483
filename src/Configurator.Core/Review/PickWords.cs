using Configurator.Core.Model;

namespace Configurator.Core.Review;

/// <summary>Options taken, as a review writes them.</summary>
internal static class PickWords
{
    public static string Of(IEnumerable<KeyValuePair<OptionId, int>> picks) =>
        string.Join(
            ", ",
            picks.Select(pick =>
                pick.Value == 1 ? $"`{pick.Key}`" : FormattableString.Invariant($"{pick.Value} × `{pick.Key}`")
            )
        );
}
