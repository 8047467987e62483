using Configurator.Core.Binding.Shapes;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Binding;

/// <summary>A bare number, or a quantity; AWG numbers are names of sizes and no values between limits.</summary>
internal sealed record WrittenNumber(Rational Value, Unit? Unit, Quantity? Quantity)
{
    public const string Wanted = "a bare number or a quantity such as `40 percent`";

    public static WrittenNumber? Read(string text) =>
        QuantityReader.Number(text) is { } bare ? new(bare, null, null)
        : QuantityReader.Read(text).Quantity is { Unit.Symbol: not "AWG" } quantity
            ? new(quantity.Value, quantity.Unit, quantity)
        : null;
}
