using Configurator.Core.Engineering.Monitoring;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Documents;

/// <summary>What a monitoring system may read, and how often.</summary>
public sealed partial record SiteWords
{
    /// <summary>Values of the device status: 0 to 4.</summary>
    public const int StatusCount = 5;

    public string Monitoring => Say("Monitoring", "Supervisión");

    public string MonitoringLead =>
        Say(
            "What this machine offers a monitoring system, and how often reading it is of use. Intervals are common practice, no source, unless a device's response or the machine's cycle sets them.",
            "Lo que esta máquina ofrece a un sistema de supervisión y con qué frecuencia sirve leerlo. Los intervalos son práctica común, sin fuente, salvo donde los fija la respuesta de un dispositivo o el ciclo de la máquina."
        );

    public string DataFiles => Say("Files", "Archivos");

    public string MonitoringData => Say("this list for programs", "esta lista para programas");

    public string MonitoringSchema => Say("JSON Schema of that file", "esquema JSON de ese archivo");

    public string ProcessValues => Say("Process values", "Valores de proceso");

    public string ProcessValuesLead =>
        Say(
            "Raw values in the process data of each port; octet and bit as on the controller page.",
            "Valores sin escalar en los datos de proceso de cada puerto; octeto y bit como en la página del control."
        );

    public string UsefulRate => Say("Useful rate", "Frecuencia útil");

    public string Reasons => Say("Why not more often", "Por qué no más a menudo");

    /// <summary>A reason in a word or two.</summary>
    public string Short(RateReason reason) =>
        reason switch
        {
            RateReason.MachineCycle => Say("machine cycle", "ciclo de máquina"),
            RateReason.Response => Say("slow device", "dispositivo lento"),
            RateReason.EverySecond => Say("trend", "tendencia"),
            RateReason.Change => Say("switching signal", "señal de conmutación"),
            RateReason.Backstop => Say("event comes first", "antes llega un evento"),
            RateReason.Rise => Say("slow rise", "aumento lento"),
            RateReason.Start => Say("fixed", "fijo"),
            RateReason.Changeover => Say("proof of the recipe", "prueba de la receta"),
            _ => Say("status is not 0", "el estado no es 0"),
        };

    public string Reason => Say("Reason", "Motivo");

    public string DeviceData => Say("Status, counters, identity, settings", "Estado, contadores, identidad, ajustes");

    public string DeviceDataLead =>
        Say(
            "Read as parameters, a few octets in each cycle of the port. Indices below 0x0040 are those of IO-Link Interface and System Specification v1.1.x (IEC 61131-9), Table B.8; all of them are optional there, so a device may refuse. Reading takes: request and answer, the device busy for no cycle (IOL-08, IOL-09; text taken as 16 octets).",
            "Se leen como parámetros, unos octetos en cada ciclo del puerto. Los índices por debajo de 0x0040 son los de IO-Link Interface and System Specification v1.1.x (IEC 61131-9), tabla B.8; todos son opcionales, así que un dispositivo puede rechazarlos. Lectura: petición y respuesta, sin ciclos de espera del dispositivo (IOL-08, IOL-09; texto contado como 16 octetos)."
        );

    public string Sort => Say("Sort", "Clase");

    public string ReadingTakes => Say("Reading takes at least", "La lectura dura al menos");

    public string StatusMeaning => Say("Device status, index 0x0024", "Estado del dispositivo, índice 0x0024");

    public string Meaning => Say("Meaning", "Significado");

    public string WhatToDo => Say("What to do", "Qué hacer");

    public string Events => Say("Events", "Eventos");

    public string EventsLead =>
        Say(
            "Events come by themselves: store each with its time, nothing is gained by asking. Usual codes of ports and devices; what a device really sends stands in its own description.",
            "Los eventos llegan solos: guarde cada uno con su hora; no se gana nada preguntando. Códigos usuales de puertos y dispositivos; lo que un dispositivo envía de verdad está en su propia descripción."
        );

    public string EventCode => Say("Code", "Código");

    public string SentBy => Say("Sent by", "Lo envía");

    public string DeviceStatus => Say("Device status", "Estado del dispositivo");

    public string Every(Measure interval) => Say($"every {interval}", $"cada {interval}");

    public string Occasion(RateReason reason) =>
        reason switch
        {
            RateReason.Change => Say("on change", "al cambiar"),
            RateReason.Start => Say("at start", "en el arranque"),
            RateReason.Changeover => Say("after a changeover", "tras un cambio de producto"),
            _ => Say("on an event", "con un evento"),
        };

    public string Of(RateReason reason) =>
        reason switch
        {
            RateReason.MachineCycle => Say(
                "one value a machine cycle; between, the same product is seen",
                "un valor por ciclo de máquina; entre medias se ve el mismo producto"
            ),
            RateReason.Response => Say(
                "the device needs so long to answer; sooner, the old value is read again",
                "el dispositivo tarda eso en responder; antes se relee el valor anterior"
            ),
            RateReason.EverySecond => Say(
                "the machine states no cycle; one second shows a trend",
                "la máquina no indica ciclo; un segundo muestra la tendencia"
            ),
            RateReason.Change => Say(
                "a switching signal says something only when it changes",
                "una señal de conmutación solo dice algo cuando cambia"
            ),
            RateReason.Backstop => Say(
                "an event tells of each change; the interval finds what was missed",
                "un evento avisa de cada cambio; el intervalo halla lo que se perdió"
            ),
            RateReason.Rise => Say(
                "how fast it rises over hours tells of a bad cable or connector",
                "su aumento a lo largo de horas delata un cable o conector malo"
            ),
            RateReason.Start => Say(
                "changes only with the device or its firmware",
                "solo cambia con el dispositivo o su firmware"
            ),
            RateReason.Changeover => Say(
                "changes only when it is written: proves that the recipe arrived",
                "solo cambia al escribirse: prueba que la receta llegó"
            ),
            _ => Say(
                "says which event stands where the status is not 0",
                "dice qué evento persiste cuando el estado no es 0"
            ),
        };

    public string Of(PointKind kind) =>
        kind switch
        {
            PointKind.ProcessValue => Say("process value", "valor de proceso"),
            PointKind.Status => Say("status", "estado"),
            PointKind.Counter => Say("counter", "contador"),
            PointKind.Identity => Say("identity", "identidad"),
            _ => Say("setting", "ajuste"),
        };

    public string StatusOf(int value) =>
        value switch
        {
            0 => Say("operating normally", "funciona normalmente"),
            1 => Say("maintenance required", "requiere mantenimiento"),
            2 => Say("out of specification", "fuera de especificación"),
            3 => Say("functional check", "comprobación funcional"),
            _ => Say("failure", "fallo"),
        };

    public string ActionOn(int value) =>
        value switch
        {
            0 => Say("nothing", "nada"),
            1 => Say("plan cleaning, refill or replacement", "planificar limpieza, relleno o sustitución"),
            2 => Say(
                "doubt its values; look at process and surroundings",
                "dudar de sus valores; mirar proceso y entorno"
            ),
            3 => Say("its values are simulated or held; wait", "sus valores están simulados o retenidos; esperar"),
            _ => Say("do not use its values; send a technician", "no usar sus valores; enviar a un técnico"),
        };
}
