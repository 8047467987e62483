using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Cli.Tests.Browser.Picking;

/// <summary>Machines that are nothing but options and rules. One order is fixed first and every rule keeps it, so that
/// none is without orders; the same seed gives the same machine.</summary>
internal sealed class GeneratedMachines
{
    private const int MembersOfChoice = 4;
    /// <summary>Five such options at their most count sixty, as much as a limit can be.</summary>
    private const int MostOfOption = 12;

    private readonly Random _random;
    private readonly ImmutableArray<OptionId> _ids;
    private readonly Dictionary<OptionId, int> _kept = [];

    private GeneratedMachines(int options, int seed)
    {
        _random = new(seed);
        _ids = [.. Enumerable.Range(0, options).Select(i => new OptionId(FormattableString.Invariant($"o{i:000}")))];
    }

    /// <param name="counted">How many of its options can be taken several times.</param>
    /// <param name="reach">How far apart options that share a rule may stand.</param>
    public static Machine Of(int options, int counted, int reach, int seed) =>
        new GeneratedMachines(options, seed).Make(counted, reach);

    private Machine Make(int counted, int reach)
    {
        ImmutableArray<Choice> choices = [.. Enumerable.Range(0, _ids.Length / 8).Select(Choice)];
        var plain = _ids.Skip(choices.Length * MembersOfChoice).ToList();
        var several = plain.TakeLast(counted).ToHashSet();
        foreach (var id in plain.Where(_ => _random.Next(2) == 0))
        {
            _kept[id] = several.Contains(id) ? _random.Next(1, MostOfOption + 1) : 1;
        }

        ImmutableArray<MachineRule> rules =
        [
            .. Enumerable.Range(0, _ids.Length).Select(i => Rule(FormattableString.Invariant($"r{i:000}"), reach)),
        ];
        return new(new(new("generated"), default), Text.Of("Generated"), "G", "A")
        {
            Areas = [],
            Route = new([], []),
            Stations = [],
            Control = ControlArchitecture.Unknown,
            IsWhole = false,
            Options = _ids.ToImmutableSortedDictionary(id => id, id => Option(id, several.Contains(id))),
            Choices = choices,
            Rules = rules,
            Limits = counted == 0 ? [] : [Limit([.. several])],
        };
    }

    /// <summary>What is kept may bring along what is kept too.</summary>
    private Option Option(OptionId id, bool isCounted)
    {
        var other = _ids[_random.Next(_ids.Length)];
        var brings = other != id && Kept(other) == 1 && _random.Next(6) == 0;
        return new(new(id, default), "family", Text.Of(id.Value))
        {
            Quantity = isCounted ? new(1, MostOfOption, Text.Empty) : null,
            ComesWith = brings ? [new(new(other, default), null)] : [],
        };
    }

    private Choice Choice(int number)
    {
        var members = _ids.Slice(number * MembersOfChoice, MembersOfChoice);
        _kept[members[_random.Next(MembersOfChoice)]] = 1;
        var take = number % 3 == 2 ? Take.AtMostOne : Take.ExactlyOne;
        return new(
            new(new(FormattableString.Invariant($"c{number:000}")), default),
            Text.Of("Choice"),
            take,
            [.. members.Select(member => new Core.Sources.Located<OptionId>(member, default))]
        );
    }

    private CountLimit Limit(ImmutableArray<OptionId> counted) =>
        new(
            new("limit", default),
            Text.Of("Limit"),
            Math.Max(40, counted.Sum(Kept)),
            [.. counted.Select(id => new CountShare(new(id, default), 1))],
            null
        );

    private MachineRule Rule(string name, int reach)
    {
        while (true)
        {
            var place = _random.Next(_ids.Length);
            var when = Near(place, reach);
            Condition need = _random.Next(4) switch
            {
                0 => Near(place, reach),
                1 => new AnyOf([Near(place, reach), Near(place, reach)], default),
                2 => new NoneOf([Near(place, reach)], default),
                _ => new AnyOf([new NoneOf([Near(place, reach)], default), Near(place, reach)], default),
            };
            if (!when.Holds(Kept) || need.Holds(Kept))
            {
                return new(new(new(name), default), when, need, null);
            }
        }
    }

    private int Kept(OptionId id) => _kept.GetValueOrDefault(id);

    private OptionCount Near(int place, int reach) =>
        new(_ids[Math.Clamp(place + _random.Next(-reach, reach + 1), 0, _ids.Length - 1)], 1, null, default);
}
