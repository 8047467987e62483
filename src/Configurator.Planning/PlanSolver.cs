using System.Collections.Immutable;
using System.Globalization;
using Google.OrTools.Sat;

namespace Configurator.Planning;

/// <summary>Solves the stages one after the other; each keeps what the earlier ones reached and starts from their
/// solution. One worker, one seed, limits in the solver's own units: the same input gives the same plan.</summary>
internal sealed class PlanSolver(PlanProblem problem, PlanMode mode, PlanEffort effort, bool withCurrent)
{
    private readonly PlanModel _model = new(problem, mode != PlanMode.KeepHomes, withCurrent);
    private readonly List<StageResult> _stages = [];
    private PlanDraft? _draft;

    /// <summary>What the stages came to and the plan that they led to; no plan where nothing fits, not even with fits
    /// left out.</summary>
    public (PlanDraft? Draft, ImmutableArray<StageResult> Stages) Solve()
    {
        if (!Minimise(PlanStage.Unplaced, _model.UnplacedCount))
        {
            return (null, [.. _stages]);
        }

        Minimise(PlanStage.SpareTaken, _model.SpareTaken);
        Minimise(PlanStage.Extensions, _model.UsedCount);
        if (mode == PlanMode.FewestMoves)
        {
            Minimise(PlanStage.Moves, _model.Moves);
        }

        // Which cables enter the box is a matter of how fits are wired, not of their homes.
        _stages.Add(new(PlanStage.BoxCables, problem.BoxCables, problem.BoxCables));
        var orders = MinimiseOrders();
        MinimiseWithin(orders, PlanStage.Cable, _model.CableLength);
        MinimiseWithin(orders, PlanStage.Ports, _model.PortCount);
        return (_draft, [.. _stages]);
    }

    /// <summary>Only the first stage: how many fits find no port.</summary>
    public long? FewestUnplaced() => Minimise(PlanStage.Unplaced, _model.UnplacedCount) ? _stages[^1].Value : null;

    /// <param name="bound">Known already; none is below it.</param>
    private bool Minimise(PlanStage stage, LinearExpr goal, long? bound = null)
    {
        _model.Model.Minimize(goal);
        var solver = NewSolver(effort.PerStage);
        if (solver.Solve(_model.Model) is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            // The solution so far stays; how good it is, this stage cannot say.
            return false;
        }

        Keep(solver);
        var value = (long)Math.Round(solver.ObjectiveValue);
        _stages.Add(new(stage, value, Math.Min(value, bound ?? BoundOf(solver))));
        _model.Model.Add(goal <= value);
        return true;
    }

    /// <summary>Minimises among all plans that need an extension in no more orders. What only seems to is learnt and
    /// ruled out; where that takes too long, the extensions stay as they are.</summary>
    private void MinimiseWithin((OrderCuts Cuts, long Best)? orders, PlanStage stage, LinearExpr goal)
    {
        if (orders is not { } known)
        {
            Minimise(stage, goal);
            return;
        }

        var (bound, left) = (0L, effort.PerStage);
        while (left > 0)
        {
            _model.Model.Minimize(goal);
            var solver = NewSolver(left);
            if (solver.Solve(_model.Model) is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            {
                break;
            }

            left -= Math.Max(solver.Response!.DeterministicTime, effort.Round / 100);
            bound = Math.Max(bound, BoundOf(solver));
            if (known.Cuts.Learn(solver) <= known.Best)
            {
                Keep(solver);
                var value = (long)Math.Round(solver.ObjectiveValue);
                _stages.Add(new(stage, value, Math.Min(value, bound)));
                _model.Model.Add(goal <= value);
                return;
            }
        }

        known.Cuts.Freeze(_draft!);
        Minimise(stage, goal, bound);
    }

    private (OrderCuts Cuts, long Best)? MinimiseOrders()
    {
        if (_model.Used.Count == 0)
        {
            _stages.Add(new(PlanStage.OrdersWithExtension, 0, 0));
            return null;
        }

        var orders = new OrderCuts(problem, _model);
        var (best, bound) = (long.MaxValue, 0L);
        var left = effort.Orders;
        while (left > 0 && bound < best)
        {
            _model.Model.Minimize(orders.Goal);
            var solver = NewSolver(Math.Min(left, effort.Round));
            if (solver.Solve(_model.Model) is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            {
                break;
            }

            left -= Math.Max(solver.Response!.DeterministicTime, effort.Round / 100);
            bound = Math.Max(bound, BoundOf(solver));
            var value = orders.Learn(solver);
            if (value < best)
            {
                best = value;
                Keep(solver);
            }
        }

        _stages.Add(new(PlanStage.OrdersWithExtension, best, Math.Min(best, bound)));
        orders.KeepTo(best);
        return (orders, best);
    }

    private static long BoundOf(CpSolver solver) => (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6);

    private static CpSolver NewSolver(double work) =>
        new()
        {
            StringParameters = string.Create(
                CultureInfo.InvariantCulture,
                $"num_workers:1 random_seed:1 linearization_level:2 max_deterministic_time:{work}"
            ),
        };

    private void Keep(CpSolver solver)
    {
        _draft = _model.Read(solver);
        _model.Model.ClearHints();
        _model.Hint(solver);
    }
}
