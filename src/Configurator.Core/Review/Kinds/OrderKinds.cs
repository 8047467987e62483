using System.Collections.Immutable;
using Configurator.Core.Diagnostics;

namespace Configurator.Core.Review.Kinds;

/// <summary>What can be ordered.</summary>
public static class OrderKinds
{
    public static readonly ChangeKind OrdersLost = new(
        "orders-lost",
        ReviewTopic.Orders,
        Severity.Warning,
        "Configurations lost",
        "What sales could quote cannot be ordered any more"
    );

    public static readonly ChangeKind OrdersWon = new(
        "orders-won",
        ReviewTopic.Orders,
        Severity.Note,
        "Configurations won",
        "Sales can quote what could not be ordered"
    );

    public static readonly ChangeKind RuleAdded = new(
        "rule-added",
        ReviewTopic.Orders,
        Severity.Note,
        "New rules",
        "What each rules out by itself of all that could be ordered before"
    );

    public static readonly ChangeKind RuleRemoved = new(
        "rule-removed",
        ReviewTopic.Orders,
        Severity.Note,
        "Rules that are gone",
        "What each, by itself, ruled out of all that can be ordered now"
    );

    public static readonly ChangeKind MachineRemoved = new(
        "machine-removed",
        ReviewTopic.Orders,
        Severity.Warning,
        "Machines removed",
        "Nothing of it can be ordered any more"
    );

    public static readonly ChangeKind MachineAdded = new(
        "machine-added",
        ReviewTopic.Orders,
        Severity.Note,
        "New machines",
        "There is nothing to compare it with"
    );

    public static readonly ChangeKind OptionRemoved = new(
        "option-removed",
        ReviewTopic.Orders,
        Severity.Warning,
        "Options no longer offered",
        "Nobody can order it any more"
    );

    public static readonly ChangeKind OptionAdded = new(
        "option-added",
        ReviewTopic.Orders,
        Severity.Note,
        "Options newly offered",
        "Sales can order it"
    );

    public static ImmutableArray<ChangeKind> All { get; } =
    [OrdersLost, OrdersWon, RuleAdded, RuleRemoved, MachineRemoved, MachineAdded, OptionRemoved, OptionAdded];
}
