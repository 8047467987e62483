using System.Collections.Immutable;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Review;

/// <summary>One thing that a change of definitions does.</summary>
/// <param name="Subject">What it happens to, names in backticks.</param>
/// <param name="Places">Where it may come from, likeliest first.</param>
public sealed record Change(ChangeKind Kind, string Subject, ImmutableArray<ReviewPlace> Places)
{
    private const int ConfigurationsNamed = 3;

    public Severity Level { get; init; } = Kind.Level;

    /// <summary>Null where it concerns no machine in particular.</summary>
    public MachineId? Machine { get; init; }

    /// <summary>As it was; empty where it was not there.</summary>
    public string Before { get; init; } = "";

    /// <summary>As it is now; empty where it is no longer there.</summary>
    public string After { get; init; } = "";

    /// <summary>What else is to be said: lower case, no full stop, names in backticks.</summary>
    public string Remark { get; init; } = "";

    /// <summary>Examples, reasons, repairs: a line each.</summary>
    public ImmutableArray<string> Details { get; init; } = [];

    /// <summary>Published configurations that it concerns, by id.</summary>
    public ImmutableArray<string> Configurations { get; init; } = [];

    /// <summary>All that are published of some machines, in words; empty where it is not just that.</summary>
    public string Scope { get; init; } = "";

    /// <summary>Pages of the site that show it, by path from the site's root.</summary>
    public ImmutableArray<string> PagesBefore { get; init; } = [];

    public ImmutableArray<string> PagesAfter { get; init; } = [];

    /// <summary>How much it weighs among changes of its kind; larger comes first.</summary>
    public double Weight { get; init; }

    /// <summary>The line after the change where a reviewer looks for its cause; null where there is none.</summary>
    public SourceSpan? Line { get; init; }

    /// <summary>The configurations in words; empty where it concerns none.</summary>
    public string Where =>
        Configurations.Length == 0 ? ""
        : Scope.Length > 0 ? Scope
        : Configurations.Length <= ConfigurationsNamed + 1 ? string.Join(", ", Configurations.Select(Named))
        : FormattableString.Invariant(
            $"{string.Join(", ", Configurations.Take(ConfigurationsNamed).Select(Named))} and {Configurations.Length - ConfigurationsNamed} more"
        );

    /// <summary>All of it in one sentence, for an annotation.</summary>
    public string Sentence => string.Concat(Parts());

    private static string Named(string id) => $"`{id}`";

    private IEnumerable<string> Parts()
    {
        yield return Machine is { } machine && Subject != $"`{machine}`" ? $"{Subject} on `{machine}`" : Subject;
        yield return (Before.Length > 0, After.Length > 0) switch
        {
            (true, true) => $": {Before} → {After}",
            (true, false) => $": was {Before}",
            (false, true) => $": {After}",
            _ => "",
        };
        yield return Remark.Length == 0 ? ""
        : Before.Length + After.Length > 0 ? $"; {Remark}"
        : $": {Remark}";
        yield return Configurations.Length > 0 ? $" (in {Where})" : "";
    }
}
