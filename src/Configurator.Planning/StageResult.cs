namespace Configurator.Planning;

/// <summary>What is made as small as possible, in this order.</summary>
public enum PlanStage
{
    /// <summary>Fits without a port.</summary>
    Unplaced,

    /// <summary>Ports taken from those that the policy keeps spare.</summary>
    SpareTaken,

    /// <summary>Extension masters that carry anything.</summary>
    Extensions,

    /// <summary>Homes that move.</summary>
    Moves,

    /// <summary>Cables into the box.</summary>
    BoxCables,

    /// <summary>Extension masters fitted, summed over all configurations, in parts per million of these.</summary>
    OrdersWithExtension,

    /// <summary>Cable from stock in millimetres; a splitter counts as one of the shortest cables.</summary>
    Cable,

    /// <summary>Ports given away.</summary>
    Ports,
}

/// <summary>What one stage came to: proved where value and bound are the same.</summary>
public sealed record StageResult(PlanStage Stage, long Value, long Bound)
{
    public bool IsProved => Value == Bound;
}
