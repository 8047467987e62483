using Configurator.Core.Model;

namespace Configurator.Core.Review;

/// <summary>Says "all" where a change concerns all published configurations of its machines: a long list hides
/// that.</summary>
internal sealed class Scopes
{
    private readonly Dictionary<string, MachineId> _machines;
    private readonly Dictionary<MachineId, int> _counts;

    public Scopes(ReviewContext context)
    {
        _machines = context.Configurations.ToDictionary(
            pair => pair.Id.Value,
            pair => pair.Machine,
            StringComparer.Ordinal
        );
        _counts = context.Configurations.CountBy(pair => pair.Machine).ToDictionary();
    }

    public Change In(Change change) => change with { Scope = Of(change) };

    private string Of(Change change)
    {
        var concerned = change.Configurations.Where(_machines.ContainsKey).CountBy(id => _machines[id]).ToList();
        var isAll = concerned.All(machine => _counts[machine.Key] == machine.Value);
        return change.Configurations.Length < 2 || !isAll ? ""
            : concerned.Count == _counts.Count && _counts.Count > 1
                ? FormattableString.Invariant($"all {_machines.Count} published")
            : concerned.Count == 1 && change.Machine is not null
                ? FormattableString.Invariant($"all {change.Configurations.Length} published")
            : $"all of {string.Join(" and ", concerned.Select(machine => $"`{machine.Key}`").Order(StringComparer.Ordinal))}";
    }
}
