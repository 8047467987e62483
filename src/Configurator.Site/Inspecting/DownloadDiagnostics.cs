using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Sources;

namespace Configurator.Site.Inspecting;

internal static class DownloadDiagnostics
{
    private static readonly Rule Download = new("CFG6012", Severity.Error, "Download differs from its page");

    internal static ImmutableArray<Rule> All { get; } = [Download];

    public static Diagnostic Differs(string file, string table, string difference) =>
        new(Download, $"table `{table}`: {difference}", SourceSpan.FileStart(SitePath.Shown(file)))
        {
            Fix = new("print every cell of a table as it is; templates only add to it what is no text"),
        };
}
