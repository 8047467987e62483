using System.Globalization;
using Configurator.Core.Model;

namespace Configurator.Core.Logic;

/// <summary>The form of a condition as text: equal for conditions that say the same in the same way, wherever they
/// stand.</summary>
public static class ConditionKey
{
    public static string Of(Condition condition) =>
        condition switch
        {
            OptionCount count => string.Create(
                CultureInfo.InvariantCulture,
                $"{count.Option}[{count.AtLeast}..{count.AtMost}]"
            ),
            AllOf { Of: [var only] } => Of(only),
            AnyOf { Of: [var only] } => Of(only),
            AllOf all => $"all({Parts(all.Of)})",
            AnyOf any => $"any({Parts(any.Of)})",
            NoneOf none => $"none({Parts(none.Of)})",
            _ => throw new InvalidOperationException($"no key for {condition.GetType().Name}"),
        };

    private static string Parts(IEnumerable<Condition> parts) => string.Join(',', parts.Select(Of));
}
