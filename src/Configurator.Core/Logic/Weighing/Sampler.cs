using System.Numerics;
using Configurator.Core.Logic.Compiling;

namespace Configurator.Core.Logic.Weighing;

/// <summary>Draws satisfying assignments at random, each as likely as its measure: down the diagram, every turn as
/// likely as what lies behind it.</summary>
internal sealed class Sampler
{
    private readonly Diagram _diagram;
    private readonly ulong[] _within;
    private readonly Measure _measure;
    private readonly BigInteger[] _counts;

    public Sampler(Diagram diagram, ulong[] within, Measure measure)
    {
        (_diagram, _within, _measure) = (diagram, within, measure);
        _counts = Measuring.PerNode(diagram, within, measure);
    }

    public bool IsEmpty => _diagram.IsEmpty || _counts[^1].IsZero;

    public int[] Next(RandomNumbers random)
    {
        var values = new int[_diagram.Sizes.Length];
        var open = new Stack<int>([_diagram.Root]);
        while (open.TryPop(out var node))
        {
            switch (_diagram.Kinds[node])
            {
                case NodeKind.Leaf:
                    values[_diagram.Variable[node]] = Value(node, random);
                    break;
                case NodeKind.All:
                    foreach (var child in _diagram.ChildrenOf(node))
                    {
                        open.Push(child);
                    }

                    break;
                default:
                    open.Push(Child(node, random));
                    break;
            }
        }

        return values;
    }

    private int Child(int node, RandomNumbers random)
    {
        var left = random.Below(_counts[node]);
        foreach (var child in _diagram.ChildrenOf(node))
        {
            if (left < _counts[child])
            {
                return child;
            }

            left -= _counts[child];
        }

        throw new InvalidOperationException("the children count less than their parent");
    }

    private int Value(int leaf, RandomNumbers random)
    {
        var variable = _diagram.Variable[leaf];
        var left = _counts[leaf].IsOne ? BigInteger.Zero : random.Below(_counts[leaf]);
        for (var values = _diagram.Values[leaf] & _within[variable]; values != 0; values &= values - 1)
        {
            var value = BitOperations.TrailingZeroCount(values);
            if (left < _measure.At(variable, value))
            {
                return value;
            }

            left -= _measure.At(variable, value);
        }

        throw new InvalidOperationException("the values count less than their leaf");
    }
}
