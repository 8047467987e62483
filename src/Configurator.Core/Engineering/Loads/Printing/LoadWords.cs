using System.Globalization;
using System.Numerics;
using Configurator.Core.Logic.Printing;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Loads.Printing;

/// <summary>What texts about loads have in common.</summary>
internal static class LoadWords
{
    public static string Scope(BigInteger? configurations) =>
        (
            configurations is { } count
                ? $"over all {OrderText.Number(count)} configurations that keep the rules"
                : "over all configurations that keep the rules (their number is not computed)"
        ) + ", each load by itself, homes after the port plan";

    /// <summary>The weight; where it is not proved, between what values it lies.</summary>
    public static string Weight(Load load, Extreme extreme) =>
        extreme.IsProved
            ? load.Print(extreme.Weight)
            : $"{load.Print(extreme.Weight)} found, {load.Print(extreme.Bound)} not ruled out";

    /// <summary>Options of a configuration by id, with their quantities.</summary>
    public static string Options(Configuration configuration) =>
        configuration.Quantities.IsEmpty
            ? "no option"
            : string.Join(
                ", ",
                configuration.Quantities.Select(taken =>
                    taken.Value == 1
                        ? taken.Key.Value
                        : string.Create(CultureInfo.InvariantCulture, $"{taken.Value} x {taken.Key}")
                )
            );
}
