using Configurator.Core.Sources;

namespace Configurator.Cli.Disk;

/// <summary>What was read of a catalogue, or why there is none to read.</summary>
/// <param name="Sources">Empty when there is a problem.</param>
internal sealed record CatalogueReading(SourceSet Sources, DiskProblem? Problem)
{
    public static CatalogueReading Failed(DiskProblem problem) => new(SourceSet.Of([]), problem);
}
