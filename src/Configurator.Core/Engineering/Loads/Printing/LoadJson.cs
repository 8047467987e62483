using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using System.Text;
using System.Text.Json;
using Configurator.Core.Logic.Covering;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Loads.Printing;

/// <summary>Loads for programs. Weights are whole numbers of the load's small unit, numbers of configurations are
/// strings of digits, whatever their length.</summary>
public static class LoadJson
{
    /// <summary>Writes <c>loads</c> and <c>pairs</c> into an open object.</summary>
    public static void Write(Utf8JsonWriter json, WorstCases cases, CoveringSet? covering)
    {
        json.WriteStartArray("loads");
        foreach (var worst in cases.Loads)
        {
            json.WriteStartObject();
            Write(json, worst);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        if (covering is null)
        {
            json.WriteString("pairs", "not computed");
            return;
        }

        json.WriteStartObject("pairs");
        json.WriteNumber("allowed", covering.Pairs);
        json.WriteNumber("at-least", covering.AtLeast);
        json.WriteStartArray("covered-by");
        foreach (var configuration in covering.Configurations)
        {
            Write(json, configuration);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    public static string Of(LoadReport report, BigInteger? configurations)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, new() { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("machine", report.Machine.Id.Value.Value);
            json.WriteString("scope", LoadWords.Scope(configurations));
            json.WriteString("configurations", Digits(configurations));
            Write(json, report.WorstCase);
            json.WriteString("mean", Fraction(report.Mean));
            Margins(json, report);
            Histogram(json, "histogram", report.Histogram);
            if (report.Mixed is { } mixed)
            {
                json.WriteStartObject("by-order-mix");
                json.WriteString("mean", Fraction(mixed.Mean));
                Histogram(json, "measure", mixed.Histogram);
                json.WriteEndObject();
            }

            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    private static void Write(Utf8JsonWriter json, WorstCase worst)
    {
        json.WriteString("load", worst.Load.Id);
        json.WriteString("unit", worst.Load.Unit);
        json.WriteNumber("small-per-unit", worst.Load.SmallPerUnit);
        Write(json, "most", worst.Heaviest);
        Write(json, "least", worst.Lightest);
    }

    private static void Write(Utf8JsonWriter json, string name, Extreme extreme)
    {
        json.WriteStartObject(name);
        json.WriteNumber("weight", extreme.Weight);
        json.WriteNumber("bound", extreme.Bound);
        json.WritePropertyName("options");
        Write(json, extreme.Witness);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Configuration configuration)
    {
        json.WriteStartObject();
        foreach (var (option, count) in configuration.Quantities)
        {
            json.WriteNumber(option.Value, count);
        }

        json.WriteEndObject();
    }

    private static void Margins(Utf8JsonWriter json, LoadReport report)
    {
        if (report.Margins is not { } margins)
        {
            json.WriteString("margins", "not computed");
            return;
        }

        json.WriteStartObject("margins");
        foreach (var margin in margins)
        {
            json.WriteStartObject(margin.Option.Value);
            foreach (var (count, weight) in margin.HeaviestAt)
            {
                json.WriteNumber(count.ToString(CultureInfo.InvariantCulture), weight);
            }

            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void Histogram(Utf8JsonWriter json, string name, ImmutableArray<WeightClass>? histogram)
    {
        if (histogram is not { } known)
        {
            json.WriteString(name, "not computed");
            return;
        }

        json.WriteStartArray(name);
        foreach (var one in known)
        {
            json.WriteStartObject();
            json.WriteNumber("weight", one.Weight);
            json.WriteString("configurations", Digits(one.Configurations));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static string Fraction(Rational? value) =>
        value is { } fraction
            ? string.Create(CultureInfo.InvariantCulture, $"{fraction.Numerator}/{fraction.Denominator}")
            : "not computed";

    private static string Digits(BigInteger? number) =>
        number?.ToString(CultureInfo.InvariantCulture) ?? "not computed";
}
