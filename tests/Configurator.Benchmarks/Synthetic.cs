using System.Collections.Immutable;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Rules;
using Configurator.Core.Model;

namespace Configurator.Benchmarks;

/// <summary>
/// Made-up catalogues as large as wanted: N options, N/5 choices of four options each, 4N/3 rules, all local as in real
/// catalogues, where an option has to do with its own part of the machine. One order is fixed first and every rule
/// keeps it, so that none is empty.
/// </summary>
internal sealed class Synthetic
{
    private const int MembersOfChoice = 4;

    /// <summary>How far apart options that share a rule may stand.</summary>
    private const int Reach = 5;

    private readonly Random _random;
    private readonly ImmutableArray<OptionId> _options;
    private readonly HashSet<OptionId> _ordered = [];

    private Synthetic(int options, int seed)
    {
        _random = new(seed);
        _options =
        [
            .. Enumerable.Range(0, options).Select(i => new OptionId(FormattableString.Invariant($"o{i:00000}"))),
        ];
    }

    /// <summary>The same seed gives the same catalogue.</summary>
    public static RuleModel Catalogue(int options, int seed) => new Synthetic(options, seed).Make();

    private RuleModel Make()
    {
        List<OrderRule> choices = [.. Enumerable.Range(0, _options.Length / 5).Select(Choice)];
        foreach (var option in _options.Skip(choices.Count * MembersOfChoice).Where(_ => IsTrue(0.5)))
        {
            _ordered.Add(option);
        }

        var rules = Enumerable.Range(0, _options.Length * 4 / 3).Select(_ => Rule());
        return new([.. _options.Select(option => new OptionNumbers(option, 1, 1))], [.. choices, .. rules]);
    }

    private OrderRule Choice(int number)
    {
        var members = _options.Slice(number * MembersOfChoice, MembersOfChoice);
        _ordered.Add(members[_random.Next(MembersOfChoice)]);
        var choice = new Choice(
            default,
            Text.Empty,
            Take.ExactlyOne,
            [.. members.Select(member => new Core.Sources.Located<OptionId>(member, default))]
        );
        return ChoiceRules.Of(choice);
    }

    private OrderRule Rule()
    {
        while (true)
        {
            var meaning = Condition();
            if (meaning.Holds(option => _ordered.Contains(option) ? 1 : 0))
            {
                return new(RuleKind.MachineRule, "", null, default) { Meaning = meaning };
            }
        }
    }

    /// <summary>One or two options need another one or one of two others; or two exclude each other.</summary>
    private Condition Condition()
    {
        var near = _random.Next(_options.Length);
        var one = Near(near);
        return _random.Next(4) switch
        {
            0 => RuleModel.Implies(one, Near(near)),
            1 => RuleModel.Implies(one, new AnyOf([Near(near), Near(near)], default)),
            2 => RuleModel.Implies(new AllOf([one, Near(near)], default), new AnyOf([Near(near), Near(near)], default)),
            _ => new NoneOf([new AllOf([one, Near(near)], default)], default),
        };
    }

    private OptionCount Near(int place) =>
        new(_options[Math.Clamp(place + _random.Next(-Reach, Reach + 1), 0, _options.Length - 1)], 1, null, default);

    private bool IsTrue(double probability) => _random.NextDouble() < probability;
}
