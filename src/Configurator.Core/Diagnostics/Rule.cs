namespace Configurator.Core.Diagnostics;

/// <summary>How much a diagnostic weighs: an error stops a publish, a warning does not, a note only informs.</summary>
public enum Severity
{
    Note,
    Warning,
    Error,
}

/// <summary>What a kind of diagnostic is called: its code for ever, its usual severity and a title.</summary>
/// <param name="Code">CFG and four digits; the first says the stage (1 load, 2 bind, 3 prove, 4 engineer, 5 document
/// and render, 6 inspect). Never reused.</param>
public sealed record Rule(string Code, Severity Severity, string Title);
