using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.Cables;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Which stop function is given by what, and what each of them drops.</summary>
internal static class StopMatrix
{
    /// <summary>Names of circuits and devices that a stop function drops; nothing where none is named.</summary>
    public static IEnumerable<string> DroppedBy(ConfigurationContext context, string? stop) =>
        Dropped(context).Where(one => one.By.Any(name => name.Value == stop)).Select(one => one.Name);

    /// <summary>Stop functions that some fitted device gives, each with those devices.</summary>
    public static Table Givers(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "stop-givers",
            words.StopGivers,
            [new(words.StopFunction), new(words.GivenBy), new(words.InputsAt)],
            [
                .. Given(context)
                    .SelectMany(stop =>
                        GiversOf(context, stop)
                            .Select(giver =>
                                Row.Of(
                                    context.In(stop.Title),
                                    context.Names.Of(giver),
                                    new BoxWays(context).Inputs(giver)
                                )
                            )
                    ),
            ]
        );
    }

    /// <summary>A row for everything that can be dropped, a column for each stop function.</summary>
    public static Table Of(ConfigurationContext context)
    {
        var (words, stops) = (context.Words, Given(context).ToList());
        return new(
            "stop-matrix",
            words.StopMatrix,
            [new(words.WhatIsDropped), .. stops.Select(stop => new Column(context.In(stop.Title)))],
            [
                .. Dropped(context)
                    .Select(one =>
                        Row.Of([
                            one.Name,
                            .. stops.Select(stop =>
                                (Cell)(one.By.Any(name => name.Value == stop.Name.Value) ? words.Off : words.StaysOn)
                            ),
                        ])
                    ),
            ]
        );
    }

    private static IEnumerable<StopFunction> Given(ConfigurationContext context) =>
        context.Fitted.Machine.Control.Stops.Where(stop => GiversOf(context, stop).Any());

    private static IEnumerable<FitInstance> GiversOf(ConfigurationContext context, StopFunction stop) =>
        context.Fitted.Fitted.Where(instance => instance.Fit.Stop?.Value == stop.Name.Value);

    /// <summary>Circuits of the trunk, devices that are dropped, and what feeds loads and is never dropped.</summary>
    private static IEnumerable<(string Name, ImmutableArray<Located<string>> By)> Dropped(ConfigurationContext context)
    {
        var ways = new BoxWays(context);
        var feeders = context.Fitted.Cabled.Select(pair => ways.FeederOf(pair.Instance)).OfType<FitInstance>();
        return (context.Fitted.Machine.Control.Power?.Circuits ?? [])
            .Select(circuit => (circuit.Name.Value, circuit.DroppedBy))
            .Concat(ways.Droppers().Select(instance => (context.Names.Of(instance), instance.Fit.DroppedBy)))
            .Concat(
                feeders
                    .Where(feeder => feeder.Device.Kind != DeviceKind.Drive && feeder.Fit.DroppedBy.IsEmpty)
                    .DistinctBy(feeder => feeder.Key)
                    .Select(feeder => (context.Names.Of(feeder), feeder.Fit.DroppedBy))
            );
    }
}
