using System.Globalization;
using System.Text;
using Configurator.Core.Model;

namespace Configurator.Core.Logic.Printing;

/// <summary>Says what is proved of a machine's rules.</summary>
public static class ProofText
{
    public static string Of(MachineProof proof)
    {
        var machine = proof.Logic.Machine;
        var titles = new Titles(machine, Text.BaseLanguage);
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{machine.Title.In(Text.BaseLanguage)} ({machine.Id.Value})\n");
        text.Append(
            CultureInfo.InvariantCulture,
            $"  options {machine.Options.Count}, rules {proof.Logic.Rules.Length}\n"
        );
        text.Append(
            CultureInfo.InvariantCulture,
            $"  configurations: {OrderText.Number(proof.Logic.Count(PartialOrder.Empty))}\n"
        );
        foreach (
            var line in Health(proof.Health, titles)
                .DefaultIfEmpty("rules in good health: every option can be ordered, none is forced, no rule is idle")
        )
        {
            text.Append(CultureInfo.InvariantCulture, $"  {line}\n");
        }

        return text.ToString();
    }

    private static IEnumerable<string> Health(RuleHealth health, Titles titles)
    {
        if (health.IsEmpty)
        {
            yield return $"no order works: {Because(health.WhyEmpty, titles)}";
        }

        foreach (var proof in health.NeverOrderable)
        {
            yield return $"can never be ordered: {titles.Of(proof.Option)}, for {Because(proof.Because, titles)}";
        }

        foreach (var proof in health.AlwaysIncluded)
        {
            yield return $"always included: {titles.Of(proof.Option)}, for {Because(proof.Because, titles)}";
        }

        foreach (var proof in health.Redundant)
        {
            yield return $"adds nothing: {titles.In(proof.Rule.Statement)} at {proof.Rule.Span}, for {Because(proof.Because, titles)}";
        }

        foreach (var proof in health.SingleWayOut)
        {
            yield return $"single way out of {titles.Of(proof.Choice)}: {titles.Of(proof.Only)}";
        }
    }

    private static string Because(IEnumerable<OrderRule> rules, Titles titles) =>
        string.Join(
            "; ",
            rules.Select(rule => $"{titles.In(rule.Statement)} ({rule.Span})").DefaultIfEmpty("its own numbers")
        );
}
