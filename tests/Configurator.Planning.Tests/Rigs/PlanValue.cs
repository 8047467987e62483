namespace Configurator.Planning.Tests.Rigs;

/// <summary>What a plan comes to, in the order in which it counts.</summary>
/// <param name="Orders">Extensions fitted, summed over all configurations.</param>
/// <param name="Cable">Millimetres.</param>
internal sealed record PlanValue(
    long Unplaced,
    long SpareTaken,
    long Extensions,
    long Moves,
    long BoxCables,
    long Orders,
    long Cable,
    long Ports
) : IComparable<PlanValue>
{
    private IEnumerable<long> Parts =>
        [Unplaced, SpareTaken, Extensions, Moves, BoxCables, Orders, Cable, Ports];

    public int CompareTo(PlanValue? other) =>
        Parts.Zip(other!.Parts).Select(pair => pair.First.CompareTo(pair.Second)).FirstOrDefault(order => order != 0);

    public bool IsBetterThan(PlanValue? other) => other is null || CompareTo(other) < 0;

    public long Of(PlanStage stage) =>
        stage switch
        {
            PlanStage.Unplaced => Unplaced,
            PlanStage.SpareTaken => SpareTaken,
            PlanStage.Extensions => Extensions,
            PlanStage.Moves => Moves,
            PlanStage.BoxCables => BoxCables,
            PlanStage.OrdersWithExtension => Orders,
            PlanStage.Cable => Cable,
            _ => Ports,
        };
}
