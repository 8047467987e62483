using System.Diagnostics;
using System.Globalization;
using System.Numerics;
using Configurator.Core.Logic.Compiling;

namespace Configurator.Benchmarks;

/// <summary>Counts the solutions of a formula and prints <c>name TAB value</c> lines, whole integers.</summary>
internal static class CountCommand
{
    public static int Run(string path, TextWriter output)
    {
        var formula = Dimacs.Read(path);
        var watch = Stopwatch.StartNew();
        var diagram = DiagramCompiler.Compile(formula, CompileLimits.None)!;
        var count = Counting.Count(diagram);
        var (core, dead) = Reaching.CoreAndDead(diagram);
        Print(output, "count", count);
        Print(output, "core", core);
        Print(output, "dead", dead);
        Print(output, "nodes", diagram.NodeCount);
        Print(output, "edges", diagram.EdgeCount);
        Print(output, "milliseconds", watch.ElapsedMilliseconds);
        return 0;
    }

    private static void Print(TextWriter output, string name, BigInteger value) =>
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}\t{value}"));
}
