using System.Collections.Immutable;
using Configurator.Core.Tests.Definitions;

namespace Configurator.Core.Tests.Engineering.Rigs;

/// <summary>Rigs drawn at random, the same ones for the same number on every machine.</summary>
internal static class RandomRigs
{
    private static readonly ImmutableArray<Gadget> Usual =
    [
        Gadget.Eye,
        Gadget.Eye,
        Gadget.Prox,
        Gadget.Prox,
        Gadget.Prox,
        Gadget.Band,
        Gadget.Lamp,
        Gadget.Heavy,
        Gadget.Feeler,
        Gadget.Valves,
        Gadget.Valves,
    ];

    /// <summary>At most so many fits on two or three small masters, everything tight.</summary>
    public static Rig Tiny(int number, int fitsMax)
    {
        for (var attempt = 0; ; attempt++)
        {
            var dice = new Dice((number * 1000) + attempt);
            var options = 1 + dice.Below(6);
            var masters = Enumerable.Range(0, 2 + dice.Below(2)).Select(i => TinyMaster(dice, i)).ToImmutableArray();
            var rig = With(dice, options, masters, 2 + dice.Below(fitsMax - 1), isRoomy: false);
            if (new RigFacts(rig).IsSensible)
            {
                return rig;
            }
        }
    }

    /// <summary>So many fits of so many options on as many masters as there are, with current enough.</summary>
    public static Rig Roomy(int number, int fits, int options, int masters)
    {
        for (var attempt = 0; ; attempt++)
        {
            var dice = new Dice((number * 1000) + 500 + attempt);
            ImmutableArray<RigMaster> all =
            [
                .. Enumerable
                    .Range(0, masters)
                    .Select(i => new RigMaster(i * 12 / masters, 4, 4, true, 500, 4000, 4000, i % 2 == 1)),
            ];
            var rig = With(dice, options, all, fits, isRoomy: true);
            if (new RigFacts(rig).IsSensible)
            {
                return rig;
            }
        }
    }

    private static RigMaster TinyMaster(Dice dice, int i) =>
        new(
            dice.Below(9),
            1 + dice.Below(3),
            dice.Below(3),
            dice.Chance(70),
            dice.Chance(50) ? 200 : 500,
            dice.Chance(50) ? null : 150 + (50 * dice.Below(6)),
            dice.Chance(60) ? null : 800 * (1 + dice.Below(2)),
            i > 0 && dice.Chance(70)
        );

    private static Rig With(Dice dice, int options, ImmutableArray<RigMaster> masters, int fits, bool isRoomy)
    {
        var oneOf = options >= 2 && dice.Chance(50) ? 2 + dice.Below(Math.Min(options, 4) - 1) : 0;
        ImmutableArray<RigRule> rules =
        [
            .. Enumerable
                .Range(0, options < 2 ? 0 : dice.Below((options / 2) + 1))
                .Select(_ => new RigRule(dice.Below(options), dice.Below(options), dice.Chance(30)))
                .Where(rule => rule.One != rule.Other),
        ];
        var drawn = Enumerable.Range(0, fits).Select(i => Fit(dice, options, i, isRoomy)).ToList();
        return new(
            masters,
            options,
            oneOf,
            rules,
            [.. drawn.OrderBy(fit => fit.Source, StringComparer.Ordinal).ThenBy(fit => fit.Name, StringComparer.Ordinal)],
            isRoomy ? 1 : dice.Below(2),
            dice.Chance(60),
            dice.Below(2)
        );
    }

    private static RigFit Fit(Dice dice, int options, int i, bool isRoomy)
    {
        int? option = dice.Chance(15) ? null : dice.Below(options);
        int? when = dice.Chance(12) && dice.Below(options) is var other && other != option ? other : null;
        var gadget = dice.Chance(12) ? Gadget.Hub : dice.Pick(Usual);
        // Names sort as their numbers do.
        return new(option, when, $"f{(char)('a' + (i / 10))}{i % 10}", gadget, dice.Below(isRoomy ? 12 : 9));
    }
}
