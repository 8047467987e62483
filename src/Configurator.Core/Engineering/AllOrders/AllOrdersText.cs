using System.Globalization;
using System.Text;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.AllOrders;

/// <summary>What holds for every order, in words: of each rule the result that comes closest to its limit.</summary>
public static class AllOrdersText
{
    public static string Of(AllOrdersReport report)
    {
        var text = new StringBuilder();
        text.Append(report.Machine.Id.Value.Value)
            .Append(report.Holds ? ": holds for every configuration\n" : ": does not hold for every configuration\n");
        foreach (var closest in Closest(report))
        {
            var finding = closest.Finding;
            text.Append(
                CultureInfo.InvariantCulture,
                $"  {finding.Rule.Title}: {finding.Statement}{(finding.Limit is { } limit ? $", limit {limit}" : "")}\n"
            );
        }

        foreach (var (master, share) in report.Extensions)
        {
            text.Append(CultureInfo.InvariantCulture, $"  extension `{master}` is fitted in {InWords(share)}\n");
        }

        return text.ToString();
    }

    /// <summary>For each rule the finding with the least margin.</summary>
    public static IEnumerable<WorstFinding> Closest(AllOrdersReport report) =>
        report
            .Findings.Where(worst => worst.Finding.Margin is not null || worst.Finding.IsObstacle)
            .GroupBy(worst => worst.Finding.Rule)
            .Select(group =>
                group
                    .OrderBy(worst => worst.Finding.Verdict == Verdict.Pass)
                    .ThenBy(worst => worst.Finding.Margin?.Value ?? 0)
                    .First()
            );

    private static string InWords(OrderShare share) =>
        share.ByMix is { } byMix
            ? $"{Percent(byMix)} of orders by the declared mix, in {Percent(share)} of configurations"
            : $"{Percent(share)} of configurations, not of sales";

    /// <summary>To a tenth of a percent; null where no mix is declared.</summary>
    public static string? PercentByMix(OrderShare share) => share.ByMix is { } byMix ? Percent(byMix) : null;

    private static string Percent(Rational share) => $"{(share * 100).ToString(decimals: 1)} %";

    /// <summary>To a tenth of a percent; a dash where configurations are not counted.</summary>
    public static string Percent(OrderShare share) =>
        share is { Configurations: { } count, Total: { IsZero: false } total }
            ? Percent(new Rational(count, total))
            : "–";
}
