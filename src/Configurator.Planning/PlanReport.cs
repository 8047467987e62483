using System.Globalization;
using System.Text;
using Configurator.Core.Model;

namespace Configurator.Planning;

/// <summary>A plan in words.</summary>
public static class PlanReport
{
    private const int ShownMax = 12;

    public static string Of(PlanResult plan)
    {
        var text = new StringBuilder();
        text.Append(plan.Machine.Id.Value.Value).Append('\n');
        Say(
            text,
            Inv($"{plan.Homes.Count} fits at home, {plan.Added.Count()} of them new, {plan.Moved.Count()} moved")
        );
        foreach (var key in plan.Moved)
        {
            Say(text, $"moves: {key} from {plan.Before[key]} to {plan.Homes[key]}");
        }

        foreach (var key in plan.Added.Take(plan.Before.IsEmpty ? 0 : ShownMax))
        {
            Say(text, $"new: {key} at {plan.Homes[key]}");
        }

        foreach (var key in plan.Dropped)
        {
            Say(text, $"gone: {key} was at {plan.Before[key]}; there is no such fit any more");
        }

        foreach (var stage in plan.Stages)
        {
            Say(text, InWords(plan, stage));
        }

        foreach (var unplaced in plan.Unplaced)
        {
            Append(text, unplaced);
        }

        return text.ToString();
    }

    private static void Append(StringBuilder text, UnplacedFit unplaced)
    {
        Say(text, $"no port for {unplaced.Fit.Key} ({unplaced.Fit.Device.Id.Value}, {unplaced.Fit.Station.Id.Value})");
        foreach (var reason in unplaced.Reasons)
        {
            Say(text, $"  not at {reason}");
        }

        if (unplaced.Proof is { } proof)
        {
            Say(
                text,
                Inv($"  {proof.Ports} ports could take it; this order wants {proof.Wanted}: {OrderOf(proof.Order)}")
            );
        }

        if (!unplaced.Rivals.IsEmpty)
        {
            var shown = string.Join(", ", unplaced.Rivals.Take(ShownMax));
            var further = unplaced.Rivals.Length - ShownMax;
            Say(text, $"  competes with {shown}{(further > 0 ? Inv($" and {further} more") : "")}");
        }

        foreach (var help in unplaced.Helps)
        {
            Say(text, $"  would help: {help}");
        }

        if (unplaced.Helps.IsEmpty)
        {
            Say(text, "  would help: one more master within reach");
        }
    }

    private static string OrderOf(Configuration order) =>
        string.Join(
            ' ',
            order.Quantities.Select(pick => pick.Value == 1 ? pick.Key.Value : Inv($"{pick.Key}={pick.Value}"))
        );

    private static string InWords(PlanResult plan, StageResult stage)
    {
        var value = stage.Stage switch
        {
            PlanStage.Unplaced => Inv($"{stage.Value} fits without a port"),
            PlanStage.SpareTaken => Inv($"{stage.Value} ports taken from those kept spare"),
            PlanStage.Extensions => Inv($"{stage.Value} extension masters in use"),
            PlanStage.Moves => Inv($"{stage.Value} homes move"),
            PlanStage.BoxCables => Inv($"{stage.Value} cables into the box at most, given by how fits are wired"),
            PlanStage.OrdersWithExtension => Orders(plan, stage.Value),
            PlanStage.Cable => $"{Metres(stage.Value)} of cable to all fits",
            _ => Inv($"{stage.Value} ports given away"),
        };
        var bound =
            stage.Stage == PlanStage.Cable ? Metres(stage.Bound) : stage.Bound.ToString(CultureInfo.InvariantCulture);
        var kept = plan.Mode == PlanMode.KeepHomes ? " with these homes kept" : "";
        return stage.IsProved
            ? $"{value} (proved: fewer is impossible{kept})"
            : $"{value} (not proved: at least {bound}{kept})";
    }

    private static string Orders(PlanResult plan, long value) =>
        plan.IsCounted
            ? Inv(
                $"extension masters fitted, summed over all {(plan.IsByMix ? "orders by the declared mix" : "configurations")}: {value} per {plan.OrderScale}"
            )
            : Inv($"{value} kinds of order need an extension (configurations are not counted here)");

    private static string Metres(long millimetres) =>
        string.Create(CultureInfo.InvariantCulture, $"{millimetres / 1000m:0.###} m");

    private static void Say(StringBuilder text, string line) => text.Append("  ").Append(line).Append('\n');

    private static string Inv(FormattableString text) => FormattableString.Invariant(text);
}
