using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Logic;

/// <summary>Completes an order by what comes with it.</summary>
public static class Completion
{
    /// <summary>Adds every option that comes with one taken, and with those again. Options not offered are left
    /// out.</summary>
    public static Configuration Complete(Machine machine, Order order)
    {
        var taken = order.Picks.Where(pick => machine.Options.ContainsKey(pick.Key)).ToImmutableSortedDictionary();
        var open = new Queue<OptionId>(taken.Keys);
        var added = ImmutableSortedSet.CreateBuilder<OptionId>();
        while (open.TryDequeue(out var option))
        {
            foreach (var other in machine.Options[option].ComesWith.Select(link => link.Other.Value))
            {
                if (!taken.ContainsKey(other) && machine.Options.TryGetValue(other, out var found))
                {
                    taken = taken.Add(other, found.Quantity?.From ?? 1);
                    added.Add(other);
                    open.Enqueue(other);
                }
            }
        }

        return new(machine.Id.Value, taken, added.ToImmutable());
    }
}
