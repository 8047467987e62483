using System.Globalization;
using System.Text.Json.Nodes;
using Configurator.Core.Review.Kinds;

namespace Configurator.Core.Review.Printing;

/// <summary>What a review as JSON may hold, for programs that read it.</summary>
public static class ReviewSchema
{
    /// <summary>Goes up when a program that reads the form would no longer understand it.</summary>
    public const int Version = 1;

    private const string Draft = "https://json-schema.org/draft/2020-12/schema";

    public static string Name { get; } = string.Create(CultureInfo.InvariantCulture, $"review.v{Version}.schema.json");

    public static JsonObject Make()
    {
        var schema = Object([
            ("version", new JsonObject { ["const"] = Version }),
            ("before", Text("Folder or revision that was compared with")),
            ("after", Text("Folder or revision that was reviewed")),
            ("verdict", Verdict()),
            ("notCompared", Texts("What could not be compared, and why")),
            ("changes", new JsonObject { ["type"] = "array", ["items"] = Change() }),
        ]);
        schema.Insert(0, "$schema", Draft);
        schema.Insert(1, "$id", Name);
        schema.Insert(2, "title", "Review");
        schema.Insert(3, "description", "What `review --format json` prints. `configurator schema` writes this.");
        return schema;
    }

    public static string Word(ReviewTopic topic) => topic.ToString().ToLowerInvariant();

    private static JsonObject Verdict() =>
        Object([
            ("fails", Flag("The exit code is 1")),
            ("failOn", Text("Levels and kinds that make it fail")),
            ("errors", Number("Changes of that level", least: 0)),
            ("warnings", Number("Changes of that level", least: 0)),
            ("notes", Number("Changes of that level", least: 0)),
        ]);

    private static JsonObject Change() =>
        Object(
            [
                ("kind", OneOf(ChangeKinds.All.Select(kind => kind.Id))),
                ("topic", OneOf(Enum.GetValues<ReviewTopic>().Select(Word))),
                ("level", OneOf(["note", "warning", "error"])),
                ("fails", Flag("It is of a level or kind that makes the review fail")),
                ("machine", Text("Id of the machine concerned")),
                ("subject", Text("What it happens to, names in backticks")),
                ("before", Text("As it was; empty where it was not there")),
                ("after", Text("As it is; empty where it is no longer there")),
                ("remark", Text("What else is to be said")),
                ("details", Texts("Examples, reasons, repairs")),
                ("configurations", Texts("Ids of published configurations concerned")),
                ("pagesBefore", Texts("Pages of the earlier site that show it")),
                ("pagesAfter", Texts("Pages of the later site that show it")),
                ("place", Place()),
            ],
            optional: ["machine", "place"]
        );

    private static JsonObject Place() =>
        Object([
            ("path", Text("Relative to the catalogue's folder")),
            ("line", Number("From 1", least: 1)),
            ("column", Number("From 1, in UTF-16 units", least: 1)),
            ("length", Number("0 marks the whole line or a place between characters", least: 0)),
        ]);

    private static JsonObject Object((string Name, JsonNode Schema)[] parts, params string[] optional) =>
        new()
        {
            ["type"] = "object",
            ["additionalProperties"] = false,
            ["required"] = new JsonArray([
                .. parts
                    .Select(part => part.Name)
                    .Except(optional, StringComparer.Ordinal)
                    .Select(name => (JsonNode)name),
            ]),
            ["properties"] = new JsonObject(
                parts.Select(part => KeyValuePair.Create(part.Name, (JsonNode?)part.Schema))
            ),
        };

    private static JsonObject Text(string description) => new() { ["type"] = "string", ["description"] = description };

    private static JsonObject Flag(string description) => new() { ["type"] = "boolean", ["description"] = description };

    private static JsonObject Number(string description, int least) =>
        new()
        {
            ["type"] = "integer",
            ["minimum"] = least,
            ["description"] = description,
        };

    private static JsonObject Texts(string description) =>
        new()
        {
            ["type"] = "array",
            ["items"] = new JsonObject { ["type"] = "string" },
            ["description"] = description,
        };

    private static JsonObject OneOf(IEnumerable<string> words) =>
        new() { ["enum"] = new JsonArray([.. words.Select(word => (JsonNode)word)]) };
}
