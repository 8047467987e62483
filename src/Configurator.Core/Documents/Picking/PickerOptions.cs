using System.Text.Json;
using Configurator.Core.Engineering.Loads;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Picking;

/// <summary>Options and choices of a machine as the page reads them; an option is known by its place in ordinal order
/// of ids.</summary>
internal static class PickerOptions
{
    public static void Write(Utf8JsonWriter json, Machine machine, string language)
    {
        var places = machine.Options.Keys.ToList();
        json.WriteStartArray("options");
        foreach (var option in machine.Options.Values)
        {
            Write(json, option, places, language);
        }

        json.WriteEndArray();
        json.WriteStartArray("choices");
        foreach (var choice in machine.Choices)
        {
            Write(json, choice, places, language);
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, Option option, List<OptionId> places, string language)
    {
        json.WriteStartObject();
        json.WriteString("id", option.Id.Value.Value);
        json.WriteString("title", option.Title.In(language));
        if (option.Quantity is { } range)
        {
            json.WriteNumber("from", range.From);
            json.WriteNumber("to", range.To);
            json.WriteString("counts", range.Counts.In(language));
        }

        json.WriteBoolean("released", option.Released is not null);
        WriteNumber(json, "days", PickerLoads.Days(option.LeadTime));
        WriteNumber(json, "raise", option.RateRaise is { } raise ? (int)(raise.InBase * 10).Ceiling() : 0);
        WriteNumber(json, "rate", option.RateMax is { } rate ? PickerScript.Thousandth(rate) : 0);
        WritePlaces(json, "markets", option.Markets.Select(market => market.Value), places);
        WritePlaces(json, "brings", option.ComesWith.Select(link => link.Other.Value), places);
        WriteTexts(json, "formerly", option.Formerly.Select(id => id.Value));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Choice choice, List<OptionId> places, string language)
    {
        json.WriteStartObject();
        json.WriteString("id", choice.Id.Value.Value);
        json.WriteString("title", choice.Title.In(language));
        json.WriteString("take", choice.Take.ToString());
        json.WriteBoolean("always", choice.When is null);
        WritePlaces(json, "of", choice.Of.Select(option => option.Value), places);
        json.WriteEndObject();
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, int number)
    {
        if (number != 0)
        {
            json.WriteNumber(name, number);
        }
    }

    /// <summary>Left out where there are none; an option that is not offered has no place.</summary>
    private static void WritePlaces(
        Utf8JsonWriter json,
        string name,
        IEnumerable<OptionId> options,
        List<OptionId> places
    )
    {
        var numbers = options.Select(option => places.IndexOf(option)).Where(place => place >= 0).ToList();
        if (numbers.Count > 0)
        {
            json.WriteStartArray(name);
            numbers.ForEach(json.WriteNumberValue);
            json.WriteEndArray();
        }
    }

    private static void WriteTexts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        var all = texts.ToList();
        if (all.Count > 0)
        {
            json.WriteStartArray(name);
            all.ForEach(json.WriteStringValue);
            json.WriteEndArray();
        }
    }

    /// <summary>What one of it costs with the devices that always come with it; null where none is stated.</summary>
    public static string? Price(Machine machine, OptionId option)
    {
        var prices = MachineLoads
            .Of(machine)
            .Where(Load.IsPrice)
            .Select(load => (Load: load, Amount: Amount(machine, load, option)))
            .Where(price => price.Amount != 0)
            .Select(price => price.Load.Print(price.Amount))
            .ToList();
        return prices.Count == 0 ? null : string.Join(" + ", prices);
    }

    private static long Amount(Machine machine, Load load, OptionId option) =>
        MachineLoads
            .Of(machine, load)
            .Terms.Where(term => term.When is OptionCount { AtLeast: 1, AtMost: null } count && count.Option == option)
            .Sum(term => term.Weight);
}
