using System.Text.RegularExpressions;

namespace Configurator.Site.Rendering;

/// <summary>What the two compilers say, in the form of our other messages.</summary>
internal static partial class CompilerWords
{
    public static string Plain(string message)
    {
        var plain = Advice().Replace(Spaces().Replace(message, " "), "").TrimEnd('.', ' ');
        plain = Quoted().Replace(plain, "`${name}`");
        return plain.Length > 1 && char.IsUpper(plain[0]) && char.IsLower(plain[1])
            ? char.ToLowerInvariant(plain[0]) + plain[1..]
            : plain;
    }

    [GeneratedRegex(@"\s+", RegexOptions.NonBacktracking)]
    private static partial Regex Spaces();

    /// <summary>About assemblies and extension methods, which nobody can add from a template.</summary>
    [GeneratedRegex(
        @" and no accessible extension method .* could be found| \(are you missing .*\?\)",
        RegexOptions.NonBacktracking
    )]
    private static partial Regex Advice();

    [GeneratedRegex(
        "'(?<name>[^'`]+)['`]|\"(?<name>[^\"]+)\"",
        RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Quoted();
}
