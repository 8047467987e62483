using Configurator.Core.Sources;

namespace Configurator.Core.Review;

/// <summary>A place in the definitions of one side.</summary>
/// <param name="IsBefore">It stands in the definitions before the change.</param>
public readonly record struct ReviewPlace(SourceSpan Span, bool IsBefore)
{
    public static ReviewPlace Before(SourceSpan span) => new(span, IsBefore: true);

    public static ReviewPlace After(SourceSpan span) => new(span, IsBefore: false);

    /// <summary>False for what nobody wrote down.</summary>
    public bool IsKnown => !string.IsNullOrEmpty(Span.Path);
}
