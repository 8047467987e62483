using System.Numerics;
using System.Runtime.InteropServices;
using Configurator.Core.Logic.Compiling;

namespace Configurator.Core.Logic.Weighing;

/// <summary>The exact distribution of a weight over all satisfying assignments, by convolution.</summary>
internal sealed class Distribution
{
    private readonly Diagram _diagram;
    private readonly Func<int, Spread> _leaf;
    private readonly DistributionLimits _limits;
    private readonly Spread?[] _spreads;
    private readonly int[] _lastUse;
    private long _products;

    private Distribution(Diagram diagram, Func<int, Spread> leaf, DistributionLimits limits)
    {
        (_diagram, _leaf, _limits) = (diagram, leaf, limits);
        _spreads = new Spread?[diagram.NodeCount];
        _lastUse = LastUses(diagram);
    }

    /// <summary>Null beyond the limits.</summary>
    public static Spread? Of(
        Diagram diagram,
        ulong[] within,
        ValueWeights weights,
        Measure measure,
        DistributionLimits limits
    )
    {
        if (diagram.IsEmpty)
        {
            return Spread.Nothing;
        }

        Spread Leaf(int leaf)
        {
            var variable = diagram.Variable[leaf];
            return OfValues(variable, diagram.Values[leaf] & within[variable], weights, measure);
        }

        return new Distribution(diagram, Leaf, limits).Root()?.Moved(weights.Fixed, BigInteger.One);
    }

    private static Spread OfValues(int variable, ulong values, ValueWeights weights, Measure measure)
    {
        var counts = new Dictionary<long, BigInteger>();
        for (; values != 0; values &= values - 1)
        {
            var value = BitOperations.TrailingZeroCount(values);
            if (measure.At(variable, value) is { IsZero: false } count)
            {
                CollectionsMarshal.GetValueRefOrAddDefault(counts, weights.Of(variable, value), out _) += count;
            }
        }

        return Spread.Of(counts);
    }

    private Spread? Root()
    {
        for (var node = 0; node < _spreads.Length; node++)
        {
            var spread = _diagram.Kinds[node] switch
            {
                NodeKind.Leaf => _leaf(node),
                NodeKind.All => Product(_diagram.ChildrenOf(node)),
                _ => Sum(_diagram.ChildrenOf(node)),
            };
            if (spread is null || spread.Weights.Length > _limits.Weights)
            {
                return null;
            }

            _spreads[node] = spread;
            Forget(node);
        }

        return _spreads[^1];
    }

    /// <summary>What no later node needs is let go.</summary>
    private void Forget(int node)
    {
        foreach (var child in _diagram.ChildrenOf(node))
        {
            if (_lastUse[child] == node)
            {
                _spreads[child] = null;
            }
        }
    }

    /// <summary>Those of a single weight only move the others; the rest are convolved, small ones first.</summary>
    private Spread? Product(ReadOnlySpan<int> children)
    {
        var (weight, count) = (0L, BigInteger.One);
        var wide = new List<Spread>();
        foreach (var child in children)
        {
            var spread = _spreads[child]!;
            if (spread.Weights.Length == 0)
            {
                return Spread.Nothing;
            }

            if (spread.IsPoint)
            {
                weight += spread.Weights[0];
                count *= spread.Counts[0];
            }
            else
            {
                wide.Add(spread);
            }
        }

        Spread? product = new([weight], [count]);
        foreach (var spread in wide.OrderBy(spread => spread.Weights.Length))
        {
            product = product is null ? null : Convolved(product, spread);
        }

        return product;
    }

    private Spread? Convolved(Spread left, Spread right)
    {
        if (left.IsPoint)
        {
            return right.Moved(left.Weights[0], left.Counts[0]);
        }

        _products += (long)left.Weights.Length * right.Weights.Length;
        if (_products > _limits.Products)
        {
            return null;
        }

        var counts = new Dictionary<long, BigInteger>(left.Weights.Length + right.Weights.Length);
        for (var i = 0; i < left.Weights.Length; i++)
        {
            for (var j = 0; j < right.Weights.Length; j++)
            {
                ref var count = ref CollectionsMarshal.GetValueRefOrAddDefault(
                    counts,
                    left.Weights[i] + right.Weights[j],
                    out _
                );
                count += left.Counts[i] * right.Counts[j];
            }
        }

        return counts.Count > _limits.Weights ? null : Spread.Of(counts);
    }

    private Spread Sum(ReadOnlySpan<int> children)
    {
        var counts = new Dictionary<long, BigInteger>();
        foreach (var child in children)
        {
            var spread = _spreads[child]!;
            _products += spread.Weights.Length;
            for (var i = 0; i < spread.Weights.Length; i++)
            {
                CollectionsMarshal.GetValueRefOrAddDefault(counts, spread.Weights[i], out _) += spread.Counts[i];
            }
        }

        return Spread.Of(counts);
    }

    private static int[] LastUses(Diagram diagram)
    {
        var last = new int[diagram.NodeCount];
        Array.Fill(last, -1);
        for (var node = diagram.LeafCount; node < diagram.NodeCount; node++)
        {
            foreach (var child in diagram.ChildrenOf(node))
            {
                last[child] = node;
            }
        }

        return last;
    }
}
