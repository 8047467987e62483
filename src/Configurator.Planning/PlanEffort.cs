namespace Configurator.Planning;

/// <summary>How long each stage may be worked on, in the solver's own units of work, which do not depend on the
/// machine. A unit is about a second on a usual machine.</summary>
/// <param name="PerStage">For every stage but one.</param>
/// <param name="Orders">For the stage that counts orders, in rounds that each make the count more exact.</param>
/// <param name="Round">For one such round.</param>
public sealed record PlanEffort(double PerStage, double Orders, double Round)
{
    public static PlanEffort Usual { get; } = new(8, 10, 1);
}
