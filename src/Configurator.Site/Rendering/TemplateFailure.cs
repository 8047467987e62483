using System.Collections.Immutable;
using Configurator.Core.Diagnostics;

namespace Configurator.Site.Rendering;

/// <summary>Carries findings out of the template engine, which knows no other way back than to throw.</summary>
internal sealed class TemplateFailure(ImmutableArray<Diagnostic> diagnostics) : Exception
{
    public TemplateFailure(Diagnostic diagnostic)
        : this([diagnostic]) { }

    public ImmutableArray<Diagnostic> Diagnostics { get; } = diagnostics;
}
