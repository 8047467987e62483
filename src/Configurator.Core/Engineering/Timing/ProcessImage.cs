using Configurator.Core.Engineering.Loads;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;
using Measure = Configurator.Core.Model.Units.Measure;

namespace Configurator.Core.Engineering.Timing;

/// <summary>Octets of process data that each master carries between its ports and the controller.</summary>
internal static class ProcessImage
{
    private static readonly bool[] InAndOut = [true, false];

    public static IEnumerable<Finding> Compute(FittedMachine fitted) =>
        fitted.Masters.SelectMany(master => Of(fitted, master));

    /// <summary>What masters come to in each order, for the worst of all.</summary>
    public static IEnumerable<WeightedSum> Sums(Machine machine) =>
        machine.Control.Masters.SelectMany(master =>
            InAndOut
                .Where(isInput => Limit(master, isInput) is not null)
                .Select(isInput =>
                    FitSums.Of(
                        FitConditions
                            .At(machine, master.Name.Value)
                            .Select(instance => (instance, (long)Octets(instance, isInput)))
                    )
                )
        );

    public static int Octets(FittedMachine fitted, Master master, bool isInput) =>
        fitted.PluggedInto(master.Name.Value).Sum(pair => Octets(pair.Instance, isInput));

    public static int? Limit(Master master, bool isInput) =>
        isInput ? master.Ports.InputOctetsMax : master.Ports.OutputOctetsMax;

    private static IEnumerable<Finding> Of(FittedMachine fitted, Master master)
    {
        foreach (var isInput in InAndOut)
        {
            if (Limit(master, isInput) is not { } limit)
            {
                continue;
            }

            var octets = Octets(fitted, master, isInput);
            var direction = isInput ? "in" : "out";
            yield return Finding.AtMost(
                TimingRules.Image,
                $"{master.Name.Value}/{direction}",
                FormattableString.Invariant($"devices at `{master.Name.Value}` exchange {octets} octets {direction}"),
                Measure.Count(octets),
                Measure.Count(limit),
                master.Name.Span
            ) with
            {
                Fix =
                    octets > limit
                        ? "give a device a home at another master, or take a master that carries more"
                        : null,
            };
        }
    }

    private static int Octets(FitInstance instance, bool isInput) =>
        instance.Device.IoLink is not { } data ? 0
        : isInput ? data.InputOctets
        : data.OutputOctets;
}
