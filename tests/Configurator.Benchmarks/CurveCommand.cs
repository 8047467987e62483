using System.Diagnostics;
using System.Globalization;
using Configurator.Core.Logic.Compiling;
using Configurator.Core.Logic.Formulas;
using Configurator.Core.Logic.Rules;

namespace Configurator.Benchmarks;

/// <summary>How compiling and propagating grow with the number of options.</summary>
internal static class CurveCommand
{
    private const int Seed = 1;
    private const int CompileRuns = 15;
    private const int PropagateRuns = 2000;

    // The largest one runs once beforehand, so that no code is cold.
    private static readonly int[] Sizes = [300, 600, 1200, 3000];

    public static int Run(TextWriter output)
    {
        output.WriteLine("options\tcompile ms\tnodes\tedges\tpropagate ms");
        Measure(Sizes[^1]);
        foreach (var options in Sizes)
        {
            var (compile, diagram, propagate) = Measure(options);
            output.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{options}\t{compile:0.0}\t{diagram.NodeCount}\t{diagram.EdgeCount}\t{propagate:0.000}"
                )
            );
        }

        return 0;
    }

    /// <summary>From rules to a diagram, and one propagation; the best of some runs in milliseconds.</summary>
    private static (double Compile, Diagram Diagram, double Propagate) Measure(int options)
    {
        var model = Synthetic.Catalogue(options, Seed);
        var diagram = Compile(model);
        ulong[] within = [.. diagram.Sizes.Select(Formula.DomainOf)];
        return (
            Best(CompileRuns, () => Compile(model)),
            diagram,
            Best(PropagateRuns, () => Reaching.Possible(diagram, within))
        );
    }

    public static Diagram Compile(RuleModel model) =>
        DiagramCompiler.Compile(FormulaBuilder.Build(model, groupChoices: true, []).Formula, CompileLimits.None)!;

    private static double Best(int runs, Action action) =>
        Enumerable
            .Range(0, runs)
            .Min(_ =>
            {
                var start = Stopwatch.GetTimestamp();
                action();
                return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
            });
}
