using System.Collections.Immutable;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>Binds the choices, rules and limits of a machine; they may name only options offered on it. A faulty one
/// is left out.</summary>
internal sealed class RuleBinder(
    MachineId machine,
    ImmutableSortedDictionary<OptionId, Option> offered,
    Names<Option> options,
    ICollection<Diagnostic> report
)
{
    public ImmutableArray<Choice> Choices(Fields f) =>
        Unique.By(
            "choice",
            f.Records("choices").Select(ReadChoice).OfType<Choice>(),
            choice => choice.Id.Select(id => id.Value),
            report
        );

    public ImmutableArray<MachineRule> Rules(Fields f) =>
        Unique.By(
            "rule",
            f.Records("rules").Select(ReadRule).OfType<MachineRule>(),
            rule => rule.Id.Select(id => id.Value),
            report
        );

    public ImmutableArray<CountLimit> Limits(Fields f) =>
        Unique.By("limit", f.Records("limits").Select(ReadLimit).OfType<CountLimit>(), limit => limit.Id, report);

    /// <summary>Shares of options offered, none above 100 percent; one that is not is reported and left out.</summary>
    public ImmutableArray<OrderShare> OrderMix(Fields f) =>
        [
            .. Unique
                .By(
                    "share of orders",
                    f.Records("order-mix").Select(ReadOrderShare).OfType<OrderShare>(),
                    share => share.Option.Select(id => id.Value),
                    report
                )
                .Where(share => IsOffered(share.Option.Select(id => id.Value))),
        ];

    /// <summary>The condition under that key; null where there is none, or it names what is not offered, which is
    /// reported.</summary>
    public Condition? OfferedCondition(Fields f, string key) =>
        f.Value<Condition>(key) is { } condition && AreOffered(Mentions(condition)) ? condition : null;

    private OrderShare? ReadOrderShare(Fields f)
    {
        if (f.One<string>("option") is not { } option || f.One<Quantity>("share") is not { } share)
        {
            return null;
        }

        if (share.Value.InBase > 100)
        {
            report.Add(BindingDiagnostics.ShareTooLarge(share));
            return null;
        }

        return new(option.Select(id => new OptionId(id)), share.Value);
    }

    private Choice? ReadChoice(Fields f)
    {
        var of = Unique.By("option of this choice", f.Many<string>("of"), option => option, report);
        var when = f.Value<Condition>("when");
        var isSound = f.AreSound("of", "when") & AreOffered(of) & AreOffered(Mentions(when));
        return
            isSound
            && f.One<string>("choice") is { } id
            && f.Value<Text>("title") is { } title
            && f.One<Take>("take") is { } take
            ? new(
                id.Select(text => new ChoiceId(text)),
                title,
                take.Value,
                [.. of.Select(option => option.Select(text => new OptionId(text)))]
            )
            {
                When = when,
                Because = f.Value<Text>("because"),
            }
            : null;
    }

    private MachineRule? ReadRule(Fields f)
    {
        var when = f.Value<Condition>("when");
        var need = f.Value<Condition>("need");
        var never = f.Value<Condition>("never");
        var isSound =
            f.AreSound("when", "need", "never")
            & AreOffered(Mentions(when).Concat(Mentions(need)).Concat(Mentions(never)));
        if (!isSound || f.One<string>("rule") is not { } id)
        {
            return null;
        }

        if (need is null == never is null)
        {
            report.Add(
                need is null
                    ? BindingDiagnostics.KeyMissingHere("need", "a rule has `need` or `never`", id.Span)
                    : BindingDiagnostics.BothGiven("need", "never", id.Span)
            );
            return null;
        }

        return new(
            id.Select(text => new RuleId(text)),
            when,
            need ?? new NoneOf([never!], never!.Span),
            f.Value<Text>("because")
        );
    }

    private CountLimit? ReadLimit(Fields f)
    {
        var shares = Unique.By(
            "share of this limit",
            f.Records("counts").Select(ReadShare).OfType<CountShare>(),
            share => share.Option.Select(id => id.Value),
            report
        );
        var isSound =
            f.AreSound("at-most", "counts") & AreOffered(shares.Select(share => share.Option.Select(id => id.Value)));
        return
            isSound
            && f.One<string>("limit") is { } id
            && f.Value<Text>("title") is { } title
            && f.One<int>("at-most") is { } most
            ? new(id, title, most.Value, shares, f.Value<Text>("because"))
            : null;
    }

    private static CountShare? ReadShare(Fields f) =>
        f.One<string>("option") is { } option ? new(option.Select(id => new OptionId(id)), f.Value("each", 1)) : null;

    private static IEnumerable<Located<string>> Mentions(Condition? condition) =>
        condition?.Mentions().Select(mention => new Located<string>(mention.Option.Value, mention.Span)) ?? [];

    /// <summary>All of them; each that is not is reported.</summary>
    private bool AreOffered(IEnumerable<Located<string>> named) =>
        named.Select(IsOffered).ToList().TrueForAll(isOffered => isOffered);

    private bool IsOffered(Located<string> option)
    {
        if (options.Find(option, report) is not { } found)
        {
            return false;
        }

        if (offered.ContainsKey(found.Id.Value))
        {
            return true;
        }

        if (found.IsWhole)
        {
            report.Add(BindingDiagnostics.OptionNotOffered(option, machine.Value));
        }

        return false;
    }
}
