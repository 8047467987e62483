using System.Diagnostics;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Configurator.Core.Binding.Kinds;
using Configurator.Core.Binding.Schemas;

namespace Configurator.Core.Tests.Binding.Schemas;

public sealed class SchemaWriterTests
{
    /// <summary>Draft 2020-12 has them all; draft-07 does too, but that it calls <c>$defs</c> definitions.</summary>
    private static readonly string[] Keywords =
    [
        "$schema", "$id", "$ref", "$defs", "title", "description", "examples", "type", "enum", "anyOf", "pattern",
        "maxLength", "minimum", "maximum", "items", "properties", "required", "additionalProperties", "propertyNames",
        "minProperties",
    ];

    private static readonly string[] MapsOfSchemas = ["properties", "$defs"];

    private static readonly JsonObject[] All =
        [.. SchemaWriter.Files().SelectMany(file => Schemas(JsonNode.Parse(file.Text)!.AsObject()))];

    [Fact]
    public void Each_kind_has_a_schema_named_after_it() => Assert.Equal(
        Kind.All.Select(kind => $"{kind.Name}.v1.schema.json").Order(StringComparer.Ordinal),
        SchemaWriter.Files().Select(file => file.Name));

    [Fact]
    public void A_port_plan_is_a_machine_the_homes_of_its_instances_and_their_numbers_in_the_box() => Assert.Equal("""
        {
          "$schema": "https://json-schema.org/draft/2020-12/schema",
          "$id": "port-plan.v1.schema.json",
          "title": "Port plan",
          "description": "What `machines/*/port-plan.yaml` may say. `configurator schema` writes this.",
          "type": "object",
          "additionalProperties": false,
          "required": [
            "port-plan",
            "homes"
          ],
          "properties": {
            "port-plan": {
              "description": "The machine.",
              "$ref": "#/$defs/id"
            },
            "homes": {
              "description": "The home of every instance: one line each.",
              "type": "object",
              "propertyNames": {
                "pattern": "^[a-z0-9-]+/[a-z0-9-]+/[1-9][0-9]{0,2}$"
              },
              "additionalProperties": {
                "description": "`MASTER:PORT` such as `front:3`, `MASTER:PORT/pin-2` behind a splitter, or `direct`.",
                "type": "string",
                "pattern": "^[a-z0-9-]+:[1-9][0-9]?(/pin-2)?$|^direct$"
              }
            },
            "box": {
              "description": "Inputs, outputs and ports of the box that instances take: one line each.",
              "type": "object",
              "propertyNames": {
                "pattern": "^[a-z0-9-]+/[a-z0-9-]+/[1-9][0-9]{0,2}$"
              },
              "additionalProperties": {
                "$ref": "#/$defs/set-of-numbers-in-the-box"
              }
            }
          },
          "$defs": {
            "id": {
              "description": "Lower-case words and digits joined by hyphens.",
              "type": "string",
              "pattern": "^[a-z][a-z0-9]*(-[a-z0-9]+)*$",
              "maxLength": 64
            },
            "set-of-numbers-in-the-box": {
              "title": "Set of numbers in the box",
              "description": "Keys: `safety-inputs`, `safety-outputs`, `fast-inputs`, `inputs`, `outputs`, `torque-off`, `network`.",
              "type": "object",
              "additionalProperties": false,
              "properties": {
                "safety-inputs": {
                  "description": "Numbers of each safety input it takes.",
                  "type": "array",
                  "items": {
                    "description": "A whole number from 1 to 1000.",
                    "type": "integer",
                    "minimum": 1,
                    "maximum": 1000
                  }
                },
                "safety-outputs": {
                  "description": "Numbers of each safety output it takes.",
                  "type": "array",
                  "items": {
                    "description": "A whole number from 1 to 1000.",
                    "type": "integer",
                    "minimum": 1,
                    "maximum": 1000
                  }
                },
                "fast-inputs": {
                  "description": "Numbers of each fast input it takes.",
                  "type": "array",
                  "items": {
                    "description": "A whole number from 1 to 1000.",
                    "type": "integer",
                    "minimum": 1,
                    "maximum": 1000
                  }
                },
                "inputs": {
                  "description": "Numbers of each plain input it takes.",
                  "type": "array",
                  "items": {
                    "description": "A whole number from 1 to 1000.",
                    "type": "integer",
                    "minimum": 1,
                    "maximum": 1000
                  }
                },
                "outputs": {
                  "description": "Numbers of each plain output it takes.",
                  "type": "array",
                  "items": {
                    "description": "A whole number from 1 to 1000.",
                    "type": "integer",
                    "minimum": 1,
                    "maximum": 1000
                  }
                },
                "torque-off": {
                  "description": "Numbers of each torque-off pair it takes.",
                  "type": "array",
                  "items": {
                    "description": "A whole number from 1 to 1000.",
                    "type": "integer",
                    "minimum": 1,
                    "maximum": 1000
                  }
                },
                "network": {
                  "description": "Numbers of each network port it takes.",
                  "type": "array",
                  "items": {
                    "description": "A whole number from 1 to 1000.",
                    "type": "integer",
                    "minimum": 1,
                    "maximum": 1000
                  }
                }
              }
            }
          }
        }

        """, SchemaWriter.Files().Single(file => file.Name == "port-plan.v1.schema.json").Text);

    [Fact]
    public void The_same_bytes_come_out_every_time_with_a_line_feed_at_each_end()
    {
        Assert.Equal(SchemaWriter.Files().ToArray(), SchemaWriter.Files());
        Assert.All(SchemaWriter.Files(), file => Assert.EndsWith("}\n", file.Text, StringComparison.Ordinal));
        Assert.All(SchemaWriter.Files(), file => Assert.DoesNotContain('\r', file.Text));
    }

    [Fact]
    public void Only_keywords_that_older_editors_know_are_used() =>
        Assert.Empty(All.SelectMany(schema => schema.Select(pair => pair.Key)).Except(Keywords));

    [Fact]
    public void Every_key_item_and_definition_is_described_or_refers_to_what_is() => Assert.All(
        All.SelectMany(Described),
        schema => Assert.True(schema.ContainsKey("description") || schema.ContainsKey("$ref"), schema.ToJsonString()));

    [Fact]
    public void Every_key_says_what_the_binder_says_of_it() => Assert.All(Kind.All, kind =>
    {
        var keys = JsonNode.Parse(SchemaWriter.Of(kind).Text)!["properties"]!.AsObject();
        Assert.Equal(kind.Shape.Fields.Select(field => field.Key), keys.Select(key => key.Key));
        Assert.All(
            kind.Shape.Fields,
            field => Assert.StartsWith(field.Doc, (string?)keys[field.Key]!["description"], StringComparison.Ordinal));
    });

    [Fact]
    public void Every_definition_is_referred_to_and_every_reference_leads_to_one()
    {
        foreach (var file in SchemaWriter.Files())
        {
            var root = JsonNode.Parse(file.Text)!.AsObject();
            var referred = Schemas(root).Select(schema => (string?)schema["$ref"]).OfType<string>().Distinct();
            Assert.Equal(
                root["$defs"]!.AsObject().Select(pair => $"#/$defs/{pair.Key}"),
                referred.Order(StringComparer.Ordinal));
        }
    }

    // Validators match with backtracking, some of them without a time limit.
    [Fact]
    public void No_form_makes_a_validator_slow()
    {
        var start = Stopwatch.GetTimestamp();
        foreach (var pattern in All.Select(schema => (string?)schema["pattern"]).OfType<string>().Distinct())
        {
            foreach (var piece in new[] { "a", "A", "0", "a-", "A-", "0-", "a/", "0.", "m12-", "a:", "-", " " })
            {
                var hostile = string.Concat(Enumerable.Repeat(piece, 20_000)) + "!";
                _ = Regex.IsMatch(hostile, pattern, RegexOptions.ECMAScript, TimeSpan.FromSeconds(5));
            }
        }

        Assert.InRange(Stopwatch.GetElapsedTime(start).TotalSeconds, 0, 5);
    }

    /// <summary>A schema and all within it.</summary>
    private static IEnumerable<JsonObject> Schemas(JsonObject schema)
    {
        var forms = schema["anyOf"]?.AsArray().OfType<JsonObject>() ?? [];
        var names = schema["propertyNames"] is JsonObject judged ? new[] { judged } : [];
        return [schema, .. Described(schema).Concat(names).Concat(forms).SelectMany(Schemas)];
    }

    private static IEnumerable<JsonObject> Described(JsonObject schema)
    {
        var named = MapsOfSchemas.SelectMany(key => schema[key]?.AsObject().Select(pair => pair.Value) ?? []);
        return named.Append(schema["items"]).Append(schema["additionalProperties"]).OfType<JsonObject>();
    }
}
