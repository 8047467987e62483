using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>One test that a marking has to show: by any one of these codes.</summary>
/// <param name="Because">What it protects from.</param>
internal sealed record WashDemand(ImmutableArray<string> AnyOf, string Because)
{
    public string Text => string.Join(" or ", AnyOf);
}

/// <summary>
/// What ingress markings have to show in an area, by its class and how it is washed. Each method asks for all that a
/// milder one asks for, and a food area for more than others: so a stricter area never turns a failure into a pass.
/// </summary>
internal static class WashDemands
{
    public const string Source =
        "IEC 60529 clauses 5 and 6, corroborated; ISO 20653 for K, from memory; which code a method asks for: common practice, no source";

    private static readonly WashDemand Splashes = new(["IP54"], "dust and splashes");
    private static readonly WashDemand Jets = new(["IP65"], "water jets");
    private static readonly WashDemand PowerfulJets = new(["IP66"], "powerful jets, as of a boosted rinse of about 14 bar");

    // Both tests are done at 80 degC and 8 to 10 MPa with 14 to 16 l/min, the K test from nearer.
    private static readonly WashDemand HotJets = new(["IP69", "IP69K"], "hot high-pressure jets");

    private static readonly WashDemand Immersion = new(
        ["IP67"],
        "water that stands and is drawn in while warm housings cool"
    );

    /// <summary>All of them have to be shown.</summary>
    public static ImmutableArray<WashDemand> Of(AreaClass area, WashMethod wash) =>
        [
            wash switch
            {
                WashMethod.Dry => Splashes,
                WashMethod.Rinse => Jets,
                _ => PowerfulJets,
            },
            .. wash == WashMethod.HotHighPressure ? [HotJets] : ImmutableArray<WashDemand>.Empty,
            .. area == AreaClass.Food && wash != WashMethod.Dry ? [Immersion] : ImmutableArray<WashDemand>.Empty,
        ];

    /// <summary>Does a part so marked show it? Nothing is shown where nothing is marked.</summary>
    public static Shown Shows(ImmutableArray<string> marking, WashDemand demand)
    {
        if (marking.IsEmpty)
        {
            return Shown.Unstated;
        }

        // A marking that cannot be read shows nothing that anybody could judge.
        return IngressCode.Parse(string.Join('/', marking)) is not { } codes
            ? Shown.Review
            : demand.AnyOf.Max(code => IngressCode.Shows(codes, IngressCode.Parse(code)![0]));
    }
}
