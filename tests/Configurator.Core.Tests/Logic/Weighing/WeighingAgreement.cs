using System.Collections.Immutable;
using System.Numerics;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Weighing;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Tests.Logic.Orders;

namespace Configurator.Core.Tests.Logic.Weighing;

/// <summary>Every answer about weights, held against weighing all configurations one by one.</summary>
internal sealed class WeighingAgreement
{
    private readonly WeighingCase _case;
    private readonly Weigher _weigher;
    private readonly Oracle _oracle;
    private readonly ImmutableArray<Way> _ways;

    public WeighingAgreement(WeighingCase weighed, OrderLogic logic)
    {
        _case = weighed;
        _weigher = Weigher.Of(logic, weighed.Sums.SelectMany(sum => sum.Terms).Select(term => term.When));
        _oracle = new(weighed.Machine);
        _ways = [.. _oracle.Within(weighed.Order)];
    }

    private WeightedSum First => _case.Sums[0];

    public void OnExtremes()
    {
        foreach (var sum in _case.Sums)
        {
            IsExtreme(sum, _weigher.Heaviest(sum, _case.Order), Weights(sum).Max(weight => (long?)weight));
            IsExtreme(sum, _weigher.Lightest(sum, _case.Order), Weights(sum).Min(weight => (long?)weight));
        }
    }

    /// <summary>All three limits at once; also the first two on the third sum.</summary>
    public void OnLimits()
    {
        OnLimits(First, 3);
        OnLimits(_case.Sums[2], 2);
    }

    public void OnMargins()
    {
        var margins = _weigher.Margins(First, _case.Order)!.Value;
        Assert.Equal(_ways.IsEmpty ? [] : _oracle.Options, margins.Select(margin => margin.Option));
        Assert.All(
            margins,
            margin =>
            {
                Assert.Equal(_oracle.NumbersIn(_ways, margin.Option), margin.HeaviestAt.Keys);
                Assert.All(
                    margin.HeaviestAt,
                    number =>
                        Assert.Equal(
                            _ways
                                .Where(way => _oracle.CountOf(way, margin.Option) == number.Key)
                                .Max(way => Weight(First, way)),
                            number.Value
                        )
                );
            }
        );
    }

    public void OnHistogram() =>
        Assert.Equal(
            Weights(First)
                .GroupBy(weight => weight)
                .OrderBy(group => group.Key)
                .Select(group => new WeightClass(group.Key, group.Count())),
            _weigher.Histogram(First, _case.Order)!.Value
        );

    public void OnOver()
    {
        var over = _weigher.Over(First, _case.Limits[0], _case.Order);
        var count = Weights(First).Count(weight => weight > over.Limit);
        Assert.Equal(count, over.Configurations);
        Assert.Equal(count == 0, over.Example is null);
        if (over.Example is { } example)
        {
            Assert.True(First.Of(example.Witness.QuantityOf) > over.Limit);
            IsAllowed(example.Witness);
        }
    }

    public void OnMean() =>
        Assert.Equal(
            _ways.IsEmpty
                ? null
                : new Rational(Weights(First).Aggregate(BigInteger.Zero, (sum, weight) => sum + weight), _ways.Length),
            _weigher.Mean(First, _case.Order)
        );

    public void OnConditions() =>
        Assert.All(
            _case.Sums.SelectMany(sum => sum.Terms).Select(term => term.When),
            condition =>
                Assert.Equal(
                    _ways.Count(way => condition.Holds(option => _oracle.CountOf(way, option))),
                    _weigher.Count(condition, _case.Order)
                )
        );

    private void OnLimits(WeightedSum sum, int count)
    {
        var limits = _case.Sums.Zip(_case.Limits, (limited, most) => new SumLimit(limited, most)).Take(count).ToList();
        var keeping = _ways
            .Where(way => limits.TrueForAll(limit => Weight(limit.Sum, way) <= limit.AtMost))
            .Select(way => (long?)Weight(sum, way))
            .ToList();
        var (heaviest, lightest) = (
            _weigher.Heaviest(sum, _case.Order, limits),
            _weigher.Lightest(sum, _case.Order, limits)
        );
        Assert.True(heaviest.IsSettled && lightest.IsSettled);
        IsExtreme(sum, heaviest.Found, keeping.Max());
        IsExtreme(sum, lightest.Found, keeping.Min());
        Assert.All(
            limits,
            limit => Assert.True(heaviest.Found is not { } found || Weight(limit.Sum, found.Witness) <= limit.AtMost)
        );
    }

    private void IsExtreme(WeightedSum sum, Extreme? found, long? expected)
    {
        Assert.Equal(expected, found?.Weight);
        if (found is not null)
        {
            Assert.True(found.IsProved);
            Assert.Equal(expected, Weight(sum, found.Witness));
            IsAllowed(found.Witness);
        }
    }

    private void IsAllowed(Configuration witness) =>
        Assert.Contains(
            _oracle.IndexOf([.. _oracle.Options.Select(witness.QuantityOf)]),
            _ways.Select(way => _oracle.IndexOf(way.Counts))
        );

    private IEnumerable<long> Weights(WeightedSum sum) => _ways.Select(way => Weight(sum, way));

    private long Weight(WeightedSum sum, Way way) => sum.Of(option => _oracle.CountOf(way, option));

    private static long Weight(WeightedSum sum, Configuration configuration) => sum.Of(configuration.QuantityOf);
}
