using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Review;

/// <summary>What machines and options of the earlier side are called in the later one, after <c>formerly</c>.</summary>
internal sealed class Renames
{
    private readonly Dictionary<MachineId, MachineId> _machines;
    private readonly Dictionary<OptionId, OptionId> _options;

    private Renames(Dictionary<MachineId, MachineId> machines, Dictionary<OptionId, OptionId> options) =>
        (_machines, _options) = (machines, options);

    public IEnumerable<KeyValuePair<OptionId, OptionId>> Options => _options.OrderBy(name => name.Key);

    public IEnumerable<KeyValuePair<MachineId, MachineId>> Machines => _machines.OrderBy(name => name.Key);

    /// <summary>An old id counts only where nothing else has it now, and the new one was not there before.</summary>
    public static Renames Between(Catalogue before, Catalogue after) =>
        new(
            Names(
                before.Machines.Keys,
                after.Machines.Values.SelectMany(machine =>
                    machine.Formerly.Select(old => (new MachineId(old.Value), machine.Id.Value))
                ),
                after.Machines.Keys
            ),
            Names(
                before.Options.Keys,
                after.Options.Values.SelectMany(option =>
                    option.Formerly.Select(old => (new OptionId(old.Value), option.Id.Value))
                ),
                after.Options.Keys
            )
        );

    public MachineId Of(MachineId machine) => _machines.GetValueOrDefault(machine, machine);

    public OptionId Of(OptionId option) => _options.GetValueOrDefault(option, option);

    public string OfOption(string option) => Of(new OptionId(option)).Value;

    public InstanceKey Of(InstanceKey key) => key with { Source = OfOption(key.Source) };

    /// <summary>What a finding is about may start with an option.</summary>
    public string OfFinding(string id)
    {
        var parts = id.Split('/', 3);
        return parts.Length < 3 ? id : $"{parts[0]}/{OfOption(parts[1])}/{parts[2]}";
    }

    private static Dictionary<TId, TId> Names<TId>(
        IEnumerable<TId> before,
        IEnumerable<(TId Old, TId New)> formerly,
        IEnumerable<TId> after
    )
        where TId : struct
    {
        var (old, now) = (before.ToImmutableHashSet(), after.ToImmutableHashSet());
        return formerly
            .Where(name => old.Contains(name.Old) && !now.Contains(name.Old) && !old.Contains(name.New))
            .DistinctBy(name => name.Old)
            .DistinctBy(name => name.New)
            .ToDictionary(name => name.Old, name => name.New);
    }
}
