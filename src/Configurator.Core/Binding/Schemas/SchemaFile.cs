namespace Configurator.Core.Binding.Schemas;

/// <summary>The JSON Schema of one kind of definition, for editors.</summary>
/// <param name="Name">Of the file, such as <c>option.v1.schema.json</c>.</param>
/// <param name="Text">JSON, indented, with a line feed at each line's end.</param>
public sealed record SchemaFile(string Name, string Text);
