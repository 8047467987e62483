namespace Configurator.Core.Review.Lines;

/// <summary>A run of lines replaced by another. Lines count from 0; either run may be empty.</summary>
/// <param name="AfterStart">Where nothing is left, the line that stands there now.</param>
internal sealed record LineHunk(int BeforeStart, int BeforeCount, int AfterStart, int AfterCount);
