using System.Diagnostics;
using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using Configurator.Cli.Disk;

namespace Configurator.Cli.Tests.Disk;

/// <summary>
/// Publishes in a process of its own, which can be killed and put under limits like no thread can. The child is this
/// very test program: told so by its environment, it publishes and ends before any test is looked for.
/// </summary>
internal static class ChildPublish
{
    private const string Request = "CONFIGURATOR_TEST_PUBLISH";
    private const int Killed = 128 + 9;

    /// <summary>Publishes the new sample site and is killed at the given visit of a step.</summary>
    public static void KilledAt(PublishBench bench, string step, int visit, bool exchange)
    {
        var (exitCode, output) = Run(bench, $"New|{step}|{visit}|{exchange}", limits: "");
        Assert.True(exitCode == Killed, $"not killed at `{step}`: {exitCode} {output}");
    }

    /// <summary>Publishes the large sample site under limits that bash sets.</summary>
    public static (PublishVerdict Verdict, string Output) Limited(PublishBench bench, string limits)
    {
        var (exitCode, output) = Run(bench, "Large||0|True", limits);
        return ((PublishVerdict)exitCode, output);
    }

    /// <summary>Publishes the old and the new sample site in turn until it is killed.</summary>
    public static Process StartInTurn(PublishBench bench) => Process.Start(Command(bench, "InTurn||0|True", limits: ""))!;

    private static (int ExitCode, string Output) Run(PublishBench bench, string request, string limits) =>
        Shell.Run(Command(bench, request, limits));

    private static ProcessStartInfo Command(PublishBench bench, string request, string limits)
    {
        var program = Path.ChangeExtension(Assembly.GetExecutingAssembly().Location, ".dll");
        var start = new ProcessStartInfo("bash", ["-c", $"{limits} exec dotnet exec '{program}'"]);
        start.Environment[Request] = $"{bench.Target}|{bench.Catalogue}|{request}";

        // The runtime keeps its own code in files of memory, which a limit on file sizes would hit first.
        start.Environment["DOTNET_EnableWriteXorExecute"] = "0";
        return start;
    }

    [ModuleInitializer]
    internal static void PublishIfAsked()
    {
        var request = Environment.GetEnvironmentVariable(Request)?.Split('|');
        if (request is not [var target, var catalogue, var site, var step, var visit, var exchange])
        {
            return;
        }

        while (site == "InTurn")
        {
            SitePublisher.Publish(target, SampleSites.New, catalogue, mayExchange: true, onStep: null, CancellationToken.None);
            SitePublisher.Publish(target, SampleSites.Old, catalogue, mayExchange: true, onStep: null, CancellationToken.None);
        }

        var visitsLeft = int.Parse(visit, CultureInfo.InvariantCulture);
        var result = SitePublisher.Publish(
            target,
            site == "Large" ? SampleSites.Large : SampleSites.New,
            catalogue,
            bool.Parse(exchange),
            here => DieIf(here == step && --visitsLeft == 0),
            CancellationToken.None);
        Console.WriteLine(result.Problem?.ToString());
        Environment.Exit((int)result.Verdict);
    }

    /// <summary>SIGKILL: nothing is unwound, nothing is disposed of, no handler runs.</summary>
    private static void DieIf(bool due)
    {
        if (due)
        {
            Process.GetCurrentProcess().Kill();
            Thread.Sleep(Timeout.Infinite);
        }
    }
}
