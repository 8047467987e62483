using System.Collections.Immutable;
using Configurator.Core.Engineering;
using Configurator.Core.Model;

namespace Configurator.Core.Review;

/// <summary>Both sides, and what on one corresponds to what on the other.</summary>
internal sealed class ReviewContext
{
    public ReviewContext(ReviewSide before, ReviewSide after, DateOnly? on)
    {
        (Before, After, On) = (before, after, on);
        Renames = Renames.Between(before.Catalogue, after.Catalogue);
        Machines =
        [
            .. before
                .Catalogue.Machines.Values.Where(machine =>
                    after.Catalogue.Machines.ContainsKey(Renames.Of(machine.Id.Value))
                )
                .Select(machine => Pair(machine, after.Catalogue.Machines[Renames.Of(machine.Id.Value)]))
                .OrderBy(pair => pair.Id),
        ];
        var engineered = after.Engineered.Configurations.ToDictionary(Id);
        Configurations =
        [
            .. before
                .Engineered.Configurations.Where(configuration => engineered.ContainsKey(Id(configuration)))
                .Select(configuration => new ConfigurationPair(configuration, engineered[Id(configuration)]))
                .Where(pair => Renames.Of(pair.Before.Machine.Id.Value) == pair.Machine)
                .OrderBy(pair => pair.Machine)
                .ThenBy(pair => pair.Id),
        ];
    }

    public ReviewSide Before { get; }

    public ReviewSide After { get; }

    /// <summary>The day of the run; null where none was given.</summary>
    public DateOnly? On { get; }

    public Renames Renames { get; }

    /// <summary>Machines that both sides have.</summary>
    public ImmutableArray<MachinePair> Machines { get; }

    /// <summary>Published configurations that both sides could engineer.</summary>
    public ImmutableArray<ConfigurationPair> Configurations { get; }

    private MachinePair Pair(Machine before, Machine after) =>
        new(
            before,
            after,
            Before.Engineered.Proved.Logic.GetValueOrDefault(before.Id.Value)?.Logic,
            After.Engineered.Proved.Logic.GetValueOrDefault(after.Id.Value)?.Logic
        );

    private static ConfigurationId Id(EngineeredConfiguration configuration) => configuration.Published.Id.Value;
}
