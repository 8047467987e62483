using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>What can be wrong with process data and with names in the controller program.</summary>
internal static class ProcessDataDiagnostics
{
    private static readonly Rule OutOfPlace = new("CFG2021", Severity.Error, "Process data beyond its octets");
    private static readonly Rule Overlaid = new("CFG2022", Severity.Error, "Process data overlap");
    private static readonly Rule Misfit = new("CFG2023", Severity.Error, "Process data item not possible");
    private static readonly Rule LongTag = new("CFG2024", Severity.Error, "Name too long for the controller");

    public static ImmutableArray<Rule> All { get; } = [OutOfPlace, Overlaid, Misfit, LongTag];

    public static Diagnostic Outside(ProcessItem item, Located<int> octets) =>
        new(
            OutOfPlace,
            octets.Value == 0
                ? $"`{item.Name.Value}` lies in octet {item.LastOctet}, but this side has no octets"
                : FormattableString.Invariant(
                    $"`{item.Name.Value}` reaches into octet {item.LastOctet}, but the last one is {octets.Value - 1}"
                ),
            item.Name.Span
        )
        {
            Notes = [new("the number of octets stands here", octets.Span)],
            Fix = new("mend `octet`, `bit` or `length`, or the number of octets; octets count from 0"),
        };

    public static Diagnostic Overlapping(ProcessItem item, ProcessItem other) =>
        new(Overlaid, $"`{item.Name.Value}` lies over `{other.Name.Value}`", item.Name.Span)
        {
            Notes = [new(Place(other), other.Name.Span)],
            Fix = new($"{Place(item)}; move one of the two"),
        };

    public static Diagnostic LengthWrong(Located<int> length, ProcessType type, int from, int to) =>
        new(Misfit, FormattableString.Invariant($"`{type}` has no length of {length.Value} bits"), length.Span)
        {
            Fix = new(
                from == to
                    ? FormattableString.Invariant($"leave it out; it is {from}")
                    : FormattableString.Invariant($"write {from} to {to}")
            ),
        };

    public static Diagnostic RangeTooWide(ProcessItem item, Rational raw, Rational least, Rational most) =>
        new(
            Misfit,
            FormattableString.Invariant(
                $"the raw value {raw} of `{item.Name.Value}` does not fit into {item.Type} of {item.Bits} bits, which holds {least} to {most}"
            ),
            item.Name.Span
        )
        {
            Fix = new("mend `from`, `to`, `step` or `length`"),
        };

    public static Diagnostic ValueWrong(Located<string> value, string item, string wanted) =>
        new(Misfit, $"`{value.Value}` does not go with `{item}`", value.Span) { Fix = new($"write {wanted}") };

    public static Diagnostic NameOfDigits(Located<string> name)
    {
        var mended = string.Concat(
            name.Value.Split('-').Select((word, i) => i == 0 || char.IsAsciiDigit(word[0]) ? word : $"-{word}")
        );
        return new(Misfit, $"a word of `{name.Value}` starts with a digit", name.Span)
        {
            Fix = new($"replace it with `{mended}`", name.Span, mended),
        };
    }

    public static Diagnostic NameOfPinTwo(Located<string> name) =>
        new(Misfit, $"`{name.Value}` is the name of the signal at pin 2 of this device", name.Span)
        {
            Fix = new("choose another name"),
        };

    public static Diagnostic TagTooLong(string tag, Located<string> name) =>
        new(
            LongTag,
            FormattableString.Invariant(
                $"`{tag}` in the controller program has {tag.Length} characters; {Tags.LengthMax} is the limit"
            ),
            name.Span
        )
        {
            Fix = new("shorten this name, or that of the signal"),
        };

    private static string Place(ProcessItem item) =>
        item.Octet == item.LastOctet
            ? FormattableString.Invariant(
                $"`{item.Name.Value}` takes bits {item.Bit} to {item.Bit + item.Bits - 1} of octet {item.Octet}"
            )
            : FormattableString.Invariant(
                $"`{item.Name.Value}` takes {item.Bits} bits from octet {item.Octet} to bit {item.Bit} of octet {item.LastOctet}"
            );
}
