using System.Text.Json.Nodes;

namespace Configurator.Core.Binding.Schemas;

/// <summary>Pieces that schemas are made of.</summary>
internal static class SchemaParts
{
    public static JsonObject Described(string description, JsonObject schema)
    {
        schema.Insert(schema.ContainsKey("title") ? 1 : 0, "description", description);
        return schema;
    }

    /// <summary>A map with these keys and no others.</summary>
    public static JsonObject Map(IEnumerable<string> required, IEnumerable<KeyValuePair<string, JsonObject>> properties)
    {
        var schema = new JsonObject { ["type"] = "object", ["additionalProperties"] = false };
        if (Words(required) is { Count: > 0 } keys)
        {
            schema["required"] = keys;
        }

        schema["properties"] = Named(properties);
        return schema;
    }

    public static JsonObject Named(IEnumerable<KeyValuePair<string, JsonObject>> schemas) =>
        new(schemas.Select(schema => KeyValuePair.Create(schema.Key, (JsonNode?)schema.Value)));

    public static JsonArray Words(IEnumerable<string> words) => [.. words.Select(word => JsonValue.Create(word))];

    /// <summary><c>set of IO-Link data</c> to <c>set-of-io-link-data</c>.</summary>
    public static string Slug(string name) => name.ToLowerInvariant().Replace(' ', '-');

    public static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];
}
