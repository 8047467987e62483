using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using Configurator.Core.Binding.Kinds;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>Binds the process data of a device: every item in its place, none over another.</summary>
/// <param name="ports">Of a hub; null for any other device.</param>
internal sealed class ProcessDataBinder(PortSet? ports, PinTwoUse pinTwo, ICollection<Diagnostic> report)
{
    private static readonly ImmutableArray<string> RangeKeys = ["from", "to", "step"];

    public ProcessData Bind(Fields f, Located<int> inputOctets, Located<int> outputOctets)
    {
        var inputs = Read(f, "inputs");
        var outputs = Read(f, "outputs");
        Unique.By("process data item", inputs.Concat(outputs), item => item.Name, report);
        foreach (var item in inputs.Concat(outputs).Where(item => pinTwo == PinTwoUse.Signal && item.IsCalled("pin2")))
        {
            report.Add(ProcessDataDiagnostics.NameOfPinTwo(item.Name));
        }

        Unique.By(
            "port",
            inputs.Select(item => item.Port).OfType<Located<int>>(),
            port => port.Select(number => number.ToString(CultureInfo.InvariantCulture)),
            report
        );
        if (f.AreSound("inputs", "outputs"))
        {
            CheckPlaces(inputs, inputOctets);
            CheckPlaces(outputs, outputOctets);
        }

        return new(InOrder(inputs), InOrder(outputs));
    }

    private ImmutableArray<ProcessItem> Read(Fields f, string side) =>
        [.. f.Records(side).Select(item => Read(item, side == "inputs")).OfType<ProcessItem>()];

    /// <summary>As they travel.</summary>
    private static ImmutableArray<ProcessItem> InOrder(IEnumerable<ProcessItem> items) =>
        [.. items.OrderBy(item => item.Octet).ThenBy(item => item.LastOctet).ThenByDescending(item => item.Bit)];

    private ProcessItem? Read(Fields f, bool isInput)
    {
        if (
            f.One<string>("name") is not { } name
            || f.Value<Text>("title") is not { } title
            || f.One<ProcessType>("type") is not { } type
            || f.One<int>("octet") is not { } octet
            || Bits(f, name, type.Value) is not { } bits
        )
        {
            return null;
        }

        var item = new ProcessItem(name, title, type.Value, bits, octet.Value, f.Value("bit", 0))
        {
            Range = ReadRange(f, name),
            Port = f.One<int>("port"),
        };
        if (!Tags.IsSignalName(name.Value))
        {
            report.Add(ProcessDataDiagnostics.NameOfDigits(name));
        }

        CheckPort(item, isInput);
        CheckRange(item);
        return item;
    }

    private int? Bits(Fields f, Located<string> name, ProcessType type)
    {
        var length = f.One<int>("length");
        (int From, int To) allowed = type switch
        {
            ProcessType.BooleanT => (1, 1),
            ProcessType.Float32T => (32, 32),
            ProcessType.IntegerT => (2, ProcessDataShape.BitsMax),
            _ => (1, ProcessDataShape.BitsMax),
        };
        if (length is { } given)
        {
            if (given.Value >= allowed.From && given.Value <= allowed.To)
            {
                return given.Value;
            }

            report.Add(ProcessDataDiagnostics.LengthWrong(given, type, allowed.From, allowed.To));
        }
        else if (allowed.From == allowed.To)
        {
            return allowed.From;
        }
        else if (f.AreSound("length"))
        {
            report.Add(BindingDiagnostics.KeyMissingHere("length", "an integer states its bits", name.Span));
        }

        return null;
    }

    private ValueRange ReadRange(Fields f, Located<string> name)
    {
        var numbers = new Dictionary<string, WrittenNumber>(StringComparer.Ordinal);
        foreach (var key in RangeKeys)
        {
            if (f.One<string>(key) is not { } written)
            {
                continue;
            }

            var first = numbers.Values.FirstOrDefault();
            if (
                WrittenNumber.Read(written.Value) is not { } number
                || (first is not null && first.Unit?.Symbol != number.Unit?.Symbol)
            )
            {
                var wanted = first is { Unit: { } unit } ? $"a value in `{unit}`" : WrittenNumber.Wanted;
                report.Add(ProcessDataDiagnostics.ValueWrong(written, name.Value, wanted));
                continue;
            }

            numbers.Add(key, number);
        }

        return new(
            numbers.Values.FirstOrDefault()?.Unit,
            numbers.GetValueOrDefault("from")?.Value,
            numbers.GetValueOrDefault("to")?.Value,
            numbers.GetValueOrDefault("step")?.Value
        );
    }

    private void CheckPort(ProcessItem item, bool isInput)
    {
        if (item.Port is not { } port)
        {
            return;
        }

        if (item.Type != ProcessType.BooleanT || !isInput)
        {
            report.Add(BindingDiagnostics.BothGiven("port", isInput ? $"type: {item.Type}" : "outputs", port.Span));
        }
        else if (ports?.Switching.Contains(port.Value) != true)
        {
            report.Add(BindingDiagnostics.PortNotFound(port.Span, "this device", port.Value, ports?.Switching ?? []));
        }
    }

    /// <summary>The raw values of both limits fit into its bits.</summary>
    private void CheckRange(ProcessItem item)
    {
        var step = item.Range.Step ?? 1;
        if (item.Type is ProcessType.BooleanT or ProcessType.Float32T || step <= 0)
        {
            return;
        }

        var isSigned = item.Type == ProcessType.IntegerT;
        var most = new Rational((BigInteger.One << (isSigned ? item.Bits - 1 : item.Bits)) - 1, 1);
        var least = isSigned ? -1 - most : 0;
        foreach (var limit in new[] { item.Range.From, item.Range.To }.OfType<Rational>())
        {
            var raw = limit / step;
            if (raw < least || raw > most)
            {
                report.Add(ProcessDataDiagnostics.RangeTooWide(item, raw, least, most));
                return;
            }
        }
    }

    private void CheckPlaces(ImmutableArray<ProcessItem> items, Located<int> octets)
    {
        var sound = new List<ProcessItem>();
        foreach (var item in items)
        {
            if (item.LastOctet >= octets.Value)
            {
                report.Add(ProcessDataDiagnostics.Outside(item, octets));
            }
            else if (sound.FirstOrDefault(other => Overlap(item, other, octets.Value)) is { } other)
            {
                report.Add(ProcessDataDiagnostics.Overlapping(item, other));
            }
            else
            {
                sound.Add(item);
            }
        }
    }

    private static bool Overlap(ProcessItem one, ProcessItem other, int octets) =>
        one.BitOffset(octets) < other.BitOffset(octets) + other.Bits
        && other.BitOffset(octets) < one.BitOffset(octets) + one.Bits;
}
