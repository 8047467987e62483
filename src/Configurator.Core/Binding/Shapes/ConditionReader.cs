using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Diagnostics;
using Configurator.Core.Loading;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding.Shapes;

/// <summary>Reads conditions: an option id, a count of one, or <c>all</c>, <c>any</c>, <c>none</c> of
/// several.</summary>
internal sealed class ConditionReader(ICollection<Diagnostic> report)
{
    private const string Because = "because";
    private static readonly ImmutableArray<string> Groups = ["all", "any", "none"];
    private static readonly ImmutableArray<string> Counts = ["at-least", "at-most", "exactly"];

    public Condition? Read(SyntaxNode node) => Read(node, mayHaveBecause: false)?.Condition;

    public Requirement? ReadRequirement(SyntaxNode node) => Read(node, mayHaveBecause: true);

    public OptionLink? ReadLink(SyntaxNode node)
    {
        var requirement = Read(node, mayHaveBecause: true);
        if (requirement is null)
        {
            return null;
        }

        if (requirement.Condition is OptionCount { AtLeast: 1, AtMost: null } one)
        {
            return new(new(one.Option, one.Span), requirement.Because);
        }

        report.Add(BindingDiagnostics.FormWrong(node, new LinkShape()));
        return null;
    }

    private Requirement? Read(SyntaxNode node, bool mayHaveBecause) =>
        node switch
        {
            ScalarSyntax scalar => Option(scalar) is { } id
                ? new(new OptionCount(id.Value, 1, null, id.Span), null)
                : null,
            SequenceSyntax list => new(new AllOf(Each(list), list.Span), null),
            MappingSyntax map => FromMap(map, mayHaveBecause),
            _ => null,
        };

    private Requirement? FromMap(MappingSyntax map, bool mayHaveBecause)
    {
        var because = map[Because];
        var known = Groups.Concat(Counts).Append("option").Concat(mayHaveBecause ? [Because] : []);
        if (
            map
                .Entries.Select(entry => entry.Key)
                .FirstOrDefault(key => !known.Contains(key.Text, StringComparer.Ordinal)) is
            { } stranger
        )
        {
            report.Add(BindingDiagnostics.ConditionKeyUnknown(stranger, known));
            return null;
        }

        var condition = map["option"] is { } option ? FromCount(map, option) : FromGroup(map);
        return condition is null
            ? null
            : new(
                condition,
                because is null ? null : new ShapeReader(report).Read(because, new TextShape())?.Value as Text
            );
    }

    private Condition? FromCount(MappingSyntax map, SyntaxNode option)
    {
        if (map.Entries.Any(entry => Groups.Contains(entry.Key.Text, StringComparer.Ordinal)))
        {
            return Refuse(map);
        }

        if (option is not ScalarSyntax scalar || Option(scalar) is not { } id)
        {
            return option is ScalarSyntax or RefusedSyntax ? null : Refuse(option);
        }

        var exactly = Count(map, "exactly");
        var atLeast = exactly ?? Count(map, "at-least") ?? (map["at-most"] is null ? 1 : 0);
        return new OptionCount(id.Value, atLeast, exactly ?? Count(map, "at-most"), id.Span);
    }

    private Condition? FromGroup(MappingSyntax map)
    {
        var groups = map.Entries.Where(entry => Groups.Contains(entry.Key.Text, StringComparer.Ordinal)).ToList();
        if (groups.Count == 0 || map.Entries.Any(entry => Counts.Contains(entry.Key.Text, StringComparer.Ordinal)))
        {
            return Refuse(map);
        }

        ImmutableArray<Condition> parts = [.. groups.Select(FromGroup).OfType<Condition>()];
        return parts.Length == 1 ? parts[0] : new AllOf(parts, map.Span);
    }

    private Condition? FromGroup(EntrySyntax group)
    {
        if (group.Value is not SequenceSyntax list)
        {
            return group.Value is RefusedSyntax ? null : Refuse(group.Value);
        }

        var parts = Each(list);
        return group.Key.Text switch
        {
            "all" => new AllOf(parts, group.Key.Span),
            "any" => new AnyOf(parts, group.Key.Span),
            _ => new NoneOf(parts, group.Key.Span),
        };
    }

    private ImmutableArray<Condition> Each(SequenceSyntax list) => [.. list.Items.Select(Read).OfType<Condition>()];

    private Located<OptionId>? Option(ScalarSyntax scalar) =>
        new ScalarReader(report).Read(scalar, new IdShape("an option")) is { } id
            ? new(new((string)id.Value), id.Span)
            : null;

    private int? Count(MappingSyntax map, string key) =>
        map[key] switch
        {
            null or RefusedSyntax => null,
            ScalarSyntax scalar
                when int.TryParse(scalar.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) => count,
            var other => Bad(other),
        };

    private int? Bad(SyntaxNode node)
    {
        report.Add(BindingDiagnostics.FormWrong(node, new CountShape(0, 1000)));
        return null;
    }

    private Condition? Refuse(SyntaxNode node)
    {
        report.Add(BindingDiagnostics.FormWrong(node, new ConditionShape()));
        return null;
    }
}
