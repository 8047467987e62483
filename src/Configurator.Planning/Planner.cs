using System.Collections.Immutable;
using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Planning;

/// <summary>Gives every fit of a machine its home port, the same in all orders.</summary>
public static class Planner
{
    /// <summary>Plans the machine of these rules. The same input gives the same plan.</summary>
    /// <param name="homes">Homes so far, as <see cref="FormerHomes"/> carries them over.</param>
    public static PlanResult Plan(
        OrderLogic logic,
        ImmutableSortedDictionary<InstanceKey, Home> homes,
        PlanMode mode,
        PlanEffort effort
    )
    {
        var old = mode == PlanMode.FromScratch ? ImmutableSortedDictionary<InstanceKey, Home>.Empty : homes;
        var problem = ProblemBuilder.Of(logic, old);
        var (draft, stages) = new PlanSolver(problem, mode, effort, withCurrent: true).Solve();
        // Where the effort did not suffice for any plan, what has a home keeps it.
        draft ??= new(
            [.. problem.Items.Where(item => item.Old is null)],
            [.. problem.Items.Where(item => item.Old is not null)],
            [],
            []
        );
        return new(
            logic.Machine,
            PortNumbering.Homes(problem, draft).AddRange(Direct(logic.Machine)),
            stages,
            [.. draft.Unplaced.Select(item => Competition.Of(logic, problem, item, old, mode, effort))],
            homes
        )
        {
            IsCounted = problem.Facts.IsCounted,
            IsByMix = problem.Facts.IsByMix,
            Mode = mode,
            OrderScale = problem.Facts.Total <= OrderCuts.Scale ? (long)problem.Facts.Total : OrderCuts.Scale,
        };
    }

    private static IEnumerable<KeyValuePair<InstanceKey, Home>> Direct(Machine machine) =>
        machine
            .Instances.Where(instance => instance.Fit.Wiring == Wiring.Direct)
            .Select(instance => KeyValuePair.Create(instance.Key, Home.Direct));
}

/// <summary>A plan and how good it is.</summary>
/// <param name="Homes">Of every fit that found one, direct ones too.</param>
/// <param name="Before">Homes that there were.</param>
public sealed record PlanResult(
    Machine Machine,
    ImmutableSortedDictionary<InstanceKey, Home> Homes,
    ImmutableArray<StageResult> Stages,
    ImmutableArray<UnplacedFit> Unplaced,
    ImmutableSortedDictionary<InstanceKey, Home> Before
)
{
    /// <summary>False where orders could not be counted: then conditions were counted in their place.</summary>
    public bool IsCounted { get; init; } = true;

    /// <summary>Are configurations counted by the declared order mix?</summary>
    public bool IsByMix { get; init; }

    /// <summary>What the stages were free to move.</summary>
    public PlanMode Mode { get; init; }

    /// <summary>Configurations are counted in so many parts.</summary>
    public long OrderScale { get; init; }

    public IEnumerable<InstanceKey> Added => Homes.Keys.Where(key => !Before.ContainsKey(key));

    public IEnumerable<InstanceKey> Moved =>
        Homes
            .Where(home => Before.TryGetValue(home.Key, out var before) && before != home.Value)
            .Select(home => home.Key);

    /// <summary>Lines of fits that there are no more.</summary>
    public IEnumerable<InstanceKey> Dropped => Before.Keys.Where(key => !Homes.ContainsKey(key) && !IsFit(key));

    private bool IsFit(InstanceKey key) => Machine.Instances.Any(instance => instance.Key == key);
}
