namespace Configurator.Cli.Tests.Browser.Picking;

internal static class Assertions
{
    private static readonly TimeSpan Most = TimeSpan.FromSeconds(5);

    /// <summary>Waits until something is so that the browser does in its own time.</summary>
    public static async Task EventuallyAsync(Func<bool> isSo)
    {
        var start = System.Diagnostics.Stopwatch.GetTimestamp();
        while (!isSo() && System.Diagnostics.Stopwatch.GetElapsedTime(start) < Most)
        {
            await Task.Delay(20, TestContext.Current.CancellationToken);
        }

        Assert.True(isSo());
    }
}
