using System.Diagnostics;
using System.Globalization;
using Configurator.Core.Logic.Compiling;
using Configurator.Core.Logic.Formulas;

namespace Configurator.Benchmarks;

/// <summary>
/// Compares one propagation with the least that any could cost: reading the arrays of the diagram once from end to end.
/// The two take turns, so that whatever else the machine does falls on both.
/// </summary>
internal static class PropagateCommand
{
    public const string SyntheticWord = "synthetic";

    private const int SyntheticOptions = 3000;
    private const int Seed = 1;
    private const int Runs = 400;

    /// <summary>The runtime compiles hot code anew after a while.</summary>
    private static readonly TimeSpan WarmUp = TimeSpan.FromSeconds(1);

    public static int Run(string file, TextWriter output)
    {
        var diagram =
            file == SyntheticWord
                ? CurveCommand.Compile(Synthetic.Catalogue(SyntheticOptions, Seed))
                : DiagramCompiler.Compile(Dimacs.Read(file), CompileLimits.None)!;
        ulong[] within = [.. diagram.Sizes.Select(Formula.DomainOf)];
        var (reads, propagations) = (new List<double>(), new List<double>());
        var start = Stopwatch.GetTimestamp();
        while (reads.Count < Runs)
        {
            var read = Time(() => Read(diagram));
            var propagation = Time(() => (ulong)Reaching.Possible(diagram, within).Length);
            if (Stopwatch.GetElapsedTime(start) > WarmUp)
            {
                reads.Add(read);
                propagations.Add(propagation);
            }
        }

        var (readMedian, propagationMedian) = (Median(reads), Median(propagations));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"nodes\t{diagram.NodeCount}"));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"edges\t{diagram.EdgeCount}"));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"read microseconds\t{readMedian:0.0}"));
        output.WriteLine(
            string.Create(CultureInfo.InvariantCulture, $"propagate microseconds\t{propagationMedian:0.0}")
        );
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"ratio\t{propagationMedian / readMedian:0.00}"));
        return 0;
    }

    private static ulong Read(Diagram diagram)
    {
        unchecked
        {
            var sum = 0UL;
            foreach (var child in diagram.Children)
            {
                sum += (uint)child;
            }

            foreach (var kind in diagram.Kinds)
            {
                sum += (byte)kind;
            }

            foreach (var values in diagram.Values)
            {
                sum += values;
            }

            return sum;
        }
    }

    private static double Time(Func<ulong> action)
    {
        var start = Stopwatch.GetTimestamp();
        action();
        return Stopwatch.GetElapsedTime(start).TotalMicroseconds;
    }

    private static double Median(List<double> times) => times.Order().ElementAt(times.Count / 2);
}
