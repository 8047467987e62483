namespace Configurator.Benchmarks.Examples;

/// <summary>There is no such value, as where a load collapses: not the same as not knowing it.</summary>
internal sealed record Missing
{
    public static Missing Value { get; } = new();

    public override string ToString() => "none";
}
