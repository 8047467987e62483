using System.Collections.Immutable;
using System.Text;
using Configurator.Core.Model;

namespace Configurator.Planning;

/// <summary>A port plan as text: one line a home, in the order of the keys, so that a change shows as the lines that
/// changed. Comments stay with the line that they stand above or behind.</summary>
public static class PlanFile
{
    private const string Modeline =
        "# yaml-language-server: $schema=../../site-templates/schemas/port-plan.v1.schema.json";

    /// <param name="old">The file so far; null where there is none.</param>
    public static string Write(MachineId machine, ImmutableSortedDictionary<InstanceKey, Home> homes, string? old)
    {
        var comments = Comments(old ?? "");
        var text = new StringBuilder();
        text.Append(Modeline).Append('\n');
        comments.Head.ForEach(line => text.Append(line).Append('\n'));
        text.Append("port-plan: ")
            .Append(machine.Value)
            .Append('\n')
            .Append("homes:")
            .Append(homes.IsEmpty ? " {}\n" : "\n");
        foreach (var (key, home) in homes.OrderBy(line => line.Key.ToString(), StringComparer.Ordinal))
        {
            var (above, behind) = comments.Lines.GetValueOrDefault(key.ToString(), ([], ""));
            above.ForEach(line => text.Append(line).Append('\n'));
            text.Append("  ").Append(key).Append(": ").Append(home).Append(behind).Append('\n');
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

    private static string Bare(string scalar) => scalar.Trim().Trim('"', '\'');

    private static Remarks Comments(string old)
    {
        var remarks = new Remarks([], new(StringComparer.Ordinal), []);
        var above = new List<string>();
        var isInHomes = false;
        foreach (var line in old.Split('\n').Select(line => line.TrimEnd('\r')).Where(line => line != Modeline))
        {
            var trimmed = line.TrimStart();
            if (trimmed.StartsWith('#'))
            {
                (isInHomes ? above : remarks.Head).Add(line);
            }
            else if (!char.IsWhiteSpace(line.FirstOrDefault('x')))
            {
                isInHomes |= line.StartsWith("homes:", StringComparison.Ordinal);
            }
            else if (trimmed.IndexOf(':', StringComparison.Ordinal) is var colon and > 0)
            {
                var hash = line.IndexOf(" #", StringComparison.Ordinal);
                remarks.Lines[trimmed[..colon].Trim('"', '\'')] = (
                    above,
                    hash < 0 ? "" : "  " + line[hash..].TrimStart()
                );
                above = [];
            }
        }

        remarks.Tail.AddRange(above);
        return remarks;
    }

    private sealed record Remarks(
        List<string> Head,
        Dictionary<string, (List<string> Above, string Behind)> Lines,
        List<string> Tail
    );
}
