using System.Globalization;
using System.Numerics;
using System.Text;
using Configurator.Core.Model;

namespace Configurator.Core.Logic.Printing;

/// <summary>Says what can be said of an order: words for a salesperson, lines for the engineer.</summary>
public static class OrderText
{
    public static string Of(OrderLogic logic, OrderAnswer answer)
    {
        var text = new StringBuilder();
        var titles = new Titles(logic.Machine, Text.BaseLanguage);
        var named = answer.Order.Picks.IsEmpty
            ? "nothing chosen yet"
            : string.Join(" and ", answer.Order.Picks.Select(pick => Named(titles, pick.Key, pick.Value)));
        text.Append(CultureInfo.InvariantCulture, $"{logic.Machine.Title.In(Text.BaseLanguage)}, {named}:\n");
        if (answer.IsPossible)
        {
            Possible(text, titles, answer);
        }
        else
        {
            Impossible(text, titles, answer);
        }

        return text.ToString();
    }

    public static string Number(BigInteger? count) =>
        count is { } number ? Grouped(number) : "not computed, the rules are too entangled";

    private static void Possible(StringBuilder text, Titles titles, OrderAnswer answer)
    {
        text.Append(answer.Open.IsEmpty ? "this order works\n" : "this order works so far\n");
        text.Append(CultureInfo.InvariantCulture, $"\nconfigurations left: {Number(answer.Left)}\n");
        List(text, "always part of it", answer.Forced, titles);
        if (!answer.Open.IsEmpty)
        {
            text.Append("\nstill to be chosen\n");
            answer.Open.ToList().ForEach(open => text.Append(ChoiceLine(open, titles)));
        }

        List(text, "no longer possible", answer.RuledOut, titles);
        List(text, "free to add", answer.Free, titles);
    }

    private static void Impossible(StringBuilder text, Titles titles, OrderAnswer answer)
    {
        var explanation = answer.Explanation!;
        text.Append("this cannot be ordered\n\n");
        text.Append(explanation.Rules.IsEmpty ? "because\n" : "because these rules cannot hold together\n");
        foreach (var fault in explanation.Numbers)
        {
            text.Append(CultureInfo.InvariantCulture, $"  {Beyond(fault, titles)}\n");
        }

        foreach (var rule in explanation.Rules)
        {
            text.Append(CultureInfo.InvariantCulture, $"  {titles.In(rule.Statement)}\n");
            if (rule.Because is { } because)
            {
                text.Append(CultureInfo.InvariantCulture, $"    {because.In(titles.Language)}\n");
            }

            text.Append(CultureInfo.InvariantCulture, $"    {rule.Span}\n");
        }

        if (!explanation.Picks.IsEmpty && !explanation.Rules.IsEmpty)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"\nwith these of the order: {string.Join(", ", explanation.Picks.Select(titles.Of))}\n"
            );
        }

        Nearest(text, titles, answer);
    }

    private static string Beyond(NumberFault fault, Titles titles)
    {
        var allowed =
            fault.From < fault.To ? FormattableString.Invariant($"{fault.From} to {fault.To} times")
            : fault.From == 1 ? "once"
            : FormattableString.Invariant($"{fault.From} times");
        return FormattableString.Invariant(
            $"{titles.Of(fault.Option)} can be taken {allowed}; {fault.Ordered.From} are ordered"
        );
    }

    /// <summary>What each leaves to be chosen stands with it; what all of them leave alike stands once at the
    /// end.</summary>
    private static void Nearest(StringBuilder text, Titles titles, OrderAnswer answer)
    {
        text.Append(answer.Nearest.IsEmpty ? "\nno order near this one works\n" : "\nthe nearest orders that work\n");
        List<OpenChoice> always = answer.Nearest is [var first, _, ..]
            ? [.. first.Open.Where(open => answer.Nearest.All(repair => repair.Open.Any(open.IsLike)))]
            : [];
        foreach (var (repair, i) in answer.Nearest.Select((repair, i) => (repair, i)))
        {
            text.Append(CultureInfo.InvariantCulture, $"  {i + 1}. {ChangeText.Of(repair, titles.Of)}\n");
            foreach (var open in repair.Open.Where(open => !always.Exists(open.IsLike)))
            {
                text.Append(CultureInfo.InvariantCulture, $"     then still choose{ChoiceLine(open, titles)[1..]}");
            }
        }

        if (always.Count > 0)
        {
            text.Append("\nwith each of them still to be chosen\n");
            always.ForEach(open => text.Append(ChoiceLine(open, titles)));
        }
    }

    private static string ChoiceLine(OpenChoice open, Titles titles) =>
        $"  {titles.Of(open.Choice)}: {string.Join(", ", open.Members.Select(titles.Of))}\n";

    private static void List(StringBuilder text, string heading, IReadOnlyCollection<OptionId> options, Titles titles)
    {
        if (options.Count > 0)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n{heading}\n");
            foreach (var option in options)
            {
                text.Append(CultureInfo.InvariantCulture, $"  {titles.Of(option)} ({option})\n");
            }
        }
    }

    private static string Named(Titles titles, OptionId option, NumberRange range) =>
        range.From == range.To && range.From > 1
            ? FormattableString.Invariant($"{range.From} times {titles.Of(option)}")
            : titles.Of(option);

    /// <summary>Thin groups of three; beyond 24 digits the leading ones and the number of digits.</summary>
    private static string Grouped(BigInteger number)
    {
        const int DigitsShown = 24;
        var digits = number.ToString(CultureInfo.InvariantCulture);
        return digits.Length > DigitsShown
            ? FormattableString.Invariant(
                $"{digits[0]}.{digits[1..4]}... x 10^{digits.Length - 1} ({digits.Length} digits)"
            )
            : number.ToString("N0", new NumberFormatInfo { NumberGroupSeparator = " " });
    }
}
