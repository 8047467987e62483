using System.Collections.Immutable;
using Configurator.Core.Sources;

namespace Configurator.Core.Model;

/// <summary>What must hold of an order. A list of conditions means all of it.</summary>
public abstract record Condition(SourceSpan Span)
{
    /// <summary>Does it hold where each option is taken so many times (0 = not taken)?</summary>
    public abstract bool Holds(Func<OptionId, int> quantity);

    /// <summary>Every mention of an option, in reading order.</summary>
    public abstract IEnumerable<OptionCount> Mentions();
}

/// <summary>An option taken at least, and where given at most, so many times. The id alone means at least
/// once.</summary>
public sealed record OptionCount(OptionId Option, int AtLeast, int? AtMost, SourceSpan Span) : Condition(Span)
{
    public override bool Holds(Func<OptionId, int> quantity) =>
        quantity(Option) >= AtLeast && (AtMost is not { } most || quantity(Option) <= most);

    public override IEnumerable<OptionCount> Mentions() => [this];
}

public sealed record AllOf(ImmutableArray<Condition> Of, SourceSpan Span) : Condition(Span)
{
    public override bool Holds(Func<OptionId, int> quantity) => Of.All(condition => condition.Holds(quantity));

    public override IEnumerable<OptionCount> Mentions() => Of.SelectMany(condition => condition.Mentions());
}

public sealed record AnyOf(ImmutableArray<Condition> Of, SourceSpan Span) : Condition(Span)
{
    public override bool Holds(Func<OptionId, int> quantity) => Of.Any(condition => condition.Holds(quantity));

    public override IEnumerable<OptionCount> Mentions() => Of.SelectMany(condition => condition.Mentions());
}

public sealed record NoneOf(ImmutableArray<Condition> Of, SourceSpan Span) : Condition(Span)
{
    public override bool Holds(Func<OptionId, int> quantity) => !Of.Any(condition => condition.Holds(quantity));

    public override IEnumerable<OptionCount> Mentions() => Of.SelectMany(condition => condition.Mentions());
}
