using System.Collections.Immutable;
using Configurator.Core.Documents.Blocks;
using Configurator.Core.Documents.Monitoring;
using Configurator.Core.Engineering.Monitoring;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>What this machine offers a monitoring system: what to read where, how often, and why not more
/// often.</summary>
internal static class MonitoringDocument
{
    public static ConfigurationDocument Document { get; } =
        new("monitoring", Suffix, words => words.Monitoring, words => words.MonitoringLead, Sections);

    public const string Suffix = "ML";

    private static IEnumerable<Section> Sections(ConfigurationContext context)
    {
        var words = context.Words;
        var points = MonitoringPoints.Of(context.Fitted);
        yield return new("cautions", words.Cautions, [new Caution(words.Cautions, Cautions.Watching(words))]);
        yield return new("files", words.DataFiles, [Files(context)]);
        yield return new(
            "values",
            words.ProcessValues,
            [new Paragraph(words.ProcessValuesLead), Values(context, points)]
        );
        yield return new(
            "device-data",
            words.DeviceData,
            [new Paragraph(words.DeviceDataLead), Parameters(context, points)]
        );
        yield return new("reasons", words.Reasons, [Reasons(words)]);
        yield return new("status", words.StatusMeaning, [Meanings(context)]);
        yield return new("events", words.Events, [new Paragraph(words.EventsLead), EventTable.Of(words)]);
    }

    private static LinkList Files(ConfigurationContext context) =>
        new([
            new(
                context.Links.To(PagePaths.MonitoringData(context.Engineered.Published), "monitoring.json"),
                context.Words.MonitoringData
            ),
            new(
                context.Links.To(MonitoringSchema.File.Path, "monitoring.v1.schema.json"),
                context.Words.MonitoringSchema
            ),
        ]);

    private static Table Values(ConfigurationContext context, ImmutableArray<MonitoredPoint> points)
    {
        var words = context.Words;
        return new(
            "process-values",
            words.ProcessValues,
            [
                new(words.Tag),
                new(words.Signal),
                new(words.Purpose),
                new(words.Designation),
                new(words.Port),
                new(words.Octet, IsNumber: true),
                new(words.Bit, IsNumber: true),
                new(words.Type),
                new(words.Unit),
                new(words.OneCount, IsNumber: true),
                new(words.UsefulRate),
                new(words.Reason),
            ],
            [
                .. points
                    .Where(point => point.Kind == PointKind.ProcessValue)
                    .Select(point =>
                        Row.Of(
                            point.Signal!.Tag,
                            SignalTable.Say(context, point.Signal),
                            context.In(point.Instance.Fit.Purpose),
                            context.Names.Of(point.Instance),
                            SignalTable.PortOf(context, point.Signal),
                            point.Signal.Item is { } item ? DocumentContext.Print(item.Octet) : "",
                            point.Signal.Item is { } same ? DocumentContext.Print(same.Bit) : "",
                            point.Type,
                            point.Signal.Item?.Range.Unit is { } unit ? UnitPrinter.Symbol(unit) : "",
                            point.Signal.Item?.Range.Step?.ToString() ?? "",
                            Rate(words, point),
                            words.Short(point.Reason)
                        )
                    ),
            ]
        );
    }

    /// <summary>In full once; rows name them in a word or two.</summary>
    private static Table Reasons(SiteWords words) =>
        new(
            "reasons",
            words.Reasons,
            [new(words.Reason), new(words.Meaning)],
            [.. Enum.GetValues<RateReason>().Select(reason => Row.Of(words.Short(reason), words.Of(reason)))]
        );

    private static Table Parameters(ConfigurationContext context, ImmutableArray<MonitoredPoint> points)
    {
        var words = context.Words;
        return new(
            "device-data",
            words.DeviceData,
            [
                new(words.Designation),
                new(words.Port),
                new(words.Sort),
                new(words.Parameter),
                new("Index", IsNumber: true),
                new("Subindex", IsNumber: true),
                new(words.Type),
                new(words.Unit),
                new(words.ReadingTakes, IsNumber: true),
                new(words.UsefulRate),
                new(words.Reason),
            ],
            [
                .. points
                    .Where(point => point.Kind != PointKind.ProcessValue)
                    .Select(point =>
                        Row.Of(
                            context.Names.Of(point.Instance),
                            context.Names.Port(context.Engineered.Machine, point.Port),
                            words.Of(point.Kind),
                            point.Parameter is { } parameter ? context.In(parameter.Title) : point.Name,
                            FormattableString.Invariant($"{point.Index} (0x{point.Index:X4})"),
                            DocumentContext.Print(point.Subindex),
                            point.Type,
                            point.Parameter?.Unit is { } unit ? UnitPrinter.Symbol(unit) : "",
                            $"{new Measure(point.ReadingMilliseconds ?? 0, "ms")}",
                            Rate(words, point),
                            words.Short(point.Reason)
                        )
                    ),
            ]
        );
    }

    private static string Rate(SiteWords words, MonitoredPoint point) =>
        point.EveryMilliseconds is { } every
            ? words.Every(every < 1000 ? new Measure(every, "ms") : new Measure(every / 1000, "s"))
            : words.Occasion(point.Reason);

    /// <remarks>Source: IO-Link Interface and System Specification v1.1.x (IEC 61131-9) Table B.13;
    /// corroborated.</remarks>
    private static Table Meanings(ConfigurationContext context)
    {
        var words = context.Words;
        return new(
            "status-values",
            words.StatusMeaning,
            [new(words.Value, IsNumber: true), new(words.Meaning), new(words.WhatToDo)],
            [
                .. Enumerable
                    .Range(0, SiteWords.StatusCount)
                    .Select(value =>
                        Row.Of(DocumentContext.Print(value), words.StatusOf(value), words.ActionOn(value))
                    ),
            ]
        );
    }
}
