using System.Text.Json;
using Configurator.Core.Engineering;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Picking;

/// <summary>Orders that have been engineered, as the page reads them: places of options and numbers in turn.</summary>
internal static class PickerOrders
{
    public static void Write(Utf8JsonWriter json, DocumentContext context, Machine machine, CheckedSet checkedSet)
    {
        var places = machine.Options.Keys.ToList();
        json.WriteStartArray("published");
        var id = machine.Id.Value;
        foreach (var engineered in context.Engineered.Configurations.Where(one => one.Machine.Id.Value == id))
        {
            var published = engineered.Published;
            json.WriteStartObject();
            json.WriteString("id", published.Id.Value.Value);
            json.WriteString("title", context.In(published.Title));
            json.WriteString("document", published.Document.Value);
            json.WriteString("revision", published.Revision);
            json.WriteString("page", PagePaths.Relative(PagePaths.Picker(machine.Id.Value), PagePaths.Of(published)));
            json.WriteBoolean("checked", engineered.IsChecked);
            json.WriteBoolean("released", published.Released is not null);
            json.WritePropertyName("taken");
            Write(json, engineered.Proved.Configuration, places);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("checked");
        foreach (var configuration in checkedSet.Passed)
        {
            Write(json, configuration, places);
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, Configuration configuration, List<OptionId> places)
    {
        json.WriteStartArray();
        foreach (var (option, number) in configuration.Quantities)
        {
            json.WriteNumberValue(places.IndexOf(option));
            json.WriteNumberValue(number);
        }

        json.WriteEndArray();
    }
}
