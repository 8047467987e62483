using System.Collections.Immutable;

namespace Configurator.Core.Documents;

// Words of the parts list, the budgets and the acceptance sheet.
public sealed partial record SiteWords
{
    public string Workbook => Say("Workbook of all tables (XLSX)", "Libro con todas las tablas (XLSX)");

    public string Downloads => Say("Downloads", "Descargas");

    public string Table => Say("Table", "Tabla");

    public string Parts => Say("Parts", "Piezas");

    public string PartsLead =>
        Say(
            "What to buy for one machine of this configuration, the standard machine included. Prices are list prices of the definitions and no offer.",
            "Lo que hay que comprar para una máquina de esta configuración, incluida la máquina estándar. Los precios son los de lista de las definiciones y no una oferta."
        );

    public string PartsList => Say("Parts list", "Lista de piezas");

    public string CablesFromStock => Say("Cables from stock", "Cables de almacén");

    public string CablesByMetre => Say("Cables by the metre", "Cables por metro");

    public string Id => Say("Id", "Id");

    public string Part => Say("Part", "Pieza");

    public string Unit => Say("Unit", "Unidad");

    public string Pieces => Say("pcs", "uds");

    public string Lifecycle => Say("Lifecycle", "Ciclo de vida");

    public string LastOrders => Say("last orders", "últimos pedidos");

    public string Ended => Say("ended", "descatalogado");

    public string Active => Say("active", "activo");

    public string AlternateParts => Say("Alternates", "Alternativas");

    public string LeadTime => Say("Lead time", "Plazo de entrega");

    public string UnitPrice => Say("Unit price", "Precio unitario");

    public string Sum => Say("Sum", "Suma");

    public string Total => Say("Total", "Total");

    public string Excluded => Say("Cannot be added to this order", "No se puede añadir a este pedido");

    public string Connectors => Say("Connectors", "Conectores");

    public string SmallParts => Say("Small parts", "Material menudo");

    public string SmallPartsLead =>
        Say(
            "Counted from the termination list and the cable schedule: a terminal for each core that is used, a ferrule for each end that is wired by hand, a gland for each cable that enters the box with bare ends, two labels for each cable. Without spares; the makers of terminals, ferrules and glands decide.",
            "Contado de la lista de conexionado y de la lista de cables: un borne por hilo usado, una puntera por extremo cableado a mano, un prensaestopas por cable que entra en el armario con extremos libres, dos etiquetas por cable. Sin reservas; deciden los fabricantes de bornes, punteras y prensaestopas."
        );

    public string PartsElsewhere =>
        Say(
            "Not in these lists: the enclosure with its plate, rails, ducts, sockets in its wall and terminals that join potentials, the wire for its inside, and the mains side. They belong to the circuit diagram of the box.",
            "No están en estas listas: el armario con su placa, carriles, canaletas, tomas de su pared y bornes que unen potenciales, el hilo de su interior y el lado de red. Pertenecen al esquema eléctrico del armario."
        );

    public string Size => Say("Size", "Tamaño");

    public string BoxTerminals => Say("terminal in the box", "borne del armario");

    public string CableGland => Say("cable gland", "prensaestopas");

    public string ShieldClamps => Say("shield clamp", "abrazadera de pantalla");

    public string Totals => Say("Totals", "Totales");

    public string LongestLeadTime => Say("Longest lead time", "Plazo de entrega más largo");

    public string PartsWithoutPrice => Say("Parts without a price", "Piezas sin precio");

    public string Mass => Say("Mass", "Masa");

    public string Budgets => Say("Budgets", "Balances");

    public string BudgetsLead =>
        Say(
            "Everything that has a limit, subject by subject, fullest first: value, limit and margin as computed for this configuration.",
            "Todo lo que tiene un límite, tema por tema, lo más lleno primero: valor, límite y margen calculados para esta configuración."
        );

    public string BudgetPorts => Say("Ports and cables", "Puertos y cables");

    public string BudgetBox => Say("Control box", "Armario de control");

    public string BudgetOther => Say("Other limits", "Otros límites");

    public string Acceptance => Say("Acceptance", "Recepción");

    public string AcceptanceLead =>
        Say(
            "What to measure on the finished machine, what to expect, and room to sign. Electrical tests are for qualified persons; IEC 60204-1 clause 18 and the local code govern them.",
            "Qué medir en la máquina terminada, qué se espera y espacio para firmar. Los ensayos eléctricos son para personas cualificadas; los rigen la IEC 60204-1, cláusula 18, y la normativa local."
        );

    public string GeneralTests => Say("Tests of the machine", "Ensayos de la máquina");

    public string PowerTests => Say("Supply and trunk", "Alimentación y troncal");

    public string LoadTests => Say("Motors and heaters", "Motores y calefactores");

    public string DirectTests => Say("Wired straight to the box", "Cableado directo al armario");

    public string PowerConductors => Say("Phases", "Fases");

    public string MeasureInsulation =>
        Say(
            "joined, to PE, 500 V DC, isolated and locked; drive or switch, electronics and probes disconnected",
            "unidas, a PE, 500 V CC, con corte y bloqueo; variador o interruptor, electrónica y sondas desconectados"
        );

    public string StaysOff =>
        Say(
            "cores stay off, unplugged or as the maker of the load allows",
            "los hilos quedan fuera, desenchufados o como permita el fabricante de la carga"
        );

    public string InsulationExpected => Say("at least 1 Mohm", "al menos 1 Mohm");

    public string LookRotationAtDrive =>
        Say("short run at the lowest speed, guards closed", "marcha breve a la velocidad mínima, resguardos cerrados");

    public string LookRotation => Say("short run, guards closed", "marcha breve, resguardos cerrados");

    public string DirectionByArrow => Say("direction by the arrow", "sentido según la flecha");

    public string MeasureHeaterPhases =>
        Say(
            "resistance between phases, cold, isolated and locked; switch disconnected",
            "resistencia entre fases, en frío, con corte y bloqueo; interruptor desconectado"
        );

    public string MeasureHeater =>
        Say(
            "resistance from phase to return, cold, isolated and locked; switch disconnected",
            "resistencia de fase a retorno, en frío, con corte y bloqueo; interruptor desconectado"
        );

    public string HeaterPhasesExpected =>
        Say(
            "the same between all phases: 2·U²/P, star or delta; U between phases",
            "igual entre todas las fases: 2·U²/P, estrella o triángulo; U entre fases"
        );

    public string HeaterExpected => Say("U²/P", "U²/P");

    public string LookHeating =>
        Say("release heating, clamp meter on each phase", "habilitar el calefactor, pinza en cada fase");

    public string HeatingPhasesExpected =>
        Say(
            "the same current in each phase; its own probe rises",
            "misma corriente en cada fase; sube su propia sonda"
        );

    public string HeatingExpected => Say("P/U; its own probe rises", "P/U; sube su propia sonda");

    public string LookInput => Say("let it change; watch the input", "hacerla cambiar; observar la entrada");

    public string LookOutput =>
        Say(
            "guards and covers shut, nobody in reach: set the output by hand; watch the device",
            "resguardos y cubiertas cerrados, nadie al alcance: activar la salida a mano; observar el dispositivo"
        );

    public string LookPinTwo =>
        Say(
            "before plugging: pin 2 of the device; the port feeds it",
            "antes de enchufar: pin 2 del dispositivo; el puerto lo alimenta"
        );

    public string PinTwoExpected => Say("connected to nothing in the device", "sin conexión dentro del dispositivo");

    public string LookNetwork => Say("network link at both ends", "enlace de red en ambos extremos");

    public string NetworkExpected =>
        Say(
            "lamp on, no lost frames while the machine runs",
            "luz encendida, sin tramas perdidas con la máquina en marcha"
        );

    public string ZeroVolts => Say("0 V of sensors and of actuators", "0 V de sensores y de actuadores");

    public string MeasureZeroVolts =>
        Say(
            "ohms from M to 2M at the last master; power off and locked, earth links of both 0 V open",
            "ohmios de M a 2M en el último maestro; sin tensión y bloqueado, puentes a tierra de ambos 0 V abiertos"
        );

    public string NoContinuity => Say("no continuity", "sin continuidad");

    public string ZeroVoltsTolerance =>
        Say("more than 100 kohm; close both links again", "más de 100 kohm; vuelva a cerrar los dos puentes");

    public string TestRelease => Say("what it releases, with the stop given", "lo que habilita, con la parada dada");

    public string Dropped => Say("dropped", "desconectado");

    public string PortTests => Say("Port by port", "Puerto por puerto");

    public string SafetyTests => Say("Stops and safety devices", "Paradas y dispositivos de seguridad");

    public string Test => Say("Test", "Ensayo");

    public string Measure => Say("Measure or look", "Medir o mirar");

    public string Expected => Say("Expected", "Esperado");

    public string Tolerance => Say("Tolerance or source", "Tolerancia o fuente");

    public string Measured => Say("Measured", "Medido");

    public string Done => Say("Done", "Hecho");

    public string NameAndDate => Say("Name, date", "Nombre, fecha");

    public string SignOff => Say("Sign-off", "Conformidad de firma");

    public string MeasureVolts =>
        Say(
            "volts at the feed of the master, all outputs on",
            "voltios en la alimentación del maestro, todas las salidas activas"
        );

    public string MeasureAmperes =>
        Say("amperes out of the box, all outputs on", "amperios desde el armario, todas las salidas activas");

    public string Never => Say("never below", "nunca menos de");

    public string LookCapped => Say("look", "mirar");

    public string Capped => Say("capped and tight", "tapado y apretado");

    public string LookIdentity =>
        Say(
            "identity, rate and process data as the master reads them",
            "identidad, velocidad y datos de proceso leídos por el maestro"
        );

    public string LookSwitching => Say("make it switch and watch the input", "accionarlo y observar la entrada");

    public string TestSafety =>
        Say("trip each channel by itself, then both", "disparar cada canal por separado y luego ambos");

    public string GiveLockedStop =>
        Say(
            "machine running: try to open it (stays locked); ask for access, open after rest; with it open, reset and start; shut, then reset",
            "máquina en marcha: intentar abrirlo (sigue bloqueado); pedir acceso, abrir tras el reposo; abierto, rearmar y arrancar; cerrar, luego rearmar"
        );

    public string Off => Say("off", "apagado");

    public string StaysOn => Say("stays", "sigue");

    public string StopNotStated => Say("nobody states what it drops", "nadie indica qué corta");

    public string StopFunction => Say("Stop function", "Función de paro");

    public string GivenBy => Say("Given by", "La da");

    public string WhatIsDropped => Say("What is dropped", "Qué se corta");

    public string StopGivers => Say("What gives each stop", "Qué da cada paro");

    public string StopMatrix => Say("Stop by stop", "Paro por paro");

    public string StopMatrixLead =>
        Say(
            "Off: that stop drops it. Stays: it goes on with that stop given; whether it may is for those who judge the risk. Which category a stop has, and how long its outputs are delayed, stands with the safety functions.",
            "Apagado: ese paro lo corta. Sigue: continúa con ese paro dado; si puede ser así lo deciden quienes evalúan el riesgo. La categoría de un paro y el retardo de sus salidas están con las funciones de seguridad."
        );

    public string GiveStop =>
        Say(
            "machine running, nobody in reach: press or open it; with it given, reset and start; release, then reset",
            "máquina en marcha, nadie al alcance: pulsar o abrir; con ella dada, rearmar y arrancar; soltar, luego rearmar"
        );

    public string StopExpected =>
        Say("reset refused; no start by release or reset alone", "rearme rechazado; sin marcha al soltar o rearmar");

    public string TestTorqueOff =>
        Say(
            "isolated and locked: take off one channel; switch on, guards shut, try a short run; then the other",
            "con corte y bloqueo: soltar un canal; conectar, resguardos cerrados, intentar una marcha breve; luego el otro"
        );

    public string NoTorque => Say("no run with either channel off", "sin marcha con cualquiera de los canales suelto");

    public string HoldReset =>
        Say("hold reset pressed, give and take back a stop", "mantener pulsado el rearme, dar y quitar una parada");

    public string ResetByRelease =>
        Say(
            "nothing resets while it is held; no start by reset alone",
            "nada se rearma mientras se mantiene; sin marcha solo con rearmar"
        );

    public string OpenFeedback =>
        Say(
            "isolated and locked: take off its feedback wire; switch on, reset; then put it back",
            "con corte y bloqueo: soltar su hilo de realimentación; conectar, rearmar; luego volver a ponerlo"
        );

    public string ResetRefused => Say("reset refused, nothing switches on", "rearme rechazado, nada se conecta");

    public string EachChannel => Say("each channel alone is seen", "cada canal se detecta por separado");

    public string ChannelsInOut => Say("channels in/out", "canales E/S");

    public string TestStop => Say("volts with the stop pressed", "voltios con la parada pulsada");

    public string StaysLive => Say("stays alive", "sigue con tensión");

    public string Dead => Say("dead", "sin tensión");

    public ImmutableArray<string> Signers =>
        [
            Say("Wired by", "Cableado por"),
            Say("Checked by", "Comprobado por"),
            Say("Accepted for the customer by", "Aceptado por el cliente"),
        ];
}
