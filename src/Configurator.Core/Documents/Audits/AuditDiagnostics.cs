using System.Collections.Immutable;
using Configurator.Core.Diagnostics;

namespace Configurator.Core.Documents.Audits;

internal static class AuditDiagnostics
{
    private static readonly Rule Lists = new("CFG5201", Severity.Error, "Documents disagree");

    public static ImmutableArray<Rule> All { get; } = [Lists];

    public static Diagnostic ListsDisagree(DocumentSet set, string fault) =>
        new(Lists, fault, set.Engineered.Published.Id.Span)
        {
            Fix = new("give things that are called alike other names; if none are, this is a fault of the tool"),
        };
}
