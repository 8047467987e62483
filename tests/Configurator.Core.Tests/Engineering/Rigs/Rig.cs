using System.Collections.Immutable;

namespace Configurator.Core.Tests.Engineering.Rigs;

/// <summary>A machine with nothing but masters, options and fits, along a straight line. Everything is said in plain
/// numbers, so that it can be judged without the code under test.</summary>
/// <param name="Options">Named o0, o1 and so on.</param>
/// <param name="OneOf">Exactly one of the first so many options is taken; none where zero.</param>
/// <param name="Fits">In the order of their keys.</param>
/// <param name="Direct">Fits that are wired into the box.</param>
internal sealed record Rig(
    ImmutableArray<RigMaster> Masters,
    int Options,
    int OneOf,
    ImmutableArray<RigRule> Rules,
    ImmutableArray<RigFit> Fits,
    int Spare,
    bool HasSplitter,
    int Direct
)
{
    public const string Id = "rig";

    public override string ToString() =>
        string.Join(
            '\n',
            Masters
                .Select(master => master.ToString())
                .Concat(Rules.Select(rule => rule.ToString()))
                .Concat(Fits.Select(fit => fit.ToString()))
                .Prepend(
                    $"{Options} options, one of the first {OneOf}, spare {Spare}, splitter {HasSplitter}, direct {Direct}"
                )
        );
}

/// <param name="At">Metres along the line.</param>
/// <param name="PerPort">Milliamperes.</param>
/// <param name="InAll">Milliamperes; null where nothing is stated.</param>
internal sealed record RigMaster(
    int At,
    int ClassA,
    int ClassB,
    bool ReadsPinTwo,
    int PerPort,
    int? InAll,
    int? ExtraInAll,
    bool IsExtension
);

/// <summary>Two options: the one needs the other, or they are never taken together.</summary>
internal sealed record RigRule(int One, int Other, bool IsNeed);

/// <param name="Option">What brings it; null for the standard machine.</param>
/// <param name="When">A further option that must be taken.</param>
internal sealed record RigFit(int? Option, int? When, string Name, Gadget Gadget, int At)
{
    public string Source => Option is { } option ? $"o{option}" : "standard";

    public string Key => $"{Source}/{Name}/1";

    public GadgetFacts Facts => GadgetFacts.Of(Gadget);
}

/// <summary>The ports of one class of a master or hub.</summary>
/// <param name="Carrier">Masters first, then hubs.</param>
internal sealed record RigGroup(int Carrier, string Name, char Class, int First, int Ports);
