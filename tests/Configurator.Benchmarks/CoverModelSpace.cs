using System.Collections.Immutable;
using Configurator.Core.Logic.Covering;
using Configurator.Core.Logic.Searching;

namespace Configurator.Benchmarks;

/// <summary>Rows of a <see cref="CoverModel"/>. Clauses tell whether a changed row is allowed; a search completes rows
/// and proves which pairs there are.</summary>
internal sealed class CoverModelSpace : CoverSpace
{
    private readonly CoverModel _model;
    private readonly Solver _solver = new();
    private readonly PairSet _pairs;
    private readonly int[] _variable;
    private readonly int[][] _clausesOf;

    /// <summary>Parameters that some clause names; all others are free.</summary>
    private readonly ImmutableArray<int> _bound;

    public CoverModelSpace(CoverModel model)
    {
        (_model, _pairs) = (model, new(model.Sizes));
        var clausesOf = model.Sizes.Select(_ => new List<int>()).ToArray();
        for (var clause = 0; clause < model.Clauses.Length; clause++)
        {
            foreach (var parameter in model.Clauses[clause].Select(literal => _pairs.ParameterOf[literal.Value]).Distinct())
            {
                clausesOf[parameter].Add(clause);
            }
        }

        _clausesOf = [.. clausesOf.Select(clauses => clauses.ToArray())];
        _bound = [.. Enumerable.Range(0, model.Sizes.Length).Where(parameter => clausesOf[parameter].Count > 0)];
        _variable = new int[_pairs.ValueCount];
        AddToSolver();
    }

    public override ImmutableArray<int> Sizes => _model.Sizes;

    public override bool IsFree => _bound.IsEmpty;

    /// <summary>No row at all is allowed.</summary>
    public bool IsEmpty => !_solver.Solve();

    public override bool Allows(int[] row, int parameter, int other) =>
        AllHold(_clausesOf[parameter], row) && (other == parameter || AllHold(_clausesOf[other], row));

    public override int[] Complete(PairSet pairs, ReadOnlySpan<int> values, int[] near)
    {
        int[] row = [.. near];
        foreach (var value in values)
        {
            row[_pairs.ParameterOf[value]] = value;
        }

        var wanted = values.ToArray().Where(IsBound).Select(Literal).ToList();
        var kept = _bound.Select(parameter => Literal(row[parameter])).Except(wanted).ToList();
        while (!_solver.Solve([.. wanted, .. kept]))
        {
            var core = _solver.Core.ToHashSet();
            if (kept.RemoveAll(core.Contains) == 0)
            {
                throw new InvalidOperationException("the values stand in no allowed row");
            }
        }

        foreach (var parameter in _bound)
        {
            row[parameter] = ValueFound(parameter);
        }

        return row;
    }

    /// <summary>Free values stand with every possible one; the others are tried, and each row found shows many pairs at
    /// once.</summary>
    public override PairSet AllowedPairs()
    {
        var seen = new PairSet(Sizes);
        var isPossible = Enumerable.Range(0, seen.ValueCount).Select(value => !IsBound(value) || IsAllowed(value)).ToArray();
        for (var one = 0; one < seen.ValueCount; one++)
        {
            if (isPossible[one])
            {
                seen.Add(one, one);
            }

            for (var other = seen.First[seen.ParameterOf[one] + 1]; other < seen.ValueCount; other++)
            {
                if (isPossible[one] && isPossible[other] && !seen.Has(one, other))
                {
                    See(seen, one, other);
                }
            }
        }

        return seen;
    }

    private void See(PairSet seen, int one, int other)
    {
        if (!IsBound(one) || !IsBound(other))
        {
            seen.Add(one, other);
        }
        else if (IsAllowed(one, other))
        {
            int[] found = [.. _bound.Select(ValueFound)];
            seen.AddAll(found);
        }
    }

    private bool IsAllowed(params IEnumerable<int> values) => _solver.Solve([.. values.Select(Literal)]);

    private bool IsBound(int value) => _clausesOf[_pairs.ParameterOf[value]].Length > 0;

    private int Literal(int value) => RuleSearch.Positive(_variable[value]);

    private int ValueFound(int parameter) =>
        Enumerable
            .Range(_pairs.First[parameter], Sizes[parameter])
            .First(value => _solver.IsTrue(_variable[value]));

    private bool AllHold(int[] clauses, int[] row)
    {
        foreach (var clause in clauses)
        {
            var holds = false;
            foreach (var literal in _model.Clauses[clause])
            {
                holds |= row[_pairs.ParameterOf[literal.Value]] == literal.Value == literal.IsTaken;
            }

            if (!holds)
            {
                return false;
            }
        }

        return true;
    }

    private void AddToSolver()
    {
        foreach (var parameter in _bound)
        {
            var values = Enumerable.Range(_pairs.First[parameter], Sizes[parameter]).ToList();
            values.ForEach(value => _variable[value] = _solver.NewVariable());
            _solver.Add([.. values.Select(Literal)]);
            for (var i = 0; i < values.Count; i++)
            {
                for (var j = i + 1; j < values.Count; j++)
                {
                    _solver.Add(Literal(values[i]) ^ 1, Literal(values[j]) ^ 1);
                }
            }
        }

        foreach (var clause in _model.Clauses)
        {
            _solver.Add([.. clause.Select(literal => Literal(literal.Value) ^ (literal.IsTaken ? 0 : 1))]);
        }
    }
}
