using System.Collections.Immutable;

namespace Configurator.Core.Diagnostics;

/// <summary>What a stage could soundly make, and all it has to say. An error drops only what depends on it.</summary>
public sealed record Outcome<T>(T Value, ImmutableArray<Diagnostic> Diagnostics)
    where T : class
{
    public Outcome(T value)
        : this(value, []) { }

    /// <summary>Runs the next stage on what this one made and gathers what both say.</summary>
    public Outcome<TNext> Then<TNext>(Func<T, Outcome<TNext>> stage)
        where TNext : class
    {
        var next = stage(Value);
        return next with { Diagnostics = [.. Diagnostics, .. next.Diagnostics] };
    }

    public bool HasErrors => Diagnostics.Any(diagnostic => diagnostic.Rule.Severity == Severity.Error);
}
