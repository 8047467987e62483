namespace Configurator.Planning;

/// <summary>What may happen to homes that the port plan has already.</summary>
public enum PlanMode
{
    /// <summary>Every home stays; only what has none is placed.</summary>
    KeepHomes,

    /// <summary>Homes may move where that saves masters, as few as possible.</summary>
    FewestMoves,

    /// <summary>As if there were no plan yet.</summary>
    FromScratch,
}
