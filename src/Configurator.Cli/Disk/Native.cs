using System.Buffers.Binary;
using System.Runtime.InteropServices;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace Configurator.Cli.Disk;

/// <summary>The calls of Linux that .NET does not offer. Where they are missing, callers get a "no".</summary>
internal static class Native
{
    private const int CurrentFolder = -100;
    private const int NoFollow = 0x100;
    private const uint WantType = 1;
    private const uint WantOwner = 8;
    private const uint ExchangeNames = 2;
    private const int CloseOnExec = 0x80000;
    private const int StatSize = 256;
    private const int OwnerOffset = 20;
    private const int ModeOffset = 28;
    private const int TypeBits = 0xF000;

    /// <summary>The type bits of the entry itself, not of what a link leads to; null where not to be had.</summary>
    public static int? TypeOf(string path)
    {
        var stat = new byte[StatSize];
        return Succeeds(() => statx(CurrentFolder, Text(path), NoFollow, WantType, stat))
            ? BinaryPrimitives.ReadUInt16LittleEndian(stat.AsSpan(ModeOffset)) & TypeBits
            : null;
    }

    /// <summary>The entry belongs to the user we run as; also true where that is not to be had.</summary>
    public static bool IsOwn(string path)
    {
        var stat = new byte[StatSize];
        return !Succeeds(() => statx(CurrentFolder, Text(path), NoFollow, WantOwner, stat))
            || BinaryPrimitives.ReadUInt32LittleEndian(stat.AsSpan(OwnerOffset)) == geteuid();
    }

    /// <summary>Swaps the names of two existing entries in one instant; false where that is not to be had.</summary>
    public static bool Exchange(string left, string right) =>
        Succeeds(() => renameat2(CurrentFolder, Text(left), CurrentFolder, Text(right), ExchangeNames));

    /// <summary>Opens a file to read it whoever has locked it, as .NET does not; null where not to be had.</summary>
    public static SafeFileHandle? OpenUnlocked(string path)
    {
        var descriptor = -1;
        return Succeeds(() => (descriptor = open(Text(path), CloseOnExec)) >= 0 ? 0 : -1)
            ? new(descriptor, ownsHandle: true)
            : null;
    }

    private static bool Succeeds(Func<int> call)
    {
        try
        {
            return OperatingSystem.IsLinux() && call() == 0;
        }
        catch (EntryPointNotFoundException)
        {
            return false;
        }
    }

    private static byte[] Text(string path) => Encoding.UTF8.GetBytes(path + '\0');

    [DllImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int open(byte[] path, int flags);

    [DllImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern uint geteuid();

    [DllImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int statx(int folder, byte[] path, int flags, uint mask, byte[] stat);

    [DllImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int renameat2(int leftFolder, byte[] left, int rightFolder, byte[] right, uint flags);
}
