namespace Configurator.Core.Documents;

/// <summary>Supplies, trunk and safety wiring.</summary>
public sealed partial record SiteWords
{
    public string Power => Say("Power", "Alimentación");

    public string PowerLead =>
        Say(
            "What the 24 V circuits of the trunk carry and what arrives, with the supply at its lowest, the conductors hot and everything fitted switched on.",
            "Lo que llevan los circuitos de 24 V de la línea y lo que llega, con la fuente en su mínimo, los conductores calientes y todo lo montado encendido."
        );

    public string PowerNotStated =>
        Say(
            "The definition of this machine does not say how its trunk is fed, so nothing of it was checked.",
            "La definición de esta máquina no dice cómo se alimenta su línea, así que no se ha comprobado nada de ella."
        );

    public string Circuits => Say("Circuits", "Circuitos");

    public string Circuit => Say("Circuit", "Circuito");

    public string Feeds => Say("Feeds", "Alimenta");

    public string FeedOf(Model.CircuitUse use) =>
        use == Model.CircuitUse.SensorSupply
            ? Say("sensors and communication, L+", "sensores y comunicación, L+")
            : Say("actuators, 2L+", "actuadores, 2L+");

    public string Supply => Say("Supply", "Fuente");

    public string Protection => Say("Protection", "Protección");

    public string DroppedBy => Say("Dropped by", "La corta");

    public string StaysAlive => Say("no stop: stays alive", "ningún paro: sigue activa");

    public string AlongTheTrunk => Say("Along the trunk", "A lo largo de la línea");

    public string Stretch => Say("Trunk cable to it", "Cable de línea hasta él");

    public string CurrentHere => Say("Current", "Corriente");

    public string VoltsHere => Say("Voltage there", "Tensión allí");

    public string Impossible => Say("no voltage carries this load", "ninguna tensión lleva esta carga");

    public string SafetyWiring => Say("Safety wiring", "Cableado de seguridad");

    public string SafetyLead =>
        Say(
            "Connections and counts only. Performance levels and the choice of safety functions are for competent persons (ISO 13849-1, IEC 62061).",
            "Solo conexiones y cantidades. Los niveles de prestaciones y la elección de las funciones de seguridad corresponden a personas competentes (ISO 13849-1, IEC 62061)."
        );

    public string SafetyDevices => Say("Safety devices", "Dispositivos de seguridad");

    public string SafetyInputs => Say("Safety inputs", "Entradas de seguridad");

    public string SafetyOutputs => Say("Safety outputs", "Salidas de seguridad");

    public string TestPulses => Say("Test pulses", "Pulsos de prueba");

    public string PulsesFromBox => Say("from the box", "del armario");

    public string PulsesOwn => Say("tests its own outputs", "comprueba sus propias salidas");

    public string PulsesNone => Say("none", "ninguno");

    public string StopFunctions => Say("What a stop drops", "Qué corta un paro");
}
