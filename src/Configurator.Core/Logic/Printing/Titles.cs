using Configurator.Core.Model;

namespace Configurator.Core.Logic.Printing;

/// <summary>Calls options and choices by their titles, as a salesperson knows them.</summary>
internal sealed record Titles(Machine Machine, string Language)
{
    public string Of(OptionId option) =>
        Machine.Options.TryGetValue(option, out var found) ? $"“{found.Title.In(Language)}”" : $"“{option}”";

    public string Of(Choice choice) => $"“{choice.Title.In(Language)}”";

    /// <summary>A sentence with ids in backticks, with titles in their place.</summary>
    public string In(string statement)
    {
        var parts = statement.Split('`');
        for (var i = 1; i < parts.Length; i += 2)
        {
            parts[i] = Title(parts[i]);
        }

        return string.Concat(parts);
    }

    private string Title(string id)
    {
        var choice = Machine.Choices.FirstOrDefault(choice => choice.Id.Value.Value == id);
        var limit = Machine.Limits.FirstOrDefault(limit => limit.Id.Value == id);
        return choice is not null ? Of(choice)
            : limit is not null ? $"“{limit.Title.In(Language)}”"
            : Machine.Options.ContainsKey(new(id)) ? Of(new OptionId(id))
            : id == Machine.Id.Value.Value ? Machine.Title.In(Language)
            : $"“{id}”";
    }
}
