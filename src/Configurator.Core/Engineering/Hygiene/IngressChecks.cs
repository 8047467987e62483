using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>Does the marking of every washed part show what its area and washing ask for?</summary>
internal static class IngressChecks
{
    public static Finding Of(FittedMachine fitted, WashedPart part)
    {
        var wash = Washing.MethodIn(fitted.Machine, part.Area, fitted.Configuration.QuantityOf);
        var demands = WashDemands.Of(part.Area.Class, wash);
        var missed = demands.Where(demand => WashDemands.Shows(part.Ingress, demand) != Shown.Yes).ToList();
        var worst = Worst(part, wash);
        var asked = string.Join(" and ", demands.Select(demand => demand.Text));
        var marked = part.Ingress.IsEmpty ? "no ingress marking" : string.Join('/', part.Ingress);
        var place = $"area `{part.Area.Id.Value}` ({HygieneWords.Of(part.Area, wash)})";
        return new(
            HygieneRules.Ingress,
            part.About,
            $"{part.Name} in {place} has {marked} and needs {asked}"
                + (missed.Count == 0 ? "" : $": {HygieneWords.Of(worst)} {Because(missed)}"),
            HygieneWords.Verdict(worst),
            part.Span
        )
        {
            Details = [part.Device?.Id.Value.Value ?? part.About, part.Area.Id.Value.Value, asked, marked],
        };
    }

    /// <summary>The least that a part's marking shows of all that is asked.</summary>
    public static Shown Worst(WashedPart part, WashMethod wash) =>
        WashDemands.Of(part.Area.Class, wash).Min(demand => WashDemands.Shows(part.Ingress, demand));

    private static string Because(IEnumerable<WashDemand> missed) =>
        string.Join(" and of ", missed.Select(demand => $"{demand.Text} ({demand.Because})"));
}
