using System.Collections.Immutable;
using System.Text.Json;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Engineering.Power;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents.Picking;

/// <summary>What adds up over an order, as the page reads it: each load with its parts, and the least and the most that
/// it comes to over all configurations.</summary>
internal static class PickerLoads
{
    private const int Microvolts = 1_000_000;
    private const int DayMilliseconds = 86_400_000;

    public static void Write(Utf8JsonWriter json, OrderLogic logic, ConditionTable conditions, string language)
    {
        json.WriteStartArray("loads");
        foreach (var worst in WorstCases.Of(logic).Loads)
        {
            json.WriteStartObject();
            json.WriteString("id", worst.Load.Id);
            json.WriteString("title", worst.Load.Title.In(language));
            json.WriteString("unit", worst.Load.Unit);
            json.WriteNumber("scale", worst.Load.SmallPerUnit);
            json.WriteNumber("least", worst.Lightest.Bound);
            json.WriteNumber("most", worst.Heaviest.Bound);
            WriteLimit(json, logic.Machine, worst.Load);
            Write(json, worst.Sum, conditions);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteTrunk(json, logic, conditions);
    }

    /// <summary>What the machine has of it, where that is a plain number.</summary>
    private static void WriteLimit(Utf8JsonWriter json, Machine machine, Load load)
    {
        var control = machine.Control;
        if (load == Load.BoxCables)
        {
            json.WriteNumber("limit", control.Box.Entries);
        }
        else if (load == Load.ClassAPorts)
        {
            json.WriteNumber("limit", control.Masters.Sum(master => master.Ports.ClassA.Length));
        }
        else if (load == Load.ClassBPorts)
        {
            json.WriteNumber("limit", control.Masters.Sum(master => master.Ports.ClassB.Length));
        }
        else if (load == Load.Extensions)
        {
            json.WriteNumber("limit", control.Masters.Count(master => master.IsExtension));
        }
    }

    /// <summary>Of each circuit: the least voltage it starts with, and what is lost on the way to each master; all in
    /// microvolts.</summary>
    private static void WriteTrunk(Utf8JsonWriter json, OrderLogic logic, ConditionTable conditions)
    {
        var machine = logic.Machine;
        json.WriteStartArray("trunk");
        if (machine is { IsWhole: true, Control.Power: { } power } && logic.IsPossible(PartialOrder.Empty))
        {
            var drops = TrunkDrops.Of(machine).Select(load => MachineLoads.Of(machine, load)).ToList();
            var weigher = Weigher.Of(logic, drops.SelectMany(sum => sum.Terms).Select(term => term.When));
            var masters = machine.Control.Masters.Length;
            for (var circuit = 0; circuit < power.Circuits.Length; circuit++)
            {
                ImmutableArray<WeightedSum> sums = [.. drops.Skip(circuit * masters).Take(masters)];
                json.WriteStartObject();
                json.WriteString("title", power.Circuits[circuit].Name.Value);
                json.WriteNumber("start", -(long)(power.Lowest.InBase * -Microvolts).Ceiling());
                json.WriteNumber("most", sums.Max(sum => weigher.Heaviest(sum, PartialOrder.Empty)!.Bound));
                json.WriteStartArray("drops");
                foreach (var sum in sums)
                {
                    json.WriteStartObject();
                    Write(json, sum, conditions);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
                json.WriteEndObject();
            }
        }

        json.WriteEndArray();
    }

    /// <summary>Conditions and weights in turn.</summary>
    private static void Write(Utf8JsonWriter json, WeightedSum sum, ConditionTable conditions)
    {
        json.WriteNumber("fixed", sum.Fixed);
        json.WriteStartArray("terms");
        foreach (var term in sum.Terms)
        {
            json.WriteNumberValue(conditions.Add(term.When));
            json.WriteNumberValue(term.Weight);
        }

        json.WriteEndArray();
    }

    /// <summary>Devices mounted: title, days from order to delivery, and the condition of every instance.</summary>
    public static void WriteParts(Utf8JsonWriter json, Machine machine, ConditionTable conditions, string language)
    {
        var instances = machine.IsWhole ? FitConditions.Sound(machine) : [];
        var mounted = instances
            .Select(instance => (instance.Device, When: FitConditions.Of(instance)))
            .Concat(machine.Control.Masters.Select(master => (master.Device, When: FitConditions.Of(machine, master))))
            .GroupBy(part => part.Device.Id.Value)
            .OrderBy(part => part.Key);
        json.WriteStartArray("parts");
        foreach (var part in mounted)
        {
            json.WriteStartArray();
            json.WriteStringValue(part.First().Device.Title.In(language));
            json.WriteNumberValue(Days(part.First().Device.LeadTime));
            foreach (var (_, when) in part)
            {
                json.WriteNumberValue(conditions.Add(when));
            }

            json.WriteEndArray();
        }

        json.WriteEndArray();
    }

    /// <summary>Whole days, begun ones counted; 0 where nothing is said.</summary>
    public static int Days(Quantity? leadTime) =>
        leadTime is null ? 0 : (int)(leadTime.InBase / DayMilliseconds).Ceiling();
}
