namespace Configurator.Core.Logic;

/// <summary>Says in words what a repair changes.</summary>
public static class ChangeText
{
    public static string Of(Repair repair) => Of(repair, option => $"`{option}`");

    /// <param name="name">How an option is called: by its id, or by its title for a salesperson.</param>
    public static string Of(Repair repair, Func<Model.OptionId, string> name) =>
        repair.Changes.IsEmpty
            ? "the order as it is"
            : string.Join(", ", repair.Changes.OrderBy(change => change.After > 0).Select(change => Of(change, name)));

    private static string Of(OrderChange change, Func<Model.OptionId, string> name) =>
        change switch
        {
            { After: 0 } => $"leave out {name(change.Option)}",
            { Before: { From: 0, To: 0 }, After: 1 } => $"add {name(change.Option)}",
            { Before: { From: 0, To: 0 } } => FormattableString.Invariant(
                $"add {change.After} times {name(change.Option)}"
            ),
            _ => FormattableString.Invariant($"take {change.After} times {name(change.Option)}"),
        };
}
