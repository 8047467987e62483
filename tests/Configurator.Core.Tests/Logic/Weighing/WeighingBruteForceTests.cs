using Configurator.Core.Logic;
using Configurator.Core.Logic.Compiling;
using Configurator.Core.Tests.Logic.Compiling;

namespace Configurator.Core.Tests.Logic.Weighing;

// Source of every expected answer: weighing all configurations one by one (WeighingAgreement).
public class WeighingBruteForceTests
{
    private const int Count = 800;

    [Fact]
    public void The_heaviest_and_the_lightest_configurations_are_found() =>
        Check(41, agreement => agreement.OnExtremes());

    [Fact]
    public void The_heaviest_and_the_lightest_configurations_are_found_by_search_alone() =>
        Check(42, Count / 2, agreement => agreement.OnExtremes(), new(1, 1, 1));

    [Fact]
    public void Several_limits_at_once_are_kept_and_the_heaviest_that_keeps_them_is_found() =>
        Check(43, agreement => agreement.OnLimits());

    [Fact]
    public void The_margin_of_an_option_is_the_heaviest_configuration_with_it_in_each_number() =>
        Check(44, agreement => agreement.OnMargins());

    [Fact]
    public void The_histogram_counts_the_configurations_of_each_weight() =>
        Check(45, agreement => agreement.OnHistogram());

    [Fact]
    public void Configurations_over_a_limit_are_counted_with_an_example() => Check(46, agreement => agreement.OnOver());

    [Fact]
    public void The_mean_is_exact() => Check(47, agreement => agreement.OnMean());

    [Fact]
    public void Configurations_in_which_a_condition_holds_are_counted() =>
        Check(48, agreement => agreement.OnConditions());

    private static void Check(uint stream, Action<WeighingAgreement> check) =>
        Check(stream, Count, check, CompileLimits.Usual);

    private static void Check(uint stream, int count, Action<WeighingAgreement> check, CompileLimits limits) =>
        Cases.Check(
            RandomSums.Of(10, 2048),
            stream,
            count,
            weighed => check(new(weighed, OrderLogic.Of(weighed.Machine, limits))),
            weighed => weighed.Words
        );
}
