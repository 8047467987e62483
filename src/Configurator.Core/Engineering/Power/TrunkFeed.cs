using System.Collections.Immutable;
using Configurator.Core.Engineering.Ports;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Power;

/// <summary>One circuit of the trunk from the box to its last master, as it is mounted.</summary>
/// <param name="Source">Ohm before the trunk.</param>
/// <param name="Lengths">Metres of the cable that leads to each master, one way.</param>
/// <param name="OhmPerKm">Of one core, hot.</param>
internal sealed record TrunkFeed(
    Rational Volts,
    Rational Source,
    ImmutableArray<Master> Masters,
    ImmutableArray<Rational> Lengths,
    Rational OhmPerKm
)
{
    public static TrunkFeed Of(FieldPower power, Machine machine, ImmutableArray<Master> masters) =>
        new(
            power.Lowest.InBase,
            power.Source.InBase / 1000,
            masters,
            [.. masters.Select((master, i) => Length(machine, i == 0 ? null : masters[i - 1], master))],
            Hot(power, AreaOf(machine))
        );

    /// <summary>Thinner than any core that is made, in mm2, and colder than the formula holds for, in degC.</summary>
    private static readonly Rational AreaMin = Rational.Of(0.01m);

    private const int Coldest = -40;

    /// <summary>Largest resistance of a core of that area, in ohm per km, at the stated temperature.</summary>
    public static Rational Hot(FieldPower power, Rational areaMm2) =>
        Conductors.AtTemperature(
            ConductorSizes.OhmPerKm(areaMm2 > AreaMin ? areaMm2 : AreaMin),
            power.Conductors.InBase > Coldest ? power.Conductors.InBase : Coldest
        );

    public static Rational AreaOf(Machine machine) => machine.Control.Trunk.Power.Cordset!.Conductor.InBase;

    /// <summary>Metres one way to the last master.</summary>
    public Rational Whole => Lengths.Aggregate((Rational)0, (sum, length) => sum + length);

    /// <summary>Ohm out and back of all that the current to this master flows through.</summary>
    public ImmutableArray<Rational> LoopOhm
    {
        get
        {
            var loops = ImmutableArray.CreateBuilder<Rational>(Lengths.Length);
            var sum = Source;
            foreach (var length in Lengths)
            {
                sum += Conductors.LoopOhm(length, OhmPerKm);
                loops.Add(sum);
            }

            return loops.MoveToImmutable();
        }
    }

    /// <summary>Volts at each master for the amperes drawn there; exact where currents are constant.</summary>
    public ImmutableArray<Rational> VoltsFor(ImmutableArray<Rational> amperes)
    {
        var total = amperes.Aggregate((Rational)0, (sum, current) => sum + current);
        return Trunk.VoltsAtTaps(
            Volts - (Source * total),
            [.. Lengths.Select((length, i) => new TrunkStretch(length, OhmPerKm, amperes[i]))]
        );
    }

    /// <summary>Stock length of the trunk cable, or the way itself where it is cut; zero where no path leads
    /// there.</summary>
    public static Rational Length(Machine machine, Master? previous, Master next)
    {
        var needed = Cabling.Needed(machine, previous?.Station ?? machine.Control.Box.Station, next.Station);
        return Cabling.StockFor(machine.Control.Trunk.Power, needed) is { } stock
            ? stock.InBase / 1000
            : new((needed ?? default).Value, 1_000_000);
    }
}
