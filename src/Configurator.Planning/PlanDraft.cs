using System.Collections.Immutable;

namespace Configurator.Planning;

/// <summary>Who lives in which group, before ports are numbered.</summary>
internal sealed record PlanDraft(
    ImmutableArray<PlanItem> Unplaced,
    ImmutableArray<PlanItem> Kept,
    ImmutableArray<JoinedPort> Joined,
    ImmutableArray<SharedPorts> Placed
);

/// <summary>A fit that takes turns with those who live there already.</summary>
internal sealed record JoinedPort(PlanItem Item, OldPort Port);

/// <summary>Fits of which those under different conditions take turns, and how many ports they have together.</summary>
internal sealed record SharedPorts(PlanGroup Group, ImmutableArray<PlanItem> Items, int Ports);
