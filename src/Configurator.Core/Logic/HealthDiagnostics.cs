using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Logic;

/// <summary>What is odd about rules, each with its proof as notes.</summary>
internal static class HealthDiagnostics
{
    private static readonly Rule Empty = new("CFG3010", Severity.Error, "No order works");
    private static readonly Rule Never = new("CFG3011", Severity.Error, "Option that can never be ordered");
    private static readonly Rule Always = new("CFG3012", Severity.Warning, "Option that is always included");
    private static readonly Rule Nothing = new("CFG3013", Severity.Warning, "Rule that adds nothing");
    private static readonly Rule OneWay = new("CFG3014", Severity.Warning, "Choice with a single way out");
    private static readonly Rule NotTried = new("CFG3016", Severity.Note, "More rules than are tried");

    public static ImmutableArray<Rule> All { get; } = [Empty, Never, Always, Nothing, OneWay, NotTried];

    public static IEnumerable<Diagnostic> Of(Machine machine, RuleHealth health)
    {
        if (health.IsEmpty)
        {
            return [IsEmpty(machine, health)];
        }

        // What follows from an option that can never be ordered, or always is, is no mistake of its own.
        var isPlain = health.NeverOrderable.IsEmpty && health.AlwaysIncluded.IsEmpty;
        return health
            .NeverOrderable.Select(proof => IsNever(machine, proof))
            .Concat(
                health
                    .AlwaysIncluded.Where(proof => health.SingleWayOut.All(choice => choice.Only != proof.Option))
                    .Select(proof => IsAlways(machine, proof))
            )
            .Concat(isPlain ? health.Redundant.Select(IsNothing) : [])
            .Concat(health.SingleWayOut.Select(IsOneWay))
            .Concat(health.Untried > 0 ? [AreNotTried(machine, health.Untried)] : []);
    }

    private static Diagnostic IsEmpty(Machine machine, RuleHealth health) =>
        new(Empty, $"no order of `{machine.Id.Value}` keeps all rules", machine.Id.Span)
        {
            Notes = Notes(health.WhyEmpty),
            Fix = new("loosen one of these rules"),
        };

    private static Diagnostic IsNever(Machine machine, OptionProof proof) =>
        new(Never, $"`{proof.Option}` can never be ordered on `{machine.Id.Value}`", SpanOf(machine, proof.Option))
        {
            Notes = Notes(proof.Because),
            Fix = new($"loosen one of these rules, or take `{machine.Id.Value}` off its `offered-on`"),
        };

    private static Diagnostic IsAlways(Machine machine, OptionProof proof) =>
        new(Always, $"`{proof.Option}` is always included on `{machine.Id.Value}`", SpanOf(machine, proof.Option))
        {
            Notes = Notes(proof.Because),
            Fix = new("make it part of the standard machine, or loosen one of these rules"),
        };

    private static Diagnostic IsNothing(RuleProof proof) =>
        new(Nothing, $"the other rules already say that {proof.Rule.Statement}", proof.Rule.Span)
        {
            Notes = Notes(proof.Because),
            Fix = new("remove the rule, or keep it by saying more in it"),
        };

    private static Diagnostic IsOneWay(ChoiceProof proof) =>
        new(OneWay, $"of `{proof.Choice.Id.Value}` only `{proof.Only}` can ever be taken", proof.Choice.Id.Span)
        {
            Fix = new("make it part of the standard machine, or loosen the rules on the others"),
        };

    private static Diagnostic AreNotTried(Machine machine, int rules) =>
        new(
            NotTried,
            FormattableString.Invariant(
                $"{rules} rules of `{machine.Id.Value}` were not tried on whether they add anything"
            ),
            machine.Id.Span
        )
        {
            Fix = new("join rules that say the same of several options, or ask for fewer"),
        };

    private static SourceSpan SpanOf(Machine machine, OptionId option) => machine.Options[option].Id.Span;

    private static ImmutableArray<Note> Notes(IEnumerable<OrderRule> rules) =>
        [
            .. rules.Select(rule => new Note(
                rule.Statement + (rule.Because is { } because ? $": {because}" : ""),
                rule.Span
            )),
        ];
}
