using System.Collections.Immutable;
using Configurator.Core.Documents;
using Configurator.Core.Engineering.Timing;
using Configurator.Core.Model;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Topics;

/// <summary>Devices and masters that machines can carry and published configurations do, and what masters exchange
/// with the controller.</summary>
internal static class HardwareChanges
{
    public static IEnumerable<Change> Of(ReviewContext context) =>
        Gather
            .Alike(
                context
                    .Machines.Where(pair => pair.IsWhole)
                    .SelectMany(pair => OfMachine(context, pair))
                    .Concat(context.Configurations.SelectMany(pair => OfConfiguration(context, pair)))
            )
            .Select(change =>
                change.Configurations.IsEmpty ? change with { Remark = "in no published configuration" } : change
            )
            .Concat(Gather.Alike(context.Configurations.SelectMany(Images)));

    private static IEnumerable<Change> OfMachine(ReviewContext context, MachinePair pair) =>
        Devices(context, (pair.Before, pair.Before.Instances), (pair.After, pair.After.Instances))
            .Concat(Masters((pair.Before, pair.Before.Control.Masters), (pair.After, pair.After.Control.Masters)));

    private static IEnumerable<Change> OfConfiguration(ReviewContext context, ConfigurationPair pair)
    {
        var (before, after) = (pair.Before.Report.Fitted, pair.After.Report.Fitted);
        return Devices(context, (before.Machine, before.Fitted), (after.Machine, after.Fitted))
            .Concat(Masters((before.Machine, before.Masters), (after.Machine, after.Masters)))
            .Select(change => change with { Configurations = [pair.Id.Value] });
    }

    private static IEnumerable<Change> Devices(
        ReviewContext context,
        (Machine Machine, ImmutableArray<FitInstance> Instances) before,
        (Machine Machine, ImmutableArray<FitInstance> Instances) after
    )
    {
        var was = before.Instances.ToDictionary(instance => context.Renames.Of(instance.Key));
        var now = after.Instances.ToDictionary(instance => instance.Key);
        foreach (var key in was.Keys.Union(now.Keys).Order())
        {
            var (old, added) = (was.GetValueOrDefault(key), now.GetValueOrDefault(key));
            if (old?.Device.Id.Value != added?.Device.Id.Value)
            {
                yield return new(
                    HardwareKinds.DeviceChanged,
                    $"`{key}`",
                    [
                        .. added is null ? [] : PlacesOf.Instance(after.Machine, added, isBefore: false),
                        .. old is null ? [] : PlacesOf.Instance(before.Machine, old, isBefore: true),
                    ]
                )
                {
                    Machine = after.Machine.Id.Value,
                    Before = old is null ? "" : $"`{old.Device.Id.Value}`",
                    After = added is null ? "" : $"`{added.Device.Id.Value}`",
                    PagesBefore = old is null ? [] : [PagePaths.Of(old.Device.Id.Value)],
                    PagesAfter = added is null ? [] : [PagePaths.Of(added.Device.Id.Value)],
                };
            }
        }
    }

    private static IEnumerable<Change> Masters(
        (Machine Machine, ImmutableArray<Master> Masters) before,
        (Machine Machine, ImmutableArray<Master> Masters) after
    )
    {
        var was = before.Masters.ToDictionary(master => master.Name.Value);
        var now = after.Masters.ToDictionary(master => master.Name.Value);
        foreach (var name in was.Keys.Union(now.Keys).Order())
        {
            var (old, added) = (was.GetValueOrDefault(name), now.GetValueOrDefault(name));
            if (old is null || added is null)
            {
                yield return new(
                    HardwareKinds.MasterChanged,
                    $"`{name}`",
                    [added is null ? ReviewPlace.Before(old!.Name.Span) : ReviewPlace.After(added.Name.Span)]
                )
                {
                    Machine = after.Machine.Id.Value,
                    Before = old is null ? "" : $"`{old.Device.Id.Value}`",
                    After = added is null ? "" : $"`{added.Device.Id.Value}`",
                };
            }
        }
    }

    private static IEnumerable<Change> Images(ConfigurationPair pair)
    {
        var (before, after) = (pair.Before.Report.Fitted, pair.After.Report.Fitted);
        foreach (var master in after.Masters)
        {
            if (before.Masters.FirstOrDefault(one => one.Name.Value == master.Name.Value) is not { } was)
            {
                continue;
            }

            var (old, now) = (ImageOf.Of(before, was), ImageOf.Of(after, master));
            if (old != now)
            {
                yield return new(
                    HardwareKinds.ImageChanged,
                    $"`{master.Name.Value}`",
                    [
                        .. after
                            .PluggedInto(master.Name.Value)
                            .SelectMany(plugged =>
                                PlacesOf.Instance(after.Machine, plugged.Instance, isBefore: false).Take(1)
                            ),
                        ReviewPlace.After(master.Name.Span),
                    ]
                )
                {
                    Machine = pair.Machine,
                    Before = old.Octets,
                    After = now.Octets,
                    Remark = old.Octets == now.Octets ? "the same number of octets at other ports" : "",
                    Configurations = [pair.Id.Value],
                };
            }
        }
    }

    private sealed record ImageOf(string Octets, string Ports)
    {
        public static ImageOf Of(Engineering.FittedMachine fitted, Master master) =>
            new(
                FormattableString.Invariant(
                    $"{ProcessImage.Octets(fitted, master, isInput: true)} octets in, {ProcessImage.Octets(fitted, master, isInput: false)} out"
                ),
                string.Join(
                    ' ',
                    fitted
                        .PluggedInto(master.Name.Value)
                        .Where(plugged => plugged.Instance.Device.IoLink is not null)
                        .OrderBy(plugged => plugged.Home.Port)
                        .Select(plugged =>
                            FormattableString.Invariant(
                                $"{plugged.Home.Port}:{plugged.Instance.Device.IoLink!.InputOctets}/{plugged.Instance.Device.IoLink.OutputOctets}"
                            )
                        )
                )
            );
    }
}
