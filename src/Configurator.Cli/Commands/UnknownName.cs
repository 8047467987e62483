using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Cli.Commands;

/// <summary>Says that a name in a call is not known here, and which one was most likely meant.</summary>
internal static class UnknownName
{
    public static int Say(string what, string name, IEnumerable<string> known, TextWriter errors)
    {
        errors.WriteLine($"configurator: {what}");
        errors.WriteLine(
            Nearest.To(name, known) is { } nearest
                ? $"  to fix: did you mean `{nearest}`?"
                : $"  to fix: use one of {string.Join(", ", known)}"
        );
        return ExitCodes.Usage;
    }

    /// <summary>An option that other machines offer is said to be theirs.</summary>
    public static int SayOfOption(
        OptionId option,
        Machine machine,
        ImmutableSortedDictionary<MachineId, MachineProof> proofs,
        TextWriter errors
    )
    {
        var others = proofs
            .Values.Select(proof => proof.Logic.Machine)
            .Where(other => other.Options.ContainsKey(option))
            .OrderBy(other => PlaceAmong(other.Options[option].OfferedOn, other.Id.Value))
            .Select(other => other.Title.In(Text.BaseLanguage))
            .ToList();
        var what =
            others.Count == 0
                ? $"there is no option on `{machine.Id.Value}` `{option}`"
                : $"`{option}` is not offered on {machine.Title.In(Text.BaseLanguage)} (it is on {Listed(others)})";
        return Say(what, option.Value, machine.Options.Keys.Select(id => id.Value), errors);
    }

    private static int PlaceAmong(IEnumerable<Core.Sources.Located<MachineId>> offeredOn, MachineId machine) =>
        offeredOn.TakeWhile(named => named.Value != machine).Count();

    private static string Listed(List<string> names) =>
        names.Count == 1 ? names[0] : $"{string.Join(", ", names[..^1])} and {names[^1]}";
}
