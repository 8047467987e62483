using System.Collections.Immutable;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>The options of an order and how many of each, as ticked.</summary>
internal sealed record OrderLines(
    ImmutableArray<Located<OptionId>> Options,
    ImmutableArray<Located<OptionQuantity>> Quantities
)
{
    public Order On(MachineId machine) =>
        Order.Of(machine, Options.Select(option => option.Value), Quantities.Select(quantity => quantity.Value));
}

/// <summary>Binds the options and quantities of an order.</summary>
internal sealed class OrderBinder(Machine machine, Names<Option> options, ICollection<Diagnostic> report)
{
    /// <summary>The order, or null where it has a fault or depends on a faulty option: half an order proves
    /// nothing.</summary>
    public OrderLines? Read(Fields f)
    {
        ImmutableArray<Located<OptionId>> ticked =
        [
            .. Unique
                .By("option of this order", f.Many<string>("options"), option => option, report)
                .Where(option => Offered(option) is not null)
                .Select(option => option.Select(id => new OptionId(id))),
        ];
        ImmutableArray<Located<OptionQuantity>> quantities =
        [
            .. f.Table<int>("quantities")
                .Select(entry => Quantity(entry.Key, entry.Value))
                .OfType<Located<OptionQuantity>>(),
        ];
        var lines = new OrderLines(ticked, quantities);
        var isWhole =
            f.AreSound("options", "quantities")
            && quantities.Length == f.Table<int>("quantities").Length
            && f.Many<string>("options").All(option => ticked.Any(sound => sound.Value.Value == option.Value));
        return isWhole && !DependsOnFaulty(lines.On(machine.Id.Value).Picks.Keys) ? lines : null;
    }

    private bool DependsOnFaulty(IEnumerable<OptionId> ticked)
    {
        var seen = ticked.ToHashSet();
        var open = new Queue<OptionId>(seen);
        while (open.TryDequeue(out var id))
        {
            foreach (
                var other in machine
                    .Options.GetValueOrDefault(id)
                    ?.ComesWith.Select(link => link.Other.Value)
                    .Where(seen.Add)
                    ?? []
            )
            {
                open.Enqueue(other);
            }
        }

        return seen.Overlaps(machine.FaultyOptions);
    }

    private Located<OptionQuantity>? Quantity(Located<string> name, Located<int> count)
    {
        if (Offered(name) is not { } option)
        {
            return null;
        }

        var range = option.Quantity ?? new(1, 1, Text.Empty);
        if (count.Value >= range.From && count.Value <= range.To)
        {
            return new(new(option.Id.Value, count.Value), name.Span);
        }

        report.Add(
            BindingDiagnostics.QuantityImpossible(
                new(name.Value, count.Span),
                FormattableString.Invariant($"cannot be ordered {count.Value} times"),
                range.From == range.To
                    ? FormattableString.Invariant($"write {range.From}, or leave it out")
                    : FormattableString.Invariant($"write a number from {range.From} to {range.To}")
            )
        );
        return null;
    }

    /// <summary>The option where it can be ordered on the machine; null, and reported unless it is faulty, where it
    /// cannot.</summary>
    private Option? Offered(Located<string> name)
    {
        if (options.Find(name, report) is not { } option || machine.FaultyOptions.Contains(option.Id.Value))
        {
            return null;
        }

        if (machine.Options.ContainsKey(option.Id.Value))
        {
            return option;
        }

        report.Add(BindingDiagnostics.OptionNotOffered(name, machine.Id.Value.Value));
        return null;
    }
}
