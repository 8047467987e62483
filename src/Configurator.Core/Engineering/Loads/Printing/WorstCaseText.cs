using System.Globalization;
using System.Text;
using Configurator.Core.Logic.Covering;
using Configurator.Core.Logic.Printing;
using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Loads.Printing;

/// <summary>The worst cases of a machine in short, and how many configurations cover all pairs.</summary>
public static class WorstCaseText
{
    public static string Of(WorstCases cases, CoveringSet? covering)
    {
        var text = new StringBuilder();
        if (!cases.Loads.IsEmpty)
        {
            text.Append(CultureInfo.InvariantCulture, $"  loads, {LoadWords.Scope(cases.Configurations)}:\n");
        }

        foreach (var worst in cases.Loads)
        {
            var (least, most) = (
                LoadWords.Weight(worst.Load, worst.Lightest),
                LoadWords.Weight(worst.Load, worst.Heaviest)
            );
            text.Append(
                CultureInfo.InvariantCulture,
                $"    {worst.Load.Title.In(Text.BaseLanguage)} ({worst.Load.Id}): {least} to {most}\n"
            );
            text.Append(CultureInfo.InvariantCulture, $"      most with {LoadWords.Options(worst.Heaviest.Witness)}\n");
            text.Append(
                CultureInfo.InvariantCulture,
                $"      least with {LoadWords.Options(worst.Lightest.Witness)}\n"
            );
        }

        text.Append(CultureInfo.InvariantCulture, $"  {Pairs(covering)}\n");
        return text.ToString();
    }

    private static string Pairs(CoveringSet? covering) =>
        covering is null
            ? "pairs of options: not computed, the rules are too entangled"
            : string.Create(
                CultureInfo.InvariantCulture,
                $"pairs of options: {covering.Configurations.Length} configurations have all {OrderText.Number(covering.Pairs)} that the rules allow (no fewer than {covering.AtLeast} can)"
            );
}
