using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Signals;

/// <summary>When a device is fitted, as an expression of IEC 61131-3 over the enable constants of an order.</summary>
internal sealed record LiveWhen(Machine Machine)
{
    /// <summary>Null where it always is.</summary>
    public string? Of(FitInstance instance)
    {
        var parts = new[] { Brought(instance), instance.Fit.When is { } when ? Of(when) : null }.OfType<string>();
        var all = string.Join(" AND ", parts);
        return all.Length == 0 ? null : all;
    }

    private static string? Brought(FitInstance instance) =>
        instance.Option is not { } option ? null
        : instance.Fit.Per == FitPer.Quantity && instance.Key.Ordinal > 1
            ? AtLeast(option.Id.Value, instance.Key.Ordinal)
        : Tags.Enable(option.Id.Value);

    private string Of(Condition condition) =>
        condition switch
        {
            OptionCount count => Of(count),
            AllOf { Of.IsEmpty: false } all => Group(all.Of, " AND "),
            AnyOf { Of.IsEmpty: false } any => Group(any.Of, " OR "),
            NoneOf { Of.IsEmpty: false } none => $"NOT {Group(none.Of, " OR ")}",
            _ => condition is AnyOf ? "FALSE" : "TRUE",
        };

    private string Group(IEnumerable<Condition> of, string joined) => $"({string.Join(joined, of.Select(Of))})";

    /// <summary>An option that this machine does not offer has no constant, and is never ordered.</summary>
    private string Of(OptionCount count)
    {
        if (!Machine.Options.TryGetValue(count.Option, out var option))
        {
            return count.AtLeast > 0 ? "FALSE" : "TRUE";
        }

        var least = count.AtLeast > 0 ? AtLeast(option.Id.Value, count.AtLeast) : null;
        var most = count.AtMost switch
        {
            null => null,
            0 => $"NOT {Tags.Enable(option.Id.Value)}",
            _ when option.Quantity is null => null,
            { } limit => FormattableString.Invariant($"({Tags.Count(option.Id.Value)} <= {limit})"),
        };
        return (least, most) switch
        {
            ({ } from, { } to) => $"({from} AND {to})",
            _ => least ?? most ?? "TRUE",
        };
    }

    private static string AtLeast(OptionId option, int count) =>
        count == 1 ? Tags.Enable(option) : FormattableString.Invariant($"({Tags.Count(option)} >= {count})");
}
