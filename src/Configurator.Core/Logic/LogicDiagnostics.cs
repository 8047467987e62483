using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;

namespace Configurator.Core.Logic;

internal static class LogicDiagnostics
{
    private static readonly Rule Requires = new("CFG3001", Severity.Error, "Something needed is missing");
    private static readonly Rule NotWith = new("CFG3002", Severity.Error, "Options that cannot be ordered together");
    private static readonly Rule ComesWith = new("CFG3003", Severity.Error, "What comes with an option is not offered");
    private static readonly Rule Choice = new("CFG3004", Severity.Error, "Choice not met");
    private static readonly Rule OfMachine = new("CFG3005", Severity.Error, "Rule of the machine broken");
    private static readonly Rule Quantity = new("CFG3006", Severity.Error, "Quantity not allowed");
    private static readonly Rule Limit = new("CFG3007", Severity.Error, "Limit of the machine exceeded");

    /// <summary>What is wrong with one order under document control: nothing else follows from it.</summary>
    public static ImmutableArray<Rule> OfOneOrder { get; } = [Requires, NotWith, Choice, OfMachine, Quantity, Limit];
    private static readonly Rule NotProved = new("CFG3015", Severity.Error, "Rules too many to prove");

    public static ImmutableArray<Rule> All { get; } =
    [Requires, NotWith, ComesWith, Choice, OfMachine, Quantity, Limit, NotProved, .. HealthDiagnostics.All];

    public static Diagnostic IsNotProved(Machine machine) =>
        new(NotProved, $"the rules of `{machine.Id.Value}` are too many or too entangled to be proved", machine.Id.Span)
        {
            Fix = new("offer fewer options on it, or make its choices, conditions and limits smaller"),
        };

    /// <summary>At the option that brings it along: no order with that option can be completed.</summary>
    public static Diagnostic NotOffered(Machine machine, Option option, OptionLink link) =>
        new(
            ComesWith,
            $"`{option.Id.Value}` comes with `{link.Other.Value}`, which is not offered on `{machine.Id.Value}`",
            link.Other.Span
        )
        {
            Fix = new($"add `{machine.Id.Value}` to `offered-on` of `{link.Other.Value}`, or take it off `comes-with`"),
        };

    /// <summary>At the option in the order that the rule concerns; where something is missing altogether, at the
    /// order's start.</summary>
    /// <param name="nearest">The order with the fewest changes that works; null where there is none.</param>
    public static Diagnostic Broken(PublishedConfiguration published, BrokenRule broken, Repair? nearest)
    {
        var places = published
            .Options.Where(option => broken.Concerned.Contains(option.Value))
            .Select(option => option.Span)
            .ToList();
        var because = broken.Because is { } reason ? $": {reason}" : "";
        return new(RuleOf(broken.Kind), broken.Statement, places.Count > 0 ? places[0] : published.Id.Span)
        {
            Notes =
            [
                .. places.Skip(1).Select(place => new Note("and this one", place)),
                new Note($"the rule stands here{because}", broken.Span),
            ],
            Fix = nearest is null ? null : new($"the nearest order that works: {ChangeText.Of(nearest)}"),
        };
    }

    private static Rule RuleOf(RuleKind kind) =>
        kind switch
        {
            RuleKind.Requires => Requires,
            RuleKind.NotWith => NotWith,
            RuleKind.ComesWith => ComesWith,
            RuleKind.Choice => Choice,
            RuleKind.MachineRule => OfMachine,
            RuleKind.Limit => Limit,
            _ => Quantity,
        };
}
