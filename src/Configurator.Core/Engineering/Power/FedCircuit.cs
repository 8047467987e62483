using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Power;

/// <summary>One circuit of the trunk of a machine as it is mounted, with all that it carries.</summary>
/// <param name="Loads">What each master takes, in trunk order.</param>
/// <param name="Solved">Null where no voltage carries the load.</param>
internal sealed record FedCircuit(
    FittedMachine Fitted,
    FieldPower Power,
    FieldCircuit Circuit,
    TrunkFeed Feed,
    ImmutableArray<TapLoad> Loads,
    FeedVolts? Solved
)
{
    public Machine Machine => Fitted.Machine;

    public ImmutableArray<Master> Masters => Feed.Masters;

    public CircuitUse Use => Circuit.Feeds;

    public string Name => Circuit.Name.Value;

    public static FedCircuit Of(FittedMachine fitted, FieldPower power, FieldCircuit circuit)
    {
        var feed = TrunkFeed.Of(power, fitted.Machine, fitted.Masters);
        ImmutableArray<TapLoad> loads =
        [
            .. fitted.Masters.Select(master => TapLoads.Of(fitted, master, circuit.Feeds)),
        ];
        return new(fitted, power, circuit, feed, loads, FeedVolts.Of(feed, loads));
    }
}
