using System.Text.Json.Nodes;
using Configurator.Core.Binding.Shapes;
using static Configurator.Core.Binding.Schemas.SchemaParts;

namespace Configurator.Core.Binding.Schemas;

/// <summary>Describes shapes. What several places may share is described once and referred to.</summary>
internal sealed class ShapeSchemas
{
    private static readonly IdShape AnId = new("lower-case words and digits joined by hyphens");

    private readonly SortedDictionary<string, Definition> _definitions = new(StringComparer.Ordinal);

    public JsonObject Of(Shape shape) =>
        shape switch
        {
            RecordShape record => Shared(Slug(record.Name), record, () => Record(record)),
            ListShape list => new() { ["type"] = "array", ["items"] = Item(list.Item) },
            TableShape table => Table(table),
            ConditionShape => Shared("condition", shape, new ConditionSchemas(this).Condition),
            RequirementShape => Shared("requirement", shape, new ConditionSchemas(this).Requirement),
            LinkShape => Shared("link", shape, new ConditionSchemas(this).Link),
            TextShape => Shared("text", shape, () => ScalarSchemas.Of(shape)),
            IdShape => Shared("id", AnId, () => ScalarSchemas.Of(AnId)),
            QuantityShape quantity => Shared(ScalarSchemas.NameOf(quantity), shape, () => ScalarSchemas.Of(shape)),
            _ => ScalarSchemas.Of(shape),
        };

    /// <summary>A map with the record's keys and no others.</summary>
    public JsonObject Keys(RecordShape record) =>
        Map(
            record.Fields.Where(field => field.IsRequired).Select(field => field.Key),
            record.Fields.Select(field => KeyValuePair.Create(field.Key, Property(field)))
        );

    /// <summary>All that was referred to, by name. Takes them out: a JSON node belongs to one document.</summary>
    public JsonObject TakeDefinitions()
    {
        var taken = Named(_definitions.Select(pair => KeyValuePair.Create(pair.Key, pair.Value.Schema)));
        _definitions.Clear();
        return taken;
    }

    private JsonObject Record(RecordShape record)
    {
        var schema = Keys(record);
        schema.Insert(0, "title", Capital(record.Name));
        return schema;
    }

    private static string Description(Shape shape) =>
        shape is RecordShape record
            ? $"Keys: {string.Join(", ", record.Fields.Select(field => $"`{field.Key}`"))}."
            : $"{Capital(shape.Wanted)}.";

    private JsonObject Property(Field field) =>
        Described(
            ScalarSchemas.HasForm(field.Shape) ? $"{field.Doc} Write {field.Shape.Wanted}." : field.Doc,
            Of(field.Shape)
        );

    /// <summary>An item or a table's value. What is referred to is described where it is defined.</summary>
    private JsonObject Item(Shape shape) =>
        Of(shape) is var schema && schema.ContainsKey("$ref") ? schema : Described(Description(shape), schema);

    /// <summary>Keys are judged by their characters alone: an editor may see a number in one made of digits.</summary>
    private JsonObject Table(TableShape table)
    {
        var keys = ScalarSchemas.Of(table.Key);
        foreach (var keyword in new[] { "type", "minimum", "maximum" })
        {
            keys.Remove(keyword);
        }

        return new()
        {
            ["type"] = "object",
            ["propertyNames"] = keys,
            ["additionalProperties"] = Item(table.Value),
        };
    }

    /// <summary>Refers to a definition, and makes it where this is the first to need it.</summary>
    private JsonObject Shared(string name, Shape shape, Func<JsonObject> make)
    {
        if (!_definitions.TryGetValue(name, out var known))
        {
            // Known before it is made: what it is made of may refer to it.
            _definitions.Add(name, new(shape, []));
            _definitions[name] = new(shape, Described(Description(shape), make()));
        }
        else if (known.Shape != shape)
        {
            throw new InvalidOperationException($"two shapes are called `{name}`; a schema defines only one of them");
        }

        return new() { ["$ref"] = $"#/$defs/{name}" };
    }

    private sealed record Definition(Shape Shape, JsonObject Schema);
}
