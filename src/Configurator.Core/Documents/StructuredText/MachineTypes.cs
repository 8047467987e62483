using System.Collections.Immutable;
using Configurator.Core.Engineering.Box;
using Configurator.Core.Engineering.Signals;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.StructuredText;

/// <summary>Structures of a machine's signals, the same for every order of it: what an order lacks stays
/// idle.</summary>
internal sealed record MachineTypes(DocumentContext Context, Machine Machine)
{
    private readonly LiveWhen _live = new(Machine);

    public static TextFile File(DocumentContext context, Machine machine) =>
        new(PagePaths.ControllerTypes(machine.Id.Value), new MachineTypes(context, machine).Text());

    private string Text()
    {
        var text = new Declarations()
            .Comment(
                $"{Machine.Document} revision {Machine.Revision}: signals of {Machine.Id.Value}, the same for every order."
            )
            .Comment(Declarations.Of(Context.Definitions))
            .Comment("Raw values, as they travel. Octet 0 travels first, and of a value the most significant octet.")
            .Comment(
                "Octet: the first one that a value touches. Bit: its lowest bit, in the last octet that it touches."
            )
            .Comment(
                "Two fits that can never be ordered together may share a port: use a member only while it is live."
            )
            .Comment("No safety function may rest on these: safety states are copies, for display alone.");
        var signals = SignalList.OfAllOrders(Machine);
        foreach (var group in Groups(signals).Where(group => !group.Signals.IsEmpty))
        {
            text.Gap().Line(0, "TYPE").Line(1, $"{group.Name} :").Line(1, "STRUCT");
            foreach (var signal in group.Signals)
            {
                text.Member(2, signal.Tag, SignalTypes.Declared(signal), Comment(signal));
            }

            text.Line(1, "END_STRUCT;").Line(0, "END_TYPE");
        }

        return text.ToString();
    }

    private IEnumerable<(string Name, ImmutableArray<Signal> Signals)> Groups(ImmutableArray<Signal> signals)
    {
        foreach (var master in Machine.Control.Masters.Select(master => master.Name.Value))
        {
            var own = signals.Where(signal => signal.MasterPort?.Master == master).ToList();
            yield return (
                Tags.Structure(master, isInput: true),
                [.. own.Where(signal => signal.Kind == SignalKind.Input)]
            );
            yield return (
                Tags.Structure(master, isInput: false),
                [.. own.Where(signal => signal.Kind == SignalKind.Output)]
            );
        }

        yield return (
            Tags.BoxInputs,
            [.. signals.Where(signal => signal.Kind is SignalKind.FastInput or SignalKind.BoxInput)]
        );
        yield return (Tags.BoxOutputs, [.. signals.Where(signal => signal.Kind == SignalKind.BoxOutput)]);
        yield return (
            Tags.BoxSafety,
            [.. signals.Where(signal => signal.Kind is SignalKind.SafetyInput or SignalKind.SafetyOutput)]
        );
    }

    private string Comment(Signal signal) =>
        string.Join(
            ", ",
            new[]
            {
                Context.Designations.Of(signal.Instance),
                Home(signal),
                Place(signal),
                signal.Kind is SignalKind.Input or SignalKind.Output ? SignalTypes.Of(signal) : "",
                Scale(signal.Item?.Range),
                $"live: {_live.Of(signal.Instance) ?? "always"}",
            }.Where(part => part.Length > 0)
        );

    private string Home(Signal signal) =>
        signal.MasterPort is not { } port ? InBox(signal)
        : signal.Hub is null ? $"{port}"
        : $"{port} through {signal.Home}";

    /// <summary>Its number, the same in every order: <c>plain output 3</c>.</summary>
    private string InBox(Signal signal) =>
        signal.Point is { } point
        && Context.Numbers.GetValueOrDefault(Machine.Id.Value, BoxNumbers.None).Of(point, signal.Instance.Key)
            is { } own
        && signal.Nth <= own.Length
            ? FormattableString.Invariant($"{BoxPointNames.Noun(point)} {own[signal.Nth - 1]}")
            : Context.Designations.TerminalsOf(signal.Instance);

    private static string Place(Signal signal) =>
        signal.Item is { } item ? FormattableString.Invariant($"octet {item.Octet} bit {item.Bit}")
        : signal.Pin is { } pin ? FormattableString.Invariant($"pin {pin}")
        : "";

    private static string Scale(ValueRange? range) =>
        range is null ? ""
        : range.Step is { } step ? $"{step} {range.Unit} a count".Replace("  ", " ", StringComparison.Ordinal)
        : range.Unit is { } unit ? $"{unit}"
        : "";
}
