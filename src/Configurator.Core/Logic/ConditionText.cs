using Configurator.Core.Model;

namespace Configurator.Core.Logic;

/// <summary>Says a condition in words.</summary>
public static class ConditionText
{
    public static string Of(Condition condition) => Of(condition, option => $"`{option}`");

    /// <param name="name">How an option is called: by its id, or by its title for a salesperson.</param>
    public static string Of(Condition condition, Func<OptionId, string> name) =>
        condition switch
        {
            OptionCount count => Of(count, name),
            AllOf { Of.Length: 0 } => "nothing",
            AllOf all => Join(all.Of.Select(part => Nested(part, name)), "and"),
            AnyOf { Of.Length: 0 } => "something that does not exist",
            AnyOf any => Join(any.Of.Select(part => Nested(part, name)), "or"),
            NoneOf none => "no " + Join(none.Of.Select(part => Nested(part, name)), "and no"),
            _ => throw new InvalidOperationException($"no words for {condition.GetType().Name}"),
        };

    public static string List(IEnumerable<OptionId> options, string word) =>
        Join(options.Select(option => $"`{option}`"), word);

    private static string Nested(Condition condition, Func<OptionId, string> name) =>
        condition is AllOf { Of.Length: > 1 } or AnyOf { Of.Length: > 1 }
            ? $"({Of(condition, name)})"
            : Of(condition, name);

    private static string Of(OptionCount count, Func<OptionId, string> name) =>
        count switch
        {
            { AtLeast: 1, AtMost: null } => name(count.Option),
            { AtLeast: var n, AtMost: { } most } when n == most => FormattableString.Invariant(
                $"exactly {n} times {name(count.Option)}"
            ),
            { AtLeast: 0, AtMost: { } most } => FormattableString.Invariant(
                $"at most {most} times {name(count.Option)}"
            ),
            { AtMost: { } most } => FormattableString.Invariant(
                $"{count.AtLeast} to {most} times {name(count.Option)}"
            ),
            _ => FormattableString.Invariant($"at least {count.AtLeast} times {name(count.Option)}"),
        };

    private static string Join(IEnumerable<string> parts, string word)
    {
        var all = parts.ToList();
        return all.Count switch
        {
            0 => "nothing",
            1 => all[0],
            _ => $"{string.Join(", ", all.Take(all.Count - 1))} {word} {all[^1]}",
        };
    }
}
