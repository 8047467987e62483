using System.Diagnostics;
using System.Globalization;
using Configurator.Core.Logic.Compiling;
using Configurator.Core.Logic.Formulas;
using Configurator.Core.Logic.Rules;
using Configurator.Core.Logic.Weighing;

namespace Configurator.Benchmarks;

/// <summary>
/// The heaviest solution under random weights by one pass over the compiled diagram, with its witness, and by CP-SAT
/// with one worker; building the other solver's model is not counted. Both take turns on the same weights and must agree.
/// </summary>
internal static class OptimumCommand
{
    // The other solver did not end within an hour on 3000 options.
    private const int SyntheticOptions = 300;
    private const int Seed = 1;
    private const int Runs = 7;
    private const int PassesPerRun = 20;
    private const int WeightMax = 1_000_000;

    public static int Run(string file, TextWriter output)
    {
        var formula =
            file == PropagateCommand.SyntheticWord
                ? FormulaBuilder.Build(Synthetic.Catalogue(SyntheticOptions, Seed), groupChoices: true, []).Formula
                : Dimacs.Read(file);
        var start = Stopwatch.GetTimestamp();
        var diagram = DiagramCompiler.Compile(formula, CompileLimits.None)!;
        var compiled = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        ulong[] within = [.. diagram.Sizes.Select(Formula.DomainOf)];
        var times = Enumerable.Range(0, Runs).Select(run => Measure(formula, diagram, within, (ulong)run)).ToList();
        var pass = Median(times.Select(time => time.Pass));
        var other = Median(times.Select(time => time.Other));
        Print(output, $"compile milliseconds\t{compiled:0}");
        Print(output, $"pass milliseconds\t{pass:0.000}");
        Print(output, $"CP-SAT milliseconds\t{other:0.0}");
        Print(output, $"ratio\t{other / pass:0}");
        return 0;
    }

    private static (double Pass, double Other) Measure(Formula formula, Diagram diagram, ulong[] within, ulong seed)
    {
        var random = new RandomNumbers(seed);
        var weights = new ValueWeights(diagram.Sizes);
        for (var variable = 0; variable < diagram.Sizes.Length; variable++)
        {
            for (var value = 0; value < diagram.Sizes[variable]; value++)
            {
                weights.Add(new Literal(variable, 1UL << value), random.Below(WeightMax));
            }
        }

        var independent = new IndependentOptimum(formula, weights.Of);
        var passes = Enumerable
            .Range(0, PassesPerRun)
            .Select(_ => Time(() => Optimum.Heaviest(diagram, within, weights)?.Weight))
            .ToList();
        var other = Time(independent.Solve);
        return other.Weight == passes[0].Weight
            ? (Median(passes.Select(one => one.Milliseconds)), other.Milliseconds)
            : throw new InvalidDataException(
                FormattableString.Invariant($"the pass gives {passes[0].Weight}, CP-SAT {other.Weight}")
            );
    }

    private static (long? Weight, double Milliseconds) Time(Func<long?> solve)
    {
        var start = Stopwatch.GetTimestamp();
        var weight = solve();
        return (weight, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
    }

    private static double Median(IEnumerable<double> times)
    {
        var sorted = times.Order().ToList();
        return sorted[sorted.Count / 2];
    }

    private static void Print(TextWriter output, FormattableString line) =>
        output.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
