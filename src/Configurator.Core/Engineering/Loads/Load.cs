using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Loads;

/// <summary>Something that adds up over fits, counted in whole small units so that every sum is exact.</summary>
/// <param name="Id">Its name for ever.</param>
/// <param name="Unit">Printed unit; empty for a count.</param>
/// <param name="SmallPerUnit">Small units in one printed unit: 1000 for mA counted in microamperes.</param>
public sealed record Load(string Id, Text Title, string Unit, int SmallPerUnit)
{
    private const string PriceId = "price-";

    public static readonly Load ClassAPorts = new("ports-a", Say("Class A ports", "Puertos clase A"), "", 1);
    public static readonly Load ClassBPorts = new("ports-b", Say("Class B ports", "Puertos clase B"), "", 1);
    public static readonly Load HubPorts = new(
        "ports-hub",
        Say("Hub ports", "Puertos de caja de conexión (hub)"),
        "",
        1
    );
    public static readonly Load BoxCables = new("box-cables", Say("Cables into the box", "Cables al armario"), "", 1);
    public static readonly Load SensorSupply = new(
        "sensor-supply",
        Say("Sensor supply L+", "Alimentación de sensor L+"),
        "mA",
        1000
    );
    public static readonly Load ExtraSupply = new(
        "extra-supply",
        Say("Extra supply 2L+", "Alimentación extra 2L+"),
        "mA",
        1000
    );
    public static readonly Load BoxHeat = new("box-heat", Say("Heat in the box", "Calor en el armario"), "W", 1000);
    public static readonly Load Rail = new("rail", Say("Rail in the box", "Carril en el armario"), "mm", 1000);
    public static readonly Load Air = new("air", Say("Free air", "Aire libre"), "l/min", 1000);
    public static readonly Load Mass = new("mass", Say("Mass", "Masa"), "kg", 1000);

    /// <summary>Device and trunk cables, of a whole machine.</summary>
    public static readonly Load Cable = new("cable", Say("Cable", "Cable"), "m", 1_000_000);

    /// <summary>Extension masters, of a whole machine.</summary>
    public static readonly Load Extensions = new(
        "extensions",
        Say("Extension masters", "Maestros de ampliación"),
        "",
        1
    );

    /// <summary>Those that an option adds by itself.</summary>
    public static ImmutableArray<Load> All { get; } =
    [ClassAPorts, ClassBPorts, HubPorts, BoxCables, SensorSupply, ExtraSupply, BoxHeat, Rail, Air, Mass];

    /// <summary>List prices of options and their devices, in one currency (ISO 4217).</summary>
    public static Load Price(string currency) =>
        new(
            PriceId + currency.ToLowerInvariant(),
            Say("List price of options", "Precio de lista de opciones"),
            currency,
            100
        );

    public static bool IsPrice(Load load) => load.Id.StartsWith(PriceId, StringComparison.Ordinal);

    public string Print(long small)
    {
        var value = new Rational(small, SmallPerUnit).ToString(decimals: 2);
        return Unit.Length == 0 ? value : $"{value} {Unit}";
    }

    private static Text Say(string english, string spanish) => Text.Of([new("en", english), new("es", spanish)]);
}
