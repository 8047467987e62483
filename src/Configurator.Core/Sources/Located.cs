namespace Configurator.Core.Sources;

/// <summary>A value and the place in the definitions where somebody wrote it.</summary>
public readonly record struct Located<T>(T Value, SourceSpan Span)
{
    public Located<TOut> Select<TOut>(Func<T, TOut> map) => new(map(Value), Span);

    public override string ToString() => Value?.ToString() ?? "";
}
