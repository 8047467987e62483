using System.Globalization;
using System.Numerics;
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
            text.Append(
                CultureInfo.InvariantCulture,
                $"  extension `{master}` is fitted in {Percent(share)} of configurations\n"
            );
        }

        return text.ToString();
    }

    /// <summary>For each rule the finding with the least margin.</summary>
    public static IEnumerable<WorstFinding> Closest(AllOrdersReport report) =>
        report
            .Findings.Where(worst => worst.Finding.Margin is not null || worst.Finding.Verdict == Verdict.Fail)
            .GroupBy(worst => worst.Finding.Rule)
            .Select(group =>
                group
                    .OrderBy(worst => worst.Finding.Verdict == Verdict.Pass)
                    .ThenBy(worst => worst.Finding.Margin?.Value ?? 0)
                    .First()
            );

    /// <summary>To a tenth of a percent; a dash where configurations are not counted.</summary>
    public static string Percent(OrderShare share) =>
        share is { Configurations: { } count, Total: { IsZero: false } total }
            ? $"{new Rational(BigInteger.Multiply(count, 100), total).ToString(decimals: 1)} %"
            : "–";
}
