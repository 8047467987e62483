using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using System.Text;
using Configurator.Core.Logic.Printing;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Loads.Printing;

/// <summary>Says all of one load: heaviest, lightest, mean, margins of options, and how configurations spread.</summary>
public static class LoadReportText
{
    public static string Of(LoadReport report, BigInteger? configurations)
    {
        var (load, worst) = (report.Load, report.WorstCase);
        var text = new StringBuilder();
        void Line(FormattableString line) => text.Append(FormattableString.Invariant(line)).Append('\n');
        Line($"{load.Title.In(Text.BaseLanguage)} ({load.Id}) on {report.Machine.Title.In(Text.BaseLanguage)}");
        Line($"{LoadWords.Scope(configurations)}");
        Line($"  most   {LoadWords.Weight(load, worst.Heaviest)} with {LoadWords.Options(worst.Heaviest.Witness)}");
        Line($"  least  {LoadWords.Weight(load, worst.Lightest)} with {LoadWords.Options(worst.Lightest.Witness)}");
        Line($"  mean   {Mean(report)}");
        Line($"\nmost that a configuration comes to without the option, and with it");
        foreach (var line in report.Margins is { } margins ? margins.Select(one => Margin(load, one)) : ["  not computed"])
        {
            Line($"{line}");
        }

        Line($"\nconfigurations by load (shares of configurations, not of sales)");
        foreach (var line in report.Histogram is { } histogram ? Histogram(load, histogram) : ["  not computed"])
        {
            Line($"{line}");
        }

        return text.ToString();
    }

    private static string Mean(LoadReport report) =>
        report.Mean is { } mean
            ? $"{(mean / report.Load.SmallPerUnit).ToString(decimals: 2)} {report.Load.Unit}".TrimEnd()
                + " (of configurations, not of sales)"
            : "not computed";

    private static string Margin(Load load, OptionMargin margin)
    {
        var without = margin.Without is { } weight ? load.Print(weight) : "always included";
        var taken = margin.HeaviestAt.Where(number => number.Key > 0).ToList();
        var with = string.Join(
            ", ",
            taken.Select(number =>
                (number.Key == 1 && taken.Count == 1 ? "" : FormattableString.Invariant($"{number.Key} times "))
                + load.Print(number.Value)
            )
        );
        return $"  {margin.Option}: {without}; {(taken.Count == 0 ? "never taken" : with)}";
    }

    private static IEnumerable<string> Histogram(Load load, ImmutableArray<WeightClass> histogram)
    {
        var all = histogram.Aggregate(BigInteger.Zero, (sum, one) => sum + one.Configurations);
        return Histograms
            .Of(histogram)
            .Select(range =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"  {Range(load, range)}: {OrderText.Number(range.Configurations)} ({Histograms.Share(range.Configurations, all)})"
                )
            );
    }

    private static string Range(Load load, WeightRange range) =>
        range.From == range.To ? load.Print(range.From) : $"{load.Print(range.From)} to {load.Print(range.To)}";
}
