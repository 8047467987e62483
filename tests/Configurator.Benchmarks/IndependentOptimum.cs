using Configurator.Core.Logic.Formulas;
using Google.OrTools.Sat;

namespace Configurator.Benchmarks;

/// <summary>The weight of the heaviest solution of a formula by another solver, CP-SAT of OR-Tools.</summary>
internal sealed class IndependentOptimum
{
    private readonly CpModel _model = new();
    private readonly ILiteral[][] _isValue;

    /// <param name="weight">Of a variable and its value.</param>
    public IndependentOptimum(Formula formula, Func<int, int, long> weight)
    {
        _isValue = [.. formula.Sizes.Select(Values)];
        foreach (var clause in formula.Clauses)
        {
            _model.AddBoolOr(clause.Literals.SelectMany(LiteralsOf));
        }

        _model.Maximize(
            LinearExpr.Sum(
                _isValue.SelectMany(
                    (values, variable) => values.Select((literal, value) => weight(variable, value) * (LinearExpr)literal.AsExpr())
                )
            )
        );
    }

    /// <summary>Null where there is no solution.</summary>
    /// <exception cref="InvalidOperationException">The solver gave up.</exception>
    public long? Solve()
    {
        var solver = new CpSolver { StringParameters = "num_workers:1 random_seed:1" };
        return solver.Solve(_model) switch
        {
            CpSolverStatus.Optimal => checked((long)Math.Round(solver.ObjectiveValue)),
            CpSolverStatus.Infeasible => null,
            var status => throw new InvalidOperationException($"CP-SAT ends with {status}"),
        };
    }

    private ILiteral[] Values(int size)
    {
        if (size == 2)
        {
            var isTrue = _model.NewBoolVar("");
            return [isTrue.Not(), isTrue];
        }

        ILiteral[] values = [.. Enumerable.Range(0, size).Select(_ => (ILiteral)_model.NewBoolVar(""))];
        _model.AddExactlyOne(values);
        return values;
    }

    private IEnumerable<ILiteral> LiteralsOf(Literal literal) =>
        _isValue[literal.Variable].Where((_, value) => (literal.Values >> value & 1) == 1);
}
