using Microsoft.Win32.SafeHandles;

namespace Configurator.Cli.Disk;

internal static class DiskWrite
{
    /// <summary>Writes all bytes at the file's start.</summary>
    /// <exception cref="IOException">The disk does not take them, or the system does not allow so many.</exception>
    public static void All(SafeFileHandle file, ReadOnlySpan<byte> bytes, string path)
    {
        try
        {
            RandomAccess.Write(file, bytes, 0);
        }
        catch (ArgumentOutOfRangeException failure)
        {
            // .NET reports a limit on file sizes that the system has set as if the caller had given a bad number.
            throw new IOException($"the system does not allow `{path}` to have {bytes.Length} bytes", failure);
        }
    }
}
