using System.Text.Json.Nodes;
using Configurator.Core.Binding.Kinds;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Tests.Binding.Schemas;

/// <summary>What is written of each shape; a shape that is defined under a name is shown as its definition.</summary>
public sealed class ShapeSchemaTests
{
    [Fact]
    public void An_id_has_a_form_and_a_length() => Says(new IdShape("a machine's id"), "id", """
        {"description": "Lower-case words and digits joined by hyphens.", "type": "string",
         "pattern": "^[a-z][a-z0-9]*(-[a-z0-9]+)*$", "maxLength": 64}
        """);

    // A title such as 2026 or true is a number or a flag to an editor.
    [Fact]
    public void A_text_is_anything_that_can_be_read_or_a_map_of_languages() => Says(new TextShape(), "text", """
        {"description": "A text, or a map of languages such as `{en: Lid sensor, es: Sensor de tapa}`.",
         "type": ["string", "number", "boolean", "object"], "pattern": "^[^\\n]*\\S[^\\n]*\\n?$(?!\\n)", "minProperties": 1,
         "propertyNames": {"pattern": "^[a-z]{2}$"}, "additionalProperties":
           {"description": "The text in that language.", "type": ["string", "number", "boolean"], "pattern": "^[^\\n]*\\S[^\\n]*\\n?$(?!\\n)"}}
        """);

    [Fact]
    public void A_line_and_a_setting_are_anything_that_can_be_read()
    {
        const string Expected = """{"type": ["string", "number", "boolean"], "pattern": "^[^\\n]*\\S[^\\n]*\\n?$(?!\\n)"}""";
        Says(new LineShape("a line of text"), Expected);
        Says(new SettingShape(), Expected);
    }

    [Fact]
    public void What_has_a_form_without_digits_alone_is_a_string() => Says(
        new PatternShape("a plug", "^(m8-[0-9]|none)$"), """{"type": "string", "pattern": "^(m8-[0-9]|none)$"}""");

    // Revision 12 is a number to an editor; 999 is the largest that has the form.
    [Fact]
    public void What_may_be_digits_alone_is_a_string_or_a_number_as_large_as_the_form_allows() => Says(
        new PatternShape("a revision", "^[A-Z]{1,3}$|^[0-9]{1,3}$"),
        """{"type": ["string", "integer"], "pattern": "^[A-Z]{1,3}$|^[0-9]{1,3}$", "minimum": 0, "maximum": 999}""");

    [Fact]
    public void Words_are_listed() =>
        Says(WordShape.Of<AreaClass>(), """{"type": "string", "enum": ["food", "non-food", "splash"]}""");

    [Fact]
    public void A_quantity_has_one_of_its_units_and_an_example() => Says(Common.Of(Dimension.Current), "current", """
        {"description": "A quantity with its unit, such as `350 mA`.", "type": "string",
         "pattern": "^[0-9]+(\\.[0-9]+)? (mA|A)$", "examples": ["350 mA"]}
        """);

    [Fact]
    public void A_quantity_may_be_negative_where_that_means_something()
    {
        Says(Common.Of(Dimension.Temperature), "temperature", """
            {"description": "A quantity with its unit, such as `72 degC`.", "type": "string",
             "pattern": "^-?[0-9]+(\\.[0-9]+)? (degC|degF|K)$", "examples": ["72 degC"]}
            """);
        Says(Common.Of(Dimension.Length) with { MayBeNegative = true }, "signed-length", """
            {"description": "A quantity with its unit, such as `600 mm`.", "type": "string",
             "pattern": "^-?[0-9]+(\\.[0-9]+)? (mm|cm|m|in|ft|um)$", "examples": ["600 mm"]}
            """);
    }

    [Fact]
    public void Wire_sizes_are_those_of_the_table() => Says(Common.Of(Dimension.CrossSection), "cross-section", """
        {"description": "A quantity with its unit, such as `2.5 mm2`.", "type": "string",
         "pattern": "^([0-9]+(\\.[0-9]+)? (mm2)|(10|12|14|16|18|20|22|24) AWG)$", "examples": ["2.5 mm2"]}
        """);

    [Fact]
    public void A_count_is_a_whole_number_within_limits() =>
        Says(new CountShape(1, 64), """{"type": "integer", "minimum": 1, "maximum": 64}""");

    [Fact]
    public void A_flag_is_true_or_false() => Says(new FlagShape(), """{"type": "boolean"}""");

    [Fact]
    public void A_date_is_year_month_and_day() => Says(
        new DateShape(), """{"type": "string", "pattern": "^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$"}""");

    [Fact]
    public void A_list_says_what_each_item_is()
    {
        Says(new ListShape(new CountShape(1, 32)), """
            {"type": "array",
             "items": {"description": "A whole number from 1 to 32.", "type": "integer", "minimum": 1, "maximum": 32}}
            """);
        Says(new ListShape(new IdShape("a station's id")), """{"type": "array", "items": {"$ref": "#/$defs/id"}}""");
    }

    [Fact]
    public void A_table_says_what_its_keys_and_values_are() => Says(new TableShape(Common.Id, new FlagShape()), """
        {"type": "object", "propertyNames": {"pattern": "^[a-z][a-z0-9]*(-[a-z0-9]+)*$", "maxLength": 64},
         "additionalProperties": {"description": "`true` or `false`.", "type": "boolean"}}
        """);

    [Fact]
    public void A_record_has_its_keys_in_their_order_and_no_others() => Says(
        new RecordShape("set of knobs",
        [
            new("knob", new IdShape("an id"), "Its id.") { IsRequired = true },
            new("since", new DateShape(), "First day."),
        ]), "set-of-knobs", """
        {"title": "Set of knobs", "description": "Keys: `knob`, `since`.",
         "type": "object", "additionalProperties": false, "required": ["knob"], "properties": {
           "knob": {"description": "Its id.", "$ref": "#/$defs/id"},
           "since": {"description": "First day. Write a date such as `2026-10-02`.", "type": "string",
                     "pattern": "^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$"}}}
        """);

    [Fact]
    public void Another_option_is_named_plainly_or_with_a_reason() => Says(new LinkShape(), "link", """
        {"description": "An option, or `{option: ..., because: ...}`.", "anyOf": [
          {"$ref": "#/$defs/id"},
          {"type": "object", "additionalProperties": false, "required": ["option"], "properties": {
            "option": {"$ref": "#/$defs/id"},
            "because": {"description": "The sentence a salesperson reads.", "$ref": "#/$defs/text"}}}]}
        """);

    private static void Says(Shape shape, string expected)
    {
        var schema = Judge.Schema(shape);
        schema.Remove("$defs");
        Same(expected, schema);
    }

    private static void Says(Shape shape, string name, string expected)
    {
        var schema = Judge.Schema(shape);
        Assert.Equal($"#/$defs/{name}", (string?)schema["$ref"]);
        Same(expected, schema["$defs"]![name]!);
    }

    private static void Same(string expected, JsonNode schema) =>
        Assert.Equal(JsonNode.Parse(expected)!.ToJsonString(), schema.ToJsonString());
}
