using System.Numerics;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Compiling;
using Configurator.Core.Model;
using Configurator.Core.Tests.Logic.Compiling;
using CsCheck;

namespace Configurator.Core.Tests.Logic.Orders;

// Laws need no second algorithm, so the machines may have more options than anybody could try out.
public class LawTests
{
    private const int Options = 32;
    private const long Ways = 1L << 44;
    private const int Machines = 200;

    // Law: what keeps all rules and one more keeps all rules.
    [Fact]
    public void Adding_a_rule_never_raises_the_number_of_configurations() =>
        Cases.Check(
            from machine in RandomMachines.Of(Options, Ways)
            from need in RandomConditions.Of(Gen.OneOf(machine.Options.Keys.ToArray()))
            select (Machine: machine, Rule: Orders.Machines.Rule("added", need)),
            31,
            Machines,
            both =>
            {
                var more = both.Machine with { Rules = both.Machine.Rules.Add(both.Rule) };
                Assert.True(Count(more, PartialOrder.Empty) <= Count(both.Machine, PartialOrder.Empty));
            },
            both => Orders.Machines.Words(both.Machine)
        );

    // Law: a name means nothing, and no list has an order that matters.
    [Fact]
    public void Renaming_options_and_shuffling_definitions_changes_no_answer() =>
        Check(
            32,
            Machines,
            (machine, order) =>
            {
                var renaming = new Renaming(machine);
                var (one, other) = (OrderLogic.Of(machine), OrderLogic.Of(renaming.Renamed));
                var renamed = renaming.Of(order);
                Assert.Equal(one.Count(order), other.Count(renamed));
                var states = other.States(renamed);
                Assert.All(
                    one.States(order),
                    option => Assert.Equal(option.Value.Possible, states[renaming.Of(option.Key)].Possible)
                );
                Assert.Equal(Size(one.Explain(order)), Size(other.Explain(renamed)));
                Assert.Equal(
                    one.Nearest(order, isComplete: false).Select(repair => repair.Changes.Length),
                    other.Nearest(renamed, isComplete: false).Select(repair => repair.Changes.Length)
                );
            }
        );

    // Law: an option is in every configuration left, in none, or in some but not all.
    [Fact]
    public void Forced_free_and_ruled_out_share_out_the_options() =>
        Check(
            33,
            Machines,
            (machine, order) =>
            {
                var logic = OrderLogic.Of(machine);
                if (logic.IsPossible(order))
                {
                    Assert.All(
                        logic.States(order).Values,
                        state => Assert.Single(new[] { state.IsForced, state.IsFree, state.IsRuledOut }, isSo => isSo)
                    );
                }
            }
        );

    // Law: no dead ends. What is shown as possible can be chosen next, and an order that works remains.
    [Fact]
    public void Every_number_shown_of_every_option_can_be_completed() =>
        Check(
            34,
            Machines / 2,
            (machine, order) =>
            {
                var logic = OrderLogic.Of(machine);
                Assert.All(
                    logic.States(order),
                    option =>
                        Assert.All(
                            option.Value.Possible,
                            number => Assert.True(logic.IsPossible(Narrowed(order, option.Key, number)))
                        )
                );
            }
        );

    // Law: each configuration takes an option in exactly one number.
    [Fact]
    public void The_counts_under_each_number_of_an_option_sum_to_the_whole() =>
        Check(
            35,
            Machines / 2,
            (machine, order) =>
            {
                var logic = OrderLogic.Of(machine);
                Assert.All(
                    logic.States(order),
                    option =>
                        Assert.Equal(
                            logic.Count(order),
                            option.Value.Possible.Aggregate(
                                BigInteger.Zero,
                                (sum, number) => sum + logic.Count(Narrowed(order, option.Key, number))!.Value
                            )
                        )
                );
            }
        );

    // Law: two ways to answer give one answer.
    [Fact]
    public void Diagram_and_search_leave_the_same_of_every_option() =>
        Check(
            36,
            Machines,
            (machine, order) =>
            {
                var searched = OrderLogic.Of(machine, new CompileLimits(1, 1, 1)).States(order);
                Assert.All(
                    OrderLogic.Of(machine).States(order),
                    option => Assert.Equal(option.Value.Possible, searched[option.Key].Possible)
                );
            }
        );

    // Law: same rules, same answers, down to which of several equally good ones is shown.
    [Fact]
    public void Asking_again_gives_the_same_answers() =>
        Check(
            37,
            Machines,
            (machine, order) =>
            {
                var logic = OrderLogic.Of(machine);
                Assert.Equal(Shown(OrderLogic.Of(machine), order), Shown(logic, order));
            }
        );

    private static void Check(uint stream, int count, Action<Machine, PartialOrder> check) =>
        Cases.Check(
            RandomMachines.WithOrder(Options, Ways),
            stream,
            count,
            both => check(both.Machine, both.Order),
            RandomMachines.Words
        );

    private static BigInteger? Count(Machine machine, PartialOrder order) => OrderLogic.Of(machine).Count(order);

    private static int? Size(Explanation? explanation) => explanation?.Picks.Length + explanation?.Rules.Length;

    private static PartialOrder Narrowed(PartialOrder order, OptionId option, int number) =>
        order.With(option, new(number, number));

    private static string Shown(OrderLogic logic, PartialOrder order) =>
        string.Join(
            '\n',
            [
                .. logic.Explain(order)?.Picks.Select(pick => pick.Value) ?? [],
                .. logic.Explain(order)?.Rules.Select(rule => rule.Statement) ?? [],
                .. logic
                    .Nearest(order, isComplete: true)
                    .Select(repair =>
                        string.Join(", ", repair.Changes.Select(change => $"{change.Option} {change.After}"))
                    ),
            ]
        );
}
