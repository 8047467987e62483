using Configurator.Core.Diagnostics;
using Configurator.Core.Engineering;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Review;

/// <summary>One of the two states of the definitions that are compared, as far as it is sound.</summary>
/// <param name="Name">A folder or a revision, as given to the run.</param>
public sealed record ReviewSide(string Name, SourceSet Sources, Outcome<EngineeredCatalogue> Checked)
{
    public EngineeredCatalogue Engineered => Checked.Value;

    internal Catalogue Catalogue => Engineered.Catalogue;

    /// <summary>Mistakes in the definitions, which leave things out of what is compared; findings that fail do
    /// not.</summary>
    internal IEnumerable<Diagnostic> Mistakes =>
        Checked.Diagnostics.Where(diagnostic =>
            diagnostic.Rule.Severity == Severity.Error && !FindingDiagnostics.All.Contains(diagnostic.Rule)
        );

    internal int Errors => Mistakes.Count();
}
