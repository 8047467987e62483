using Configurator.Core.Diagnostics;

namespace Configurator.Core.Tests.Diagnostics.Printing;

/// <summary>Made-up diagnostics to print.</summary>
internal static class Samples
{
    public const string Path = "options/lids/top-film.yaml";

    /// <summary>Strings that would do something to a terminal or a build log if they reached it as they are.</summary>
    public static TheoryData<string> Hostile { get; } =
    [
        "\u001B[2Jerased", "\u009B31mred", "ring\u0007", "over\rwritten", "two\nlines", "nul\0",
        "\u202Ereversed", "\u2066isolated\u2069", "\u2028separated",
        "##[error]forged", "###[group]forged", "##tool[setvariable]forged",
        "::error::forged", "  ::add-mask::e", "\t::stop-commands::x",
    ];

    public static readonly Rule UnknownName = new("CFG2003", Severity.Error, "Unknown name");

    public static readonly Rule Useless = new("CFG4901", Severity.Warning, "Accepted without a failed finding");

    public static readonly Rule Remark = new("CFG3999", Severity.Note, "A remark");

    public static Diagnostic Plain(
        string message = "there is no option `snap`", int line = 2, int column = 12, int length = 4) =>
        new(UnknownName, message, new(Path, line, column, length));

    /// <summary>The same hostile text in every place that takes text from a definition.</summary>
    public static Diagnostic Full(string text) => new(UnknownName, text, new(Path, 1, 1, 3))
    {
        Notes = [new(text, new($"options/{text}.yaml", 4, 5, 1))],
        Fix = new(text, new(Path, 1, 1, 3), text),
    };

    public static bool CannotBeSeen(char c) =>
        char.IsControl(c) || c is '\u202E' or '\u2066' or '\u2069' or '\u2028';

    /// <summary>A build log takes such a line for a command.</summary>
    public static bool OpensCommand(string line) => line.TrimStart().StartsWith("::", StringComparison.Ordinal);
}
