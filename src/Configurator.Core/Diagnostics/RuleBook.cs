using System.Collections.Immutable;
using System.Reflection;
using System.Text;
using Configurator.Core.Binding;
using Configurator.Core.Engineering;
using Configurator.Core.Loading;
using Configurator.Core.Logic;

namespace Configurator.Core.Diagnostics;

/// <summary>Every rule that this assembly reports after, and the page that explains each code.</summary>
public static class RuleBook
{
    public static ImmutableArray<Rule> Rules { get; } =
    [
        .. LoadingDiagnostics
            .All.Concat(BindingDiagnostics.All)
            .Concat(ProcessDataDiagnostics.All)
            .Concat(LogicDiagnostics.All)
            .Concat(FindingDiagnostics.All)
            .OrderBy(rule => rule.Code, StringComparer.Ordinal),
    ];

    /// <summary>Codes that have a page, of all stages.</summary>
    public static ImmutableArray<string> Codes { get; } =
    [
        .. Assembly
            .GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
            .Select(name => name[Folder.Length..^".md".Length])
            .Order(StringComparer.Ordinal),
    ];

    private const string Folder = "Pages/";

    private static Assembly Assembly => typeof(RuleBook).Assembly;

    /// <summary>The page of a code, Markdown; null where there is none.</summary>
    public static string? Page(string code)
    {
        using var stream = Assembly.GetManifestResourceStream($"{Folder}{code}.md");
        if (stream is null)
        {
            return null;
        }

        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
