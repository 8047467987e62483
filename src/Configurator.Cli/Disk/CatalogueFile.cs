namespace Configurator.Cli.Disk;

/// <summary>A file of the catalogue that may be read.</summary>
/// <param name="Path">Relative to the catalogue's folder, with forward slashes.</param>
/// <param name="Bytes">Its size when it was found; no more is ever read of it.</param>
internal sealed record CatalogueFile(string Path, string FullPath, long Bytes);
