namespace Configurator.Core.Loading;

/// <summary>How much one definition file may hold: far above any honest file, far below what hurts.</summary>
internal static class Limits
{
    public const int FileBytesMax = 1024 * 1024;

    public const int DepthMax = 64;

    public const int NodesMax = 200_000;
}
