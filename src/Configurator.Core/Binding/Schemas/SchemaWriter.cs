using System.Collections.Immutable;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using Configurator.Core.Binding.Kinds;
using Configurator.Core.Documents.Monitoring;
using Configurator.Core.Review.Printing;

namespace Configurator.Core.Binding.Schemas;

/// <summary>Writes what definitions may say as JSON Schemas, from the shapes that the binder reads them with.</summary>
/// <remarks>
/// They declare draft 2020-12 and keep to what draft-07 has as well, since not every editor knows more. A schema judges
/// the form of a file; whether names exist and values go together, only <c>check</c> knows.
/// </remarks>
public static class SchemaWriter
{
    private const string Draft = "https://json-schema.org/draft/2020-12/schema";

    /// <summary>Part of each name. Goes up when a file that was valid no longer is.</summary>
    private const int Version = 1;

    private static readonly JsonSerializerOptions Style = new()
    {
        WriteIndented = true,
        IndentSize = 2,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Those of definitions, and those of reviews and monitoring lists as JSON, in ordinal order of their
    /// names.</summary>
    public static ImmutableArray<SchemaFile> All() =>
        [
            .. Files()
                .Append(new(ReviewSchema.Name, ReviewSchema.Make().ToJsonString(Style) + "\n"))
                .Append(new(MonitoringSchema.Name, MonitoringSchema.Text))
                .OrderBy(file => file.Name, StringComparer.Ordinal),
        ];

    /// <summary>One file a kind, in ordinal order of their names.</summary>
    public static ImmutableArray<SchemaFile> Files() =>
        [.. Kind.All.Select(Of).OrderBy(file => file.Name, StringComparer.Ordinal)];

    internal static SchemaFile Of(Kind kind)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"{kind.Name}.v{Version}.schema.json");
        var schemas = new ShapeSchemas();
        var schema = schemas.Keys(kind.Shape);
        var place = $"What `{kind.Place}` may say. `configurator schema` writes this.";
        schema.Insert(0, "$schema", Draft);
        schema.Insert(1, "$id", name);
        schema.Insert(2, "title", SchemaParts.Capital(kind.Shape.Name));
        schema.Insert(3, "description", place);
        schema.Add("$defs", schemas.TakeDefinitions());
        return new(name, schema.ToJsonString(Style) + "\n");
    }
}
