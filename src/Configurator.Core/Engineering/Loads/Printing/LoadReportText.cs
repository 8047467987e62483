using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using System.Text;
using Configurator.Core.Logic.Printing;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Loads.Printing;

/// <summary>Says all of one load: extremes, mean, margins of options, and how configurations spread.</summary>
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
        Line($"  mean   {Mean(load, report.Mean)} (of configurations, not of sales)");
        if (report.Mixed is { } mixed)
        {
            Line($"  mean   {Mean(load, mixed.Mean)} (by the declared order mix)");
        }

        Line($"\nmost that a configuration comes to without the option, and with it");
        foreach (
            var line in report.Margins is { } margins ? margins.Select(one => Margin(load, one)) : ["  not computed"]
        )
        {
            Line($"{line}");
        }

        Line($"\nconfigurations by load (shares of configurations, not of sales)");
        foreach (var line in report.Histogram is { } histogram ? Histogram(load, histogram) : ["  not computed"])
        {
            Line($"{line}");
        }

        if (report.Mixed is not null)
        {
            Line($"\nshares by load, by the declared order mix");
            foreach (var line in Shares(load, report.Mixed.Histogram))
            {
                Line($"{line}");
            }
        }

        return text.ToString();
    }

    private static string Mean(Load load, Rational? mean) =>
        mean is { } weight
            ? $"{(weight / load.SmallPerUnit).ToString(decimals: 2)} {load.Unit}".TrimEnd()
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
        var all = Sum(histogram);
        return Histograms
            .Of(histogram)
            .Select(range =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"  {Range(load, range)}: {OrderText.Number(range.Configurations)} ({Histograms.Share(range.Configurations, all)})"
                )
            );
    }

    private static IEnumerable<string> Shares(Load load, ImmutableArray<WeightClass>? histogram) =>
        histogram is not { } known ? ["  not computed"]
        : Sum(known) is { IsZero: false } all
            ? Histograms
                .Of(known)
                .Select(range => $"  {Range(load, range)}: {Histograms.Share(range.Configurations, all)}")
        : ["  none: the mix leaves no configuration"];

    private static BigInteger Sum(ImmutableArray<WeightClass> histogram) =>
        histogram.Aggregate(BigInteger.Zero, (sum, one) => sum + one.Configurations);

    private static string Range(Load load, WeightRange range) =>
        range.From == range.To ? load.Print(range.From) : $"{load.Print(range.From)} to {load.Print(range.To)}";
}
