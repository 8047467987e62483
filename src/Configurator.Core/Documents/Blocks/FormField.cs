namespace Configurator.Core.Documents.Blocks;

/// <param name="Hint">Who sets it; empty where nobody but the writer does.</param>
public sealed record FormField(string Label, string Hint = "");
