using System.Runtime.ExceptionServices;
using System.Runtime.InteropServices;

namespace Configurator.Cli.Tests.Disk;

/// <summary>Makes permissions count even where the tests run as root, whom no permission stops.</summary>
internal static class Nobody
{
    private const uint NobodyId = 65534;

    /// <summary>Runs on a thread with the access to files of nobody; for all but root this changes nothing.</summary>
    public static T Does<T>(Func<T> work)
    {
        T? result = default;
        ExceptionDispatchInfo? failure = null;
        var thread = new Thread(() =>
        {
            _ = setfsuid(NobodyId);
            try
            {
                result = work();
            }
            catch (Exception thrown)
            {
                failure = ExceptionDispatchInfo.Capture(thrown);
            }
        });
        thread.Start();
        thread.Join();
        failure?.Throw();
        return result!;
    }

    [DllImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int setfsuid(uint user);
}
