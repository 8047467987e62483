using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Configurator.Core.Engineering.Box;
using Configurator.Core.Logic;
using Configurator.Core.Model;

namespace Configurator.Planning;

/// <summary>A port plan as text: one line a home and one line for what a fit takes of the box, in the order of the
/// keys, so that a change shows as the lines that changed. Comments stay with the line that they stand above or
/// behind.</summary>
public static class PlanFile
{
    private const string Modeline =
        "# yaml-language-server: $schema=../../site-templates/schemas/port-plan.v1.schema.json";

    /// <summary>The file that a plan gives: numbers in the box stay, and what has none gets its own.</summary>
    public static string Of(OrderLogic logic, PlanResult plan, string? old)
    {
        var kept = FormerPoints.Carry(plan.Machine, plan.Homes, ReadPoints(old ?? ""));
        return Write(plan.Machine.Id.Value, plan.Homes, BoxNumbers.Of(logic, kept).Pins, old);
    }

    /// <param name="points">Numbers in the box; the part is left out where there are none.</param>
    /// <param name="old">The file so far; null where there is none.</param>
    public static string Write(
        MachineId machine,
        ImmutableSortedDictionary<InstanceKey, Home> homes,
        ImmutableSortedDictionary<InstanceKey, BoxPins> points,
        string? old
    )
    {
        var comments = PlanComments.Of(old ?? "", Modeline);
        var text = new StringBuilder();
        text.Append(Modeline).Append('\n');
        comments.Head.ForEach(line => text.Append(line).Append('\n'));
        text.Append("port-plan: ").Append(machine.Value).Append('\n');
        Append(text, comments, "homes", homes.Select(line => (line.Key, line.Value.ToString())));
        if (!points.IsEmpty)
        {
            Append(text, comments, "box", points.Select(line => (line.Key, Text(line.Value))));
        }

        comments.Tail.ForEach(line => text.Append(line).Append('\n'));
        return text.ToString();
    }

    /// <summary>Every line of a plan that can be read, also those that name no fit any more.</summary>
    public static ImmutableSortedDictionary<InstanceKey, Home> Read(string text)
    {
        var homes = ImmutableSortedDictionary.CreateBuilder<InstanceKey, Home>();
        foreach (var line in text.Split('\n').Where(line => line.StartsWith(' ')))
        {
            var parts = line.Split(" #")[0].Split(": ", 2);
            if (
                parts.Length == 2
                && InstanceKey.Parse(Bare(parts[0])) is { } key
                && Home.Parse(Bare(parts[1])) is { } home
            )
            {
                homes[key] = home;
            }
        }

        return homes.ToImmutable();
    }

    /// <summary>Every line of its part on the box that stands on one line, also those that name no fit any
    /// more.</summary>
    public static ImmutableSortedDictionary<InstanceKey, BoxPins> ReadPoints(string text) =>
        text.Split('\n')
            .SkipWhile(line => !line.StartsWith("box:", StringComparison.Ordinal))
            .Select(line => line.Split(": ", 2))
            .Where(parts => parts.Length == 2 && InstanceKey.Parse(Bare(parts[0])) is not null)
            .DistinctBy(parts => Bare(parts[0]), StringComparer.Ordinal)
            .ToImmutableSortedDictionary(parts => InstanceKey.Parse(Bare(parts[0]))!.Value, parts => PinsIn(parts[1]));

    private static BoxPins PinsIn(string written) =>
        new(
            Enum.GetValues<BoxPoint>()
                .Select(point => KeyValuePair.Create(point, NumbersIn(written, BoxPointNames.Key(point))))
                .Where(own => !own.Value.IsEmpty)
                .ToImmutableSortedDictionary()
        );

    private static ImmutableArray<int> NumbersIn(string written, string key) =>
        [
            .. Regex
                .Match(written, $@"[{{ ]{key}: \[([0-9, ]+)\]", RegexOptions.NonBacktracking)
                .Groups[1]
                .Value.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                .Select(number => int.Parse(number, NumberStyles.None, CultureInfo.InvariantCulture)),
        ];

    private static void Append(
        StringBuilder text,
        PlanComments comments,
        string section,
        IEnumerable<(InstanceKey Key, string Value)> lines
    )
    {
        ImmutableArray<(InstanceKey Key, string Value)> sorted =
        [
            .. lines.OrderBy(line => line.Key.ToString(), StringComparer.Ordinal),
        ];
        text.Append(section).Append(':').Append(sorted.IsEmpty ? " {}\n" : "\n");
        foreach (var (key, value) in sorted)
        {
            var (above, behind) = comments.On(section, key.ToString());
            above.ForEach(line => text.Append(line).Append('\n'));
            text.Append("  ").Append(key).Append(": ").Append(value).Append(behind).Append('\n');
        }
    }

    /// <summary><c>{safety-inputs: [1, 2], inputs: [4]}</c>.</summary>
    private static string Text(BoxPins pins) =>
        "{" + string.Join(", ", pins.Numbers.Select(own => $"{BoxPointNames.Key(own.Key)}: [{Text(own.Value)}]")) + "}";

    private static string Text(ImmutableArray<int> numbers) =>
        string.Join(", ", numbers.Select(number => number.ToString(CultureInfo.InvariantCulture)));

    private static string Bare(string scalar) => scalar.Trim().Trim('"', '\'');
}
