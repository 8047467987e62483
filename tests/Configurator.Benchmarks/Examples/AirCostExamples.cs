using System.Text.Json;
using Configurator.Core.Engineering.Air;
using Configurator.Core.Model.Units;

namespace Configurator.Benchmarks.Examples;

/// <summary>What compressors and leaks cost.</summary>
internal static class AirCostExamples
{
    public static void Run(Given given, Answer answer)
    {
        var hours = given.Number(Kind.Plain, "hours", "h", "hours_year");
        var price = given.Number(Kind.Plain, "price", "usd_kwh", "price_kwh", "usd_per_kwh");
        if (hours is not { } running || price is not { } each)
        {
            return;
        }

        if (given.Number(Kind.Plain, "bhp", "hp") is { } horsepower)
        {
            answer.Add(Kind.Plain, AirCost.Compressor(horsepower, running, each, Share(given, "time", "time_share"), Share(given, "load", "load_share"), Share(given, "eta", "efficiency")), "usd", "cost", "total");
        }

        var perCfm = given.Number(Kind.Plain, "kw_per_cfm") ?? (given.Number(Kind.Plain, "kw_per_100cfm", "kw_per_100_cfm") / 100) ?? Rational.Of(0.18m);
        if (given.Element("leaks") is { ValueKind: JsonValueKind.Array } leaks)
        {
            var costs = leaks.EnumerateArray().Select(leak => leak.EnumerateArray().Select(Given.ValueOf).OfType<Rational>().ToList()).Select(leak =>
                AirCost.Leaks(leak[0], leak[1], leak.Count > 2 ? leak[2] : 1, perCfm, running, each)).ToList();
            answer.Add(Kind.Plain, costs, "usd", "costs", "cost");
            answer.Add(Kind.Plain, costs.Aggregate((Rational)0, (sum, cost) => sum + cost), "total", "usd_total", "sum");
        }
        else if (given.Number(Kind.Plain, "scfm", "cfm", "flow") is { } flow)
        {
            answer.Add(Kind.Plain, AirCost.Leaks(given.Number(Kind.Plain, "count", "n") ?? 1, flow, Share(given, "cd", "coefficient"), perCfm, running, each), "usd", "cost", "total");
        }
    }

    private static Rational Share(Given given, params string[] names) =>
        given.Number(Kind.Plain, names) ?? (given.Number(Kind.Percent, names) / 100) ?? 1;
}
