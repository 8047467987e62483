namespace Configurator.Core.Logic.Compiling;

/// <summary>What it costs to eliminate a variable; ties go to the lower number.</summary>
/// <param name="Fill">Links to be made among its neighbours; 0 where not yet known.</param>
internal readonly record struct EliminationCost(long Fill, int Degree, int Variable, bool IsKnown)
    : IComparable<EliminationCost>
{
    public int CompareTo(EliminationCost other) =>
        Fill != other.Fill ? Fill.CompareTo(other.Fill)
        : Degree != other.Degree ? Degree.CompareTo(other.Degree)
        : Variable.CompareTo(other.Variable);
}
