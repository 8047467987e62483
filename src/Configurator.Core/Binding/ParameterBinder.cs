using System.Collections.Immutable;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>Binds the parameters of a device, and values for them.</summary>
internal static class ParameterBinder
{
    public static ImmutableArray<Parameter> Bind(ImmutableArray<Fields> all, ICollection<Diagnostic> report) =>
        Unique.By(
            "parameter",
            all.Select(f => Read(f, report)).OfType<Parameter>(),
            parameter => parameter.Name,
            report
        );

    private static Parameter? Read(Fields f, ICollection<Diagnostic> report)
    {
        if (
            f.One<string>("parameter") is not { } name
            || f.Value<Text>("title") is not { } title
            || f.One<int>("index") is not { } index
            || f.One<RawType>("type") is not { } type
        )
        {
            return null;
        }

        var parameter = new Parameter(name, title, index.Value, f.Value("subindex", 0), type.Value)
        {
            Words = [.. f.Table<int>("words").Select(word => KeyValuePair.Create(word.Key.Value, word.Value.Value))],
        };
        return parameter.Words.IsEmpty ? WithRange(parameter, f, report) : parameter;
    }

    private static Parameter WithRange(Parameter parameter, Fields f, ICollection<Diagnostic> report)
    {
        var before = report.Count;
        var from = Bound(parameter, f, "from", report);
        var to = Bound(parameter, f, "to", report);
        var step = Bound(parameter, f, "step", report);
        var units = new[] { from, to, step }
            .OfType<WrittenNumber>()
            .Select(number => number.Unit?.Symbol)
            .Distinct(StringComparer.Ordinal)
            .ToList();
        if (from is null || to is null || units.Count > 1)
        {
            if (f.AreSound("from", "to", "step", "words") && report.Count == before)
            {
                report.Add(
                    BindingDiagnostics.KeyMissingHere(
                        from is null ? "from" : "to",
                        "a parameter has `words`, or `from`, `to` and `step` in one unit",
                        parameter.Name.Span
                    )
                );
            }

            return parameter;
        }

        if (from.Value > to.Value)
        {
            report.Add(BindingDiagnostics.RangeReversed(f.One<string>("from")!.Value, f.One<string>("to")!.Value));
            return parameter;
        }

        return parameter with
        {
            Unit = from.Unit,
            From = from.Value,
            To = to.Value,
            Step = step?.Value,
        };
    }

    private static WrittenNumber? Bound(Parameter parameter, Fields f, string key, ICollection<Diagnostic> report)
    {
        if (f.One<string>(key) is not { } written)
        {
            return null;
        }

        if (WrittenNumber.Read(written.Value) is not { } number)
        {
            Wrong(parameter, written, WrittenNumber.Wanted, report);
            return null;
        }

        return number;
    }

    /// <summary>Reads a value for a parameter; null, and reported, where it does not have the parameter's
    /// form.</summary>
    public static SettingValue? Value(Parameter parameter, Located<string> written, ICollection<Diagnostic> report)
    {
        if (!parameter.Words.IsEmpty)
        {
            return parameter.Words.Any(word => word.Key == written.Value)
                ? new(written, null, written.Value)
                : Wrong(
                    parameter,
                    written,
                    "one of " + string.Join(", ", parameter.Words.Select(word => $"`{word.Key}`")),
                    report
                );
        }

        return WrittenNumber.Read(written.Value) is { } number && IsIn(parameter.Unit, number)
            ? new(
                written,
                parameter.Unit is { } unit && number.Quantity is { } quantity ? quantity.In(unit) : number.Value,
                null
            )
            : Wrong(
                parameter,
                written,
                parameter.Unit is null ? "a bare number" : $"a value in `{parameter.Unit}`",
                report
            );
    }

    private static bool IsIn(Unit? unit, WrittenNumber number) =>
        unit is null ? number.Unit is null : number.Unit?.IsComparableWith(unit) == true;

    private static SettingValue? Wrong(
        Parameter parameter,
        Located<string> written,
        string wanted,
        ICollection<Diagnostic> report
    )
    {
        report.Add(BindingDiagnostics.SettingWrong(written, parameter.Name.Value, wanted));
        return null;
    }
}
