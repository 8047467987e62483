using Configurator.Core.Diagnostics;

namespace Configurator.Core.Review;

/// <summary>A sort of change: its name for ever, and how much it weighs.</summary>
/// <param name="Id">Lower-case words with hyphens; also names it in <c>--fail-on</c>.</param>
/// <param name="Title">Heading over changes of the sort.</param>
/// <param name="Meaning">Why a reviewer should care; a sentence without full stop.</param>
public sealed record ChangeKind(string Id, ReviewTopic Topic, Severity Level, string Title, string Meaning)
{
    /// <summary>The definitions' own diagnostics say the same.</summary>
    public bool IsDiagnosed { get; init; }

    /// <summary>What its values before and after are; empty where they are the thing itself.</summary>
    public string Compared { get; init; } = "";
}
