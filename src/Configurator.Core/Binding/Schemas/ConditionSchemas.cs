using System.Text.Json.Nodes;
using Configurator.Core.Binding.Shapes;
using static Configurator.Core.Binding.Schemas.SchemaParts;

namespace Configurator.Core.Binding.Schemas;

/// <summary>Describes conditions, which may hold conditions.</summary>
internal sealed class ConditionSchemas(ShapeSchemas all)
{
    private static readonly string[] Groups = ["all", "any", "none"];

    public JsonObject Condition() => AnyOf(Option(), List(), Count(), Group());

    public JsonObject Requirement() => AnyOf(Option(), List(), Count(Because()), Group(Because()));

    public JsonObject Link() => AnyOf(Option(), Map(["option"], [new("option", Option()), Because()]));

    private JsonObject Option() => all.Of(new IdShape("an option"));

    private JsonObject List() => new() { ["type"] = "array", ["items"] = all.Of(new ConditionShape()) };

    /// <summary>How many of an option must be taken.</summary>
    private JsonObject Count(params KeyValuePair<string, JsonObject>[] more) =>
        Map(
            ["option"],
            [
                new("option", Option()),
                new("at-least", Number("As many or more; 1 where no number is given.")),
                new("at-most", Number("As many or fewer.")),
                new("exactly", Number("Just as many.")),
                .. more,
            ]
        );

    private JsonObject Group(params KeyValuePair<string, JsonObject>[] more)
    {
        var group = Map(
            [],
            [
                new("all", Described("Each of these holds.", List())),
                new("any", Described("One of these holds, or more.", List())),
                new("none", Described("None of these holds.", List())),
                .. more,
            ]
        );
        group["anyOf"] = new JsonArray([.. Groups.Select(key => new JsonObject { ["required"] = Words([key]) })]);
        return group;
    }

    private KeyValuePair<string, JsonObject> Because() =>
        new("because", Described("The sentence a salesperson reads.", all.Of(new TextShape())));

    private static JsonObject Number(string meaning) =>
        Described(meaning, ScalarSchemas.Of(new CountShape(0, int.MaxValue)));

    private static JsonObject AnyOf(params JsonObject[] forms) => new() { ["anyOf"] = new JsonArray(forms) };
}
