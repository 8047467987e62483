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
