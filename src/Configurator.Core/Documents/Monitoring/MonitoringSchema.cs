namespace Configurator.Core.Documents.Monitoring;

/// <summary>The JSON Schema of <c>monitoring.json</c>. A name goes up a version when a file that was valid no longer
/// is.</summary>
public static class MonitoringSchema
{
    public const string Name = "monitoring.v1.schema.json";

    internal static TextFile File { get; } = new(PagePaths.Schema(Name), Text);

    public const string Text = """
        {
          "$schema": "https://json-schema.org/draft/2020-12/schema",
          "$id": "monitoring.v1.schema.json",
          "title": "Monitoring list",
          "description": "What a configuration offers a monitoring system. `configurator publish` writes such files.",
          "type": "object",
          "additionalProperties": false,
          "required": ["machine", "configuration", "document", "revision", "state", "definitions", "points", "events"],
          "properties": {
            "$schema": {"description": "Where this schema lies.", "type": "string"},
            "machine": {"description": "Id of the machine.", "type": "string"},
            "configuration": {"description": "Id of the configuration.", "type": "string"},
            "document": {"description": "Document number.", "type": "string"},
            "revision": {"description": "Revision of the configuration.", "type": "string"},
            "state": {"description": "Whether the revision is approved.", "enum": ["draft", "released"]},
            "definitions": {"description": "Revision of the definitions; empty where none was given.", "type": "string"},
            "points": {
              "description": "What can be read, port by port.",
              "type": "array",
              "items": {"$ref": "#/$defs/point"}
            },
            "events": {
              "description": "Events that ports and devices usually send.",
              "type": "array",
              "items": {"$ref": "#/$defs/event"}
            }
          },
          "$defs": {
            "point": {
              "description": "A process value with `octet` or `pin`, or a parameter with `index`.",
              "type": "object",
              "additionalProperties": false,
              "required": ["kind", "name", "designation", "device", "master", "port", "type", "read", "reason"],
              "properties": {
                "kind": {
                  "description": "What it is.",
                  "enum": ["process-value", "status", "counter", "identity", "setting"]
                },
                "name": {"description": "Tag of a process value, name of a parameter.", "type": "string"},
                "designation": {"description": "Of the device.", "type": "string"},
                "device": {"description": "Id of the device in the library.", "type": "string"},
                "master": {"description": "Name of the master.", "type": "string"},
                "port": {"description": "Port of the master.", "type": "integer", "minimum": 1},
                "octet": {
                  "description": "First octet of the input process data that it touches; 0 travels first.",
                  "type": "integer",
                  "minimum": 0,
                  "maximum": 31
                },
                "bit": {
                  "description": "Its lowest bit, in the last octet that it touches.",
                  "type": "integer",
                  "minimum": 0,
                  "maximum": 7
                },
                "bit-offset": {
                  "description": "Its lowest bit, counted from bit 0 of the last octet of all.",
                  "type": "integer",
                  "minimum": 0,
                  "maximum": 255
                },
                "length": {"description": "In bits.", "type": "integer", "minimum": 1, "maximum": 64},
                "pin": {"description": "Pin of a plain signal.", "enum": [2, 4]},
                "index": {"description": "IO-Link index.", "type": "integer", "minimum": 0, "maximum": 65535},
                "subindex": {"description": "IO-Link subindex.", "type": "integer", "minimum": 0, "maximum": 255},
                "type": {"description": "IO-Link data type, with its length in bits.", "type": "string"},
                "unit": {"description": "Of the value.", "type": "string"},
                "step": {"description": "What one count of the raw value stands for.", "type": "number"},
                "every-ms": {
                  "description": "Shortest useful interval; left out where it is read on an occasion.",
                  "type": "number",
                  "exclusiveMinimum": 0
                },
                "read": {
                  "description": "When to read it, and why not more often.",
                  "enum": [
                    "machine-cycle", "response", "every-second", "change", "backstop", "rise", "start", "changeover",
                    "status-change"
                  ]
                },
                "reason": {"description": "The same in words.", "type": "string"}
              }
            },
            "event": {
              "description": "An event code.",
              "type": "object",
              "additionalProperties": false,
              "required": ["sent-by", "code", "meaning"],
              "properties": {
                "sent-by": {"description": "Its origin.", "enum": ["port", "device"]},
                "code": {"description": "Event code.", "type": "integer", "minimum": 0, "maximum": 65535},
                "meaning": {"description": "In words.", "type": "string"},
                "status": {
                  "description": "Device status that goes with it.",
                  "type": "integer",
                  "minimum": 0,
                  "maximum": 4
                }
              }
            }
          }
        }

        """;
}
