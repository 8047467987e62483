using System.Collections.Immutable;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using CsCheck;
using Check = Configurator.Core.Tests.Support.Check;

namespace Configurator.Core.Tests.Logic;

/// <summary>Small random rule sets, each order judged by the product and by a second evaluator that is written from the
/// format's words alone.</summary>
public class RuleCheckBruteForceTests
{
    private const int Options = 4;
    private const int CountMax = 3;

    private static readonly Machine Bare = Check.Small.TheMachine with { Choices = [], Rules = [] };

    private static readonly Gen<Written> Leaf = Gen.Select(
        Gen.Int[0, Options - 1], Gen.Int[0, CountMax], Gen.Int[0, CountMax].Nullable(),
        (option, least, most) => new Written("count", option, least, most, []));

    private static readonly Gen<Written> Any = Gen.Recursive<Written>((depth, self) => depth >= 3 ? Leaf : Gen.OneOf(
        Leaf,
        Gen.Select(Gen.OneOf("all", "any", "none"), self.Array[0, 3], (word, parts) => new Written(word, 0, 0, null, parts))));

    private static readonly Gen<int[]> Orders = Gen.Int[0, CountMax].Array[Options];

    [Fact]
    public void Conditions_hold_where_a_second_evaluator_says_so() => Gen.Select(Any, Orders).Sample((written, order) =>
        written.ToModel().Holds(option => order[Number(option)]) == written.Holds(order));

    [Fact]
    public void A_condition_mentions_every_option_in_it() => Any.Sample(written =>
        written.ToModel().Mentions().Select(mention => Number(mention.Option)).SequenceEqual(written.Named()));

    [Fact]
    public void Rules_of_a_machine_are_broken_where_a_second_evaluator_says_so() =>
        Gen.Select(Any.Null(), Any, Orders).Sample((when, need, order) =>
        {
            var rule = new MachineRule(new(new("r"), default), when?.ToModel(), need.ToModel(), null);
            return Broken(Bare with { Rules = [rule] }, order) == ((when?.Holds(order) ?? true) && !need.Holds(order) ? 1 : 0);
        });

    [Fact]
    public void Choices_are_broken_where_a_second_evaluator_says_so() =>
        Gen.Select(Gen.Enum<Take>(), Gen.Int[0, Options - 1].HashSet[1, Options], Any.Null(), Orders).Sample((take, of, when, order) =>
        {
            var choice = new Choice(new(new("c"), default), Text.Empty, take, [.. of.Select(option => new Core.Sources.Located<OptionId>(Id(option), default))])
            {
                When = when?.ToModel(),
            };
            var taken = of.Count(option => order[option] > 0);
            var isMet = take == Take.ExactlyOne ? taken == 1 : take == Take.AtMostOne ? taken < 2 : taken > 0;
            return Broken(Bare with { Choices = [choice] }, order) == (isMet || when?.Holds(order) == false ? 0 : 1);
        });

    [Fact]
    public void Links_between_options_are_broken_where_a_second_evaluator_says_so() =>
        Gen.Select(Gen.Bool.Array[Options * Options], Gen.Bool.Array[Options * Options], Orders).Sample((needs, bars, order) =>
        {
            var options = Enumerable.Range(0, Options).Select(one => new Option(new(Id(one), default), "small", Text.Empty)
            {
                Quantity = new(1, CountMax, Text.Empty),
                Requires = [.. Others(needs, one).Select(other => new Requirement(new OptionCount(Id(other), 1, null, default), null))],
                NotWith = [.. Others(bars, one).Select(other => new OptionLink(new(Id(other), default), null))],
            });
            var machine = Bare with { Options = options.ToImmutableSortedDictionary(option => option.Id.Value, option => option) };
            var pairs = from one in Enumerable.Range(0, Options) from other in Enumerable.Range(0, Options) where order[one] > 0 select (one, other);
            var expected = pairs.Sum(pair =>
                (needs[(pair.one * Options) + pair.other] && order[pair.other] == 0 ? 1 : 0) + (bars[(pair.one * Options) + pair.other] && order[pair.other] > 0 ? 1 : 0));
            return Broken(machine, order) == expected;
        });

    private static IEnumerable<int> Others(bool[] table, int one) => Enumerable.Range(0, Options).Where(other => table[(one * Options) + other]);

    private static int Broken(Machine machine, int[] order)
    {
        var taken = Enumerable.Range(0, Options).Where(option => order[option] > 0).ToImmutableSortedDictionary(Id, option => order[option]);
        return RuleCheck.Broken(machine, new(machine.Id.Value, taken, [])).Length;
    }

    private static OptionId Id(int option) => new("abcd"[option].ToString());

    private static int Number(OptionId option) => option.Value[0] - 'a';

    /// <summary>A condition as its words say it, judged without the product's types.</summary>
    private sealed record Written(string Word, int Option, int Least, int? Most, Written[] Parts)
    {
        public bool Holds(int[] order) => Word switch
        {
            "all" => Array.TrueForAll(Parts, part => part.Holds(order)),
            "any" => Array.Exists(Parts, part => part.Holds(order)),
            "none" => !Array.Exists(Parts, part => part.Holds(order)),
            _ => order[Option] >= Least && order[Option] <= (Most ?? int.MaxValue),
        };

        public IEnumerable<int> Named() => Word == "count" ? [Option] : Parts.SelectMany(part => part.Named());

        public Condition ToModel()
        {
            ImmutableArray<Condition> parts = [.. Parts.Select(part => part.ToModel())];
            return Word switch
            {
                "all" => new AllOf(parts, default),
                "any" => new AnyOf(parts, default),
                "none" => new NoneOf(parts, default),
                _ => new OptionCount(Id(Option), Least, Most, default),
            };
        }
    }
}
