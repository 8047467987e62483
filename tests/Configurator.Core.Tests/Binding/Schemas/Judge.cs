using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Configurator.Core.Binding.Kinds;
using Configurator.Core.Binding.Schemas;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Loading;
using Configurator.Core.Sources;
using Configurator.Core.Tests.Support;
using Json.Schema;

namespace Configurator.Core.Tests.Binding.Schemas;

/// <summary>Asks the binder's reader and the schema of a shape whether a piece of YAML is right there.</summary>
internal static class Judge
{
    /// <summary>Every shape of every kind that is no record, once.</summary>
    public static ImmutableArray<Shape> Shapes { get; } =
        [.. Kind.All.SelectMany(kind => Within(kind.Shape)).Distinct()];

    public static bool ReaderTakes(Shape shape, string yaml)
    {
        var (root, faults) = YamlReader.Read(new SourceText("a.yaml", $"value: {yaml}\n"));
        Assert.Empty(faults);
        var report = new List<Diagnostic>();
        return new ShapeReader(report).Read(root!.Entries[0].Value, shape) is not null && report.Count == 0;
    }

    public static Func<string, bool> SchemaOf(Shape shape)
    {
        var schema = Compiled(Schema(shape));
        return yaml => Takes(schema, YamlAsJson.Of($"value: {yaml}\n")!["value"]);
    }

    public static bool ReaderTakesKey(Shape shape, string key) =>
        new ScalarReader([]).Read(new(key, isPlain: false, SourceSpan.FileStart("a.yaml")), shape) is not null;

    public static Func<string, bool> SchemaOfKeys(TableShape table)
    {
        var schema = Compiled((JsonObject)Schema(table)["propertyNames"]!.DeepClone());
        return key => Takes(schema, JsonValue.Create(key));
    }

    /// <summary>A shape's schema as a document of its own.</summary>
    public static JsonObject Schema(Shape shape)
    {
        var schemas = new ShapeSchemas();
        var schema = schemas.Of(shape);
        schema.Add("$defs", schemas.TakeDefinitions());
        return schema;
    }

    private static JsonSchema Compiled(JsonObject schema) =>
        JsonSchema.FromText(schema.ToJsonString(), new BuildOptions { SchemaRegistry = new() });

    private static bool Takes(JsonSchema schema, JsonNode? value) =>
        schema.Evaluate(JsonSerializer.SerializeToElement(value)).IsValid;

    private static IEnumerable<Shape> Within(Shape shape) => shape switch
    {
        RecordShape record => record.Fields.SelectMany(field => Within(field.Shape)),
        ListShape list => [list, .. Within(list.Item)],
        TableShape table => [table, .. Within(table.Value)],
        _ => [shape],
    };
}
