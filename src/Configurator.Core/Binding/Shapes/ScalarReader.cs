using System.Globalization;
using Configurator.Core.Diagnostics;
using Configurator.Core.Loading;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding.Shapes;

/// <summary>Reads a single value after its shape.</summary>
internal sealed class ScalarReader(ICollection<Diagnostic> report)
{
    public Located<object>? Read(ScalarSyntax scalar, Shape shape)
    {
        if (scalar.IsEmpty || string.IsNullOrWhiteSpace(scalar.Text))
        {
            report.Add(BindingDiagnostics.ValueEmpty(scalar, shape));
            return null;
        }

        return Convert(scalar, shape) is { } value ? new(value, scalar.Span) : null;
    }

    private object? Convert(ScalarSyntax scalar, Shape shape) =>
        shape switch
        {
            TextShape => ReadLine(scalar, shape) is { } text ? Model.Text.Of(text) : null,
            LineShape or SettingShape => ReadLine(scalar, shape),
            IdShape id => ReadId(scalar, id),
            PatternShape pattern => ReadPattern(scalar, pattern),
            WordShape words => ReadWord(scalar, words),
            QuantityShape quantity => ReadQuantity(scalar, quantity),
            CountShape count => ReadCount(scalar, count),
            FlagShape => ReadFlag(scalar, shape),
            DateShape => ReadDate(scalar, shape),
            _ => throw new InvalidOperationException($"no reader for {shape.GetType().Name}"),
        };

    /// <summary>A block that ends with its line is one line too.</summary>
    private string? ReadLine(ScalarSyntax scalar, Shape shape)
    {
        var line = scalar.Text.EndsWith('\n') ? scalar.Text[..^1] : scalar.Text;
        if (!line.Contains('\n', StringComparison.Ordinal))
        {
            return line;
        }

        report.Add(BindingDiagnostics.LinesSeveral(scalar, shape));
        return null;
    }

    private string? ReadId(ScalarSyntax scalar, IdShape shape)
    {
        if (Ids.Fault(scalar.Text, shape.MayBeReserved) is not { } fault)
        {
            return scalar.Text;
        }

        report.Add(BindingDiagnostics.IdMalformed(scalar, fault));
        return null;
    }

    private object? ReadPattern(ScalarSyntax scalar, PatternShape shape) =>
        shape.IsMatch(scalar.Text) ? scalar.Text : Malformed(scalar, shape);

    private object? ReadWord(ScalarSyntax scalar, WordShape shape)
    {
        if (shape.Words.TryGetValue(scalar.Text, out var value))
        {
            return value;
        }

        report.Add(BindingDiagnostics.WordUnknown(scalar, shape));
        return null;
    }

    private Quantity? ReadQuantity(ScalarSyntax scalar, QuantityShape shape)
    {
        var read = QuantityReader.Read(scalar.Text);
        if (read.Quantity is not { } quantity)
        {
            report.Add(BindingDiagnostics.QuantityMalformed(scalar, shape, read));
        }
        else if (quantity.Dimension != shape.Dimension)
        {
            report.Add(BindingDiagnostics.DimensionWrong(scalar, shape, quantity));
        }
        else if (quantity.Value < 0 && !shape.MayBeNegative && shape.Dimension != Dimension.Temperature)
        {
            report.Add(BindingDiagnostics.QuantityNegative(scalar));
        }
        else
        {
            return quantity;
        }

        return null;
    }

    private object? ReadCount(ScalarSyntax scalar, CountShape shape)
    {
        if (!int.TryParse(scalar.Text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var count))
        {
            return Malformed(scalar, shape);
        }

        if (count >= shape.From && count <= shape.To)
        {
            return count;
        }

        report.Add(BindingDiagnostics.CountOutOfRange(scalar, shape));
        return null;
    }

    private object? ReadFlag(ScalarSyntax scalar, Shape shape) =>
        scalar.Text switch
        {
            "true" when scalar.IsPlain => true,
            "false" when scalar.IsPlain => false,
            _ => Malformed(scalar, shape),
        };

    private object? ReadDate(ScalarSyntax scalar, Shape shape) =>
        DateOnly.TryParseExact(
            scalar.Text,
            "yyyy-MM-dd",
            CultureInfo.InvariantCulture,
            DateTimeStyles.None,
            out var date
        )
            ? date
            : Malformed(scalar, shape);

    private object? Malformed(ScalarSyntax scalar, Shape shape)
    {
        report.Add(BindingDiagnostics.ValueMalformed(scalar, shape));
        return null;
    }
}
