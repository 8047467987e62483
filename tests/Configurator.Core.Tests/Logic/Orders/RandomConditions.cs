using System.Collections.Immutable;
using Configurator.Core.Model;
using CsCheck;

namespace Configurator.Core.Tests.Logic.Orders;

/// <summary>Conditions of every form, nested, now and then empty.</summary>
internal static class RandomConditions
{
    private const int DepthMax = 3;

    public static OptionId NotOffered { get; } = new("zz-not-offered");

    public static Gen<Condition> Of(Gen<OptionId> names) =>
        Gen.Recursive<Condition>(
            (depth, self) =>
                depth >= DepthMax
                    ? Count(names)
                    : Gen.Frequency<Condition>((6, Count(names)), (1, All(self)), (2, Any(self)), (1, None(self)))
        );

    private static Gen<Condition> Count(Gen<OptionId> names) =>
        Gen.Select<OptionId, (int AtLeast, int? AtMost), Condition>(
            names,
            Gen.Frequency<(int, int?)>(
                (24, (1, null)),
                (1, (2, null)),
                (1, (3, null)),
                (1, (0, null)), // at least
                (1, (0, 0)),
                (1, (0, 1)),
                (1, (0, 2)), // at most
                (1, (1, 1)),
                (1, (2, 2)),
                (1, (1, 2))
            ), // exactly, from .. to
            (option, range) => new OptionCount(option, range.AtLeast, range.AtMost, default)
        );

    private static Gen<Condition> All(Gen<Condition> part) =>
        Parts(part).Select(Condition (parts) => new AllOf(parts, default));

    private static Gen<Condition> Any(Gen<Condition> part) =>
        Parts(part).Select(Condition (parts) => new AnyOf(parts, default));

    private static Gen<Condition> None(Gen<Condition> part) =>
        Parts(part).Select(Condition (parts) => new NoneOf(parts, default));

    private static Gen<ImmutableArray<Condition>> Parts(Gen<Condition> part) =>
        Gen.Frequency((1, Gen.Int[0, 1]), (6, Gen.Int[2, 4]))
            .SelectMany(count => part.Array[count])
            .Select(parts => parts.ToImmutableArray());
}
