namespace Configurator.Core.Documents;

/// <summary>The site's own strings, each in every language that we speak: the one place where they stand.</summary>
/// <param name="Language">ISO 639-1; other languages than ours get English.</param>
public sealed partial record SiteWords(string Language)
{
    // Frame of every page.
    public string SkipToContent => Say("Skip to content", "Ir al contenido");

    public string Catalogue => Say("Catalogue", "Catálogo");

    public string YouAreHere => Say("You are here", "Está aquí");

    public string Documents => Say("Documents of this configuration", "Documentos de esta configuración");

    public string OnThisPage => Say("On this page", "En esta página");

    public string Footer =>
        Say(
            "Planning figures: verify by measurement at start-up. Local codes and the authority having jurisdiction decide; work on electrical, pneumatic and safety equipment is for licensed and competent persons.",
            "Valores de planificación: verifíquelos con mediciones en la puesta en marcha. Deciden la normativa local y la autoridad competente; los trabajos en equipos eléctricos, neumáticos y de seguridad corresponden a personas autorizadas y competentes."
        );

    // Document control.
    public string Document => Say("Document", "Documento");

    public string Revision => Say("Revision", "Revisión");

    public string State => Say("State", "Estado");

    public string Draft => Say("draft", "borrador");

    public string Released => Say("released", "liberado");

    public string Approved => Say("Approved", "Aprobado");

    public string Definitions => Say("Definitions", "Definiciones");

    public string NotStated => Say("not stated", "no indicado");

    // Catalogue.
    public string Machines => Say("Machines", "Máquinas");

    public string Machine => Say("Machine", "Máquina");

    public string Options => Say("Options", "Opciones");

    public string Option => Say("Option", "Opción");

    public string Devices => Say("Devices", "Dispositivos");

    public string Device => Say("Device", "Dispositivo");

    public string Configurations => Say("Configurations", "Configuraciones");

    public string Configuration => Say("Configuration", "Configuración");

    public string Findings => Say("Findings", "Resultados");

    public string FindingPages => Say("What each finding means", "Qué significa cada resultado");

    public string Title => Say("Title", "Título");

    public string Summary => Say("What it does", "Qué hace");

    public string CatalogueLead =>
        Say(
            "Machines with one control architecture each: every option is an addition to it. Every configuration listed here was checked as described on its pages.",
            "Máquinas con una sola arquitectura de control: cada opción es una adición. Cada configuración de esta lista se comprobó como describen sus páginas."
        );

    // Machine.
    public string Lanes => Say("Lanes", "Pistas");

    public string Rate => Say("Rated cycles", "Ciclos nominales");

    public string Stations => Say("Stations", "Estaciones");

    public string Station => Say("Station", "Estación");

    public string Area => Say("Area", "Área");

    public string Wash => Say("Washing", "Lavado");

    public string Location => Say("Location", "Ubicación");

    public string Layout => Say("Layout along the machine", "Disposición a lo largo de la máquina");

    public string PossibleConfigurations =>
        Say("Configurations that can be ordered", "Configuraciones que se pueden pedir");

    public string RuleHealth => Say("Health of the rules", "Salud de las reglas");

    public string RulesHealthy =>
        Say(
            "Proved over all orders: every option can be ordered, none is forced on everybody, no rule is idle.",
            "Demostrado para todos los pedidos: cada opción se puede pedir, ninguna es obligatoria para todos, ninguna regla sobra."
        );

    public string NeverOrderable => Say("can never be ordered", "nunca se puede pedir");

    public string AlwaysIncluded => Say("always included", "siempre incluida");

    public string AddsNothing => Say("adds nothing to the other rules", "no añade nada a las demás reglas");

    public string SingleWayOut => Say("only one way out", "una sola salida");

    public string WhatGoesTogether => Say("What goes together", "Qué se combina");

    public string Choices => Say("Choices", "Elecciones");

    public string Choice => Say("Choice", "Elección");

    public string Take => Say("To be taken", "A elegir");

    public string OutOf => Say("Out of", "Entre");

    public string Rules => Say("Rules", "Reglas");

    public string Rule => Say("Rule", "Regla");

    public string Because => Say("Because", "Porque");

    public string Needs => Say("Needs", "Necesita");

    public string NotWith => Say("Not together with", "No junto con");

    public string ComesWith => Say("Comes with", "Viene con");

    public string Always => Say("on every machine", "en cada máquina");

    public string Family => Say("Family", "Familia");

    public string Price => Say("List price", "Precio de lista");

    public string OptionPrice => Say("List price, devices extra", "Precio de lista, sin dispositivos");

    public string PortPlan => Say("Port plan", "Plan de puertos");

    public string PortPlanLead =>
        Say(
            "The home port of everything that can be fitted, the same in all orders. Two fits share a port only where they can never be ordered together.",
            "El puerto fijo de todo lo que se puede montar, igual en todos los pedidos. Dos montajes comparten un puerto solo si nunca pueden pedirse juntos."
        );

    public string Extension => Say("extension: fitted only when needed", "extensión: se monta solo si hace falta");

    public string Base => Say("on every machine", "en cada máquina");

    public string DirectHomes => Say("Wired directly into the control box", "Cableado directo al armario de control");

    // Option and device.
    public string OfferedOn => Say("Offered on", "Se ofrece en");

    public string QuantityRange => Say("How many", "Cuántos");

    public string Fits => Say("What it fits", "Qué monta");

    public string Fit => Say("Fit", "Montaje");

    public string Purpose => Say("Purpose", "Función");

    public string Home => Say("Home", "Puerto fijo");

    public string Adds => Say("What it adds", "Qué añade");

    public string Quantity => Say("Quantity", "Cantidad");

    public string TouchesBox => Say("Adds to the control box", "Añade al armario de control");

    public string OnlyACable => Say("nothing: cables on ports only", "nada: solo cables a puertos");

    public string UsedIn => Say("Used in configurations", "Usado en configuraciones");

    public string WhereUsed => Say("Where used", "Dónde se usa");

    public string Standard => Say("standard machine", "máquina estándar");

    public string Data => Say("Data", "Datos");

    public string Parameters => Say("Parameters", "Parámetros");

    public string Parameter => Say("Parameter", "Parámetro");

    public string Range => Say("Range", "Rango");

    public string Alternates => Say("Alternates", "Alternativas");

    // Configuration.
    public string Overview => Say("Overview", "Resumen");

    public string Ordered => Say("Ordered", "Pedido");

    public string AddedBy => Say("comes with another option", "viene con otra opción");

    public string Recipes => Say("Recipes", "Recetas");

    public string History => Say("Revisions", "Revisiones");

    public string Date => Say("Date", "Fecha");

    public string By => Say("By", "Por");

    public string Change => Say("Change", "Cambio");

    public string Checked => Say("checked", "comprobada");

    public string NotChecked => Say("has failed findings", "tiene resultados fallidos");

    public string Check => Say("Check", "Comprobación");

    public string About => Say("About", "Sobre");

    public string Found => Say("Found", "Resultado");

    public string Value => Say("Value", "Valor");

    public string Limit => Say("Limit", "Límite");

    public string Margin => Say("Margin", "Margen");

    public string Verdict => Say("Verdict", "Veredicto");

    public string Pass => Say("pass", "pasa");

    public string Fail => Say("fail", "falla");

    public string Accepted => Say("accepted deviation", "desviación aceptada");

    public string AcceptedUntil => Say("until", "hasta");

    public string Source => Say("Source", "Fuente");

    public string FindingsBySubject => Say("Findings by check", "Resultados por comprobación");

    public string Tightest => Say("Smallest margin", "Margen mínimo");

    public string Passed => Say("Passed", "Pasan");

    public string Failed => Say("Failed", "Fallan");

    // Port map and wiring.
    public string PortMap => Say("Port map", "Mapa de puertos");

    public string Port => Say("Port", "Puerto");

    public string PortClass => Say("Class", "Clase");

    public string Designation => Say("Designation", "Designación");

    public string Mode => Say("Mode", "Modo");

    public string ModeSwitching => Say("digital input", "entrada digital");

    public string ProcessData => Say("Process data in/out", "Datos de proceso E/S");

    public string Cycle => Say("Shortest cycle", "Ciclo mínimo");

    public string PinTwo => Say("Pin 2", "Pin 2");

    public string Current => Say("Sensor supply L+", "Alimentación de sensor L+");

    public string Spare => Say("spare: cap it", "libre: ponga tapa");

    public string SpareReserved =>
        Say("spare: cap it (home of what is not fitted)", "libre: ponga tapa (puerto fijo de lo no montado)");

    public string Master => Say("Master", "Maestro");

    public string Hub => Say("Hub", "Caja de conexión (hub)");

    public string Wiring => Say("Wiring", "Cableado");

    public string PlugList => Say("Plug list", "Lista de conectores");

    public string PlugListLead =>
        Say(
            "Moulded cables from stock, in the order in which the machine is cabled: trunk first, then port by port.",
            "Cables moldeados de almacén, en el orden de cableado de la máquina: primero el troncal, luego puerto por puerto."
        );

    public string Cable => Say("Cable", "Cable");

    public string From => Say("From", "Desde");

    public string To => Say("To", "Hasta");

    public string Plug => Say("Plug", "Conector");

    public string Type => Say("Type", "Tipo");

    public string Length => Say("Length", "Longitud");

    public string Needed => Say("Way with slack", "Recorrido con reserva");

    public string Pin => Say("Pin", "Pin");

    public string Colour => Say("Colour", "Color");

    public string Signal => Say("Signal", "Señal");

    public string Terminal => Say("Terminal", "Borne");

    public string AsDataSheet => Say("as the data sheet of the device says", "según la hoja de datos del dispositivo");

    public string Class => Say("Class", "Clase");

    public string WiringNotes => Say("Notes for wiring", "Notas de cableado");

    // Notes.
    public string Sales => Say("For sales", "Para ventas");

    public string Service => Say("Service", "Servicio");

    public string Operation => Say("Operation", "Operación");

    public string Sanitation => Say("Sanitation notes", "Notas de limpieza");

    public string SanitationLead =>
        Say(
            "Adds to the plant's own cleaning programme, which governs.",
            "Complementa el programa de limpieza de la planta, que es el que rige."
        );

    public string BeforeYouStart => Say("Before you start", "Antes de empezar");

    public string StepsTitle => Say("Steps", "Pasos");

    public string BeforeLockOut =>
        Say("Before lock-out, guards shut", "Antes del bloqueo y etiquetado, resguardos cerrados");

    public string AsProgrammeSays => Say("As the plant's programme says.", "Según el programa de la planta.");

    public string Cautions => Say("Cautions", "Precauciones");

    // Word lists.
    public string Yes => Say("yes", "sí");

    public string No => Say("no", "no");

    private string Say(string english, string spanish) => Language == "es" ? spanish : english;
}
