using System.Collections.Immutable;
using System.Numerics;

namespace Configurator.Core.Tests.Engineering.Rigs;

/// <summary>What holds for a rig, found by going through all its configurations and by adding up metres and
/// milliamperes: nothing here is asked of the code under test.</summary>
internal sealed class RigFacts
{
    private const int ReachOfClassA = 10;
    private static readonly ImmutableArray<int> StockOfClassA = [2, 5, 10];
    private static readonly ImmutableArray<int> StockOfClassB = [2, 5];

    private readonly bool[,] _together;

    public RigFacts(Rig rig)
    {
        Rig = rig;
        Configurations = [.. Enumerable.Range(0, 1 << rig.Options).Where(taken => Keeps(rig, taken))];
        Hubs = [.. rig.Fits.Select((fit, i) => (fit, i)).Where(pair => pair.fit.Gadget == Gadget.Hub).Select(p => p.i)];
        Groups = [.. GroupsOf(rig, Hubs).Where(group => group.Ports > 0)];
        FittedIn = [.. rig.Fits.Select(fit => Bits(taken => IsFitted(fit, taken)))];
        Conditions = ConditionsOf(rig);
        _together = new bool[rig.Fits.Length, rig.Fits.Length];
        Cable = new int?[rig.Fits.Length, Groups.Length];
        Pairs = new bool[rig.Fits.Length, Groups.Length];
        for (var fit = 0; fit < rig.Fits.Length; fit++)
        {
            for (var other = 0; other < rig.Fits.Length; other++)
            {
                _together[fit, other] = Overlaps(FittedIn[fit], FittedIn[other]);
            }

            for (var group = 0; group < Groups.Length; group++)
            {
                Cable[fit, group] = CableOf(fit, Groups[group]);
                Pairs[fit, group] = CanPair(rig.Fits[fit], Groups[group]);
            }
        }
    }

    public Rig Rig { get; }

    /// <summary>The options taken, as bits.</summary>
    public ImmutableArray<int> Configurations { get; }

    public ImmutableArray<RigGroup> Groups { get; }

    /// <summary>Fits that are hubs; their ports are those of carrier <c>Masters.Length + position</c>.</summary>
    public ImmutableArray<int> Hubs { get; }

    /// <summary>A bit for each configuration, for each fit.</summary>
    public ImmutableArray<ulong[]> FittedIn { get; }

    /// <summary>For each fit the number of its condition, counted in the order of the fits.</summary>
    public ImmutableArray<int> Conditions { get; }

    /// <summary>Metres from stock for a fit at a group; null where it cannot live there.</summary>
    public int?[,] Cable { get; }

    /// <summary>May it share a port of the group with its like of the same option?</summary>
    public bool[,] Pairs { get; }

    public int Carriers => Rig.Masters.Length + Hubs.Length;

    public bool Together(int fit, int other) => _together[fit, other];

    public RigMaster? MasterOf(int carrier) => carrier < Rig.Masters.Length ? Rig.Masters[carrier] : null;

    /// <summary>Does nothing stand in the rules that no order can reach?</summary>
    public bool IsSensible =>
        !Configurations.IsEmpty
        && FittedIn.All(bits => bits.Any(word => word != 0))
        && Enumerable.Range(0, Rig.Options).All(option => Configurations.Any(taken => (taken >> option & 1) == 1));

    public static int CountOf(ulong[] bits) => bits.Sum(BitOperations.PopCount);

    private static bool Keeps(Rig rig, int taken) =>
        (rig.OneOf == 0 || BitOperations.PopCount((uint)taken & ((1u << rig.OneOf) - 1)) == 1)
        && rig.Rules.All(rule =>
            (taken >> rule.One & 1) == 0 || (taken >> rule.Other & 1) == (rule.IsNeed ? 1 : 0)
        );

    private static bool IsFitted(RigFit fit, int taken) =>
        (fit.Option is not { } option || (taken >> option & 1) == 1)
        && (fit.When is not { } when || (taken >> when & 1) == 1);

    private ulong[] Bits(Func<int, bool> holds)
    {
        var bits = new ulong[(Configurations.Length + 63) / 64];
        for (var i = 0; i < Configurations.Length; i++)
        {
            bits[i / 64] |= holds(Configurations[i]) ? 1UL << (i % 64) : 0;
        }

        return bits;
    }

    private static bool Overlaps(ulong[] one, ulong[] other) => one.Where((word, i) => (word & other[i]) != 0).Any();

    private static ImmutableArray<int> ConditionsOf(Rig rig)
    {
        var names = rig
            .Fits.Select(fit => string.Join('&', new[] { fit.Option, fit.When }.OfType<int>()))
            .ToList();
        var distinct = names.Distinct(StringComparer.Ordinal).ToList();
        return [.. names.Select(name => distinct.IndexOf(name))];
    }

    private static IEnumerable<RigGroup> GroupsOf(Rig rig, ImmutableArray<int> hubs)
    {
        for (var i = 0; i < rig.Masters.Length; i++)
        {
            var master = rig.Masters[i];
            yield return new(i, $"m{i}", 'A', 1, master.ClassA);
            yield return new(i, $"m{i}", 'B', master.ClassA + 1, master.ClassB);
        }

        for (var i = 0; i < hubs.Length; i++)
        {
            yield return new(rig.Masters.Length + i, rig.Fits[hubs[i]].Name, 'H', 1, GadgetFacts.HubPorts);
        }
    }

    private int? CableOf(int index, RigGroup group)
    {
        var fit = Rig.Fits[index];
        var master = MasterOf(group.Carrier);
        var from = master?.At ?? Rig.Fits[HubOf(group)].At;
        var needed = Math.Abs(from - fit.At);
        var isAllowed = master is null ? OnHub(index, HubOf(group)) : OnMaster(fit, group, master);
        var stock = fit.Facts.NeedsClassB ? StockOfClassB : StockOfClassA;
        return isAllowed && needed <= Math.Min(stock[^1], ReachOfClassA) ? stock.First(length => length >= needed) : null;
    }

    private int HubOf(RigGroup group) => Hubs[group.Carrier - Rig.Masters.Length];

    /// <summary>Never fitted without the hub.</summary>
    private bool OnHub(int guest, int hub) =>
        guest != hub
        && Rig.Fits[guest].Facts is { IsSwitching: true, Current: <= GadgetFacts.HubPerPort }
        && FittedIn[guest].Where((word, i) => (word & ~FittedIn[hub][i]) != 0).Any() is false;

    private static bool OnMaster(RigFit fit, RigGroup group, RigMaster master) =>
        fit.Facts.Current <= master.PerPort
        && (!fit.Facts.NeedsClassB || group.Class == 'B')
        && (fit.Gadget != Gadget.Feeler || (group.Class == 'A' && master.ReadsPinTwo));

    private bool CanPair(RigFit fit, RigGroup group) =>
        Rig.HasSplitter
        && group.Class == 'A'
        && fit.Facts.IsPlain
        && MasterOf(group.Carrier) is { ReadsPinTwo: true } master
        && 2 * fit.Facts.Current <= master.PerPort;
}
