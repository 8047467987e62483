using Configurator.Core.Model;

namespace Configurator.Core.Documents;

// Words of the wiring table, the cable schedule and the labels.
public sealed partial record SiteWords
{
    public string WiringLead =>
        Say(
            "What is plugged and what is wired by hand, in the order in which to build.",
            "Lo que se enchufa y lo que se cablea a mano, en el orden de montaje."
        );

    public string TerminationList => Say("Termination list", "Lista de conexionado");

    public string TerminationLead =>
        Say(
            "Only ends that are wired by hand: open ends of stock cables and cables cut to length, core by core, at the terminals of the box and at the device. Terminals of the box are spring terminals unless the box says otherwise; torques at the device are those of its maker. Swatches only support the letters.",
            "Solo extremos cableados a mano: extremos abiertos de cables de almacén y cables cortados a medida, hilo por hilo, en los bornes del armario y en el dispositivo. Los bornes del armario son de resorte salvo que el armario diga otra cosa; los pares en el dispositivo son los de su fabricante. Las muestras solo apoyan las letras."
        );

    public string TrunkSocket => Say("Trunk sockets of the control box", "Tomas del troncal en el armario");

    public string TrunkSocketLead =>
        Say(
            "What each pin carries where the trunk leaves the box, and what protects and drops it.",
            "Qué lleva cada pin donde el troncal sale del armario, y qué lo protege y lo desconecta."
        );

    public string InsideBox => Say("Inside the control box", "Dentro del armario");

    public string InsideLead =>
        Say(
            "What lies between supply and trunk socket, and what drops it: contacts drop what follows them, and all before them stays alive with a stop given. I, T and Q are inputs, their test pulses and outputs of the safety controller. Of a relay that drops torque, 4.2 is the second channel of its fourth pair of contacts; of a switch, the number is its port. All these numbers stand in the port plan: every order of the machine has the same ones. A feedback contact is fed by the test pulse of its input. The 0 V of sensors and of actuators are joined nowhere but at their own supplies.",
            "Lo que hay entre la fuente y la toma del troncal, y qué lo desconecta: los contactos cortan lo que les sigue, y lo anterior sigue con tensión durante un paro. I, T y Q son entradas, sus impulsos de prueba y salidas del controlador de seguridad. En un relé que corta el par, 4.2 es el segundo canal de su cuarta pareja de contactos; en un conmutador de red, el número es su puerto. Todos estos números están en el plan de puertos: cada pedido de la máquina tiene los mismos. Un contacto de realimentación se alimenta con el impulso de prueba de su entrada. Los 0 V de sensores y de actuadores no se unen en ningún sitio salvo en sus propias fuentes."
        );

    public string ModuleFeed => Say("+24 V feed of the breaker module", "+24 V, alimentación del módulo de protección");

    public string DirectTerminals =>
        Say("terminals of what is wired straight to the box", "bornes de lo cableado directo al armario");

    public string InsideDevices => Say("what is mounted inside the box", "lo montado dentro del armario");

    public string BoxSupply =>
        Say("+24 V for devices wired to the box", "+24 V para dispositivos cableados al armario");

    public string TerminalOfFeeder => Say("as its maker says", "según su fabricante");

    public string EndsThere => Say("ends there", "termina ahí");

    public string LeadsOn => Say("Leads on to", "Sigue hacia");

    public string Strip => Say("Strip", "Pelado");

    public string EarthBar => Say("PE bar", "barra PE");

    public string PlainInputNumber => Say("plain input", "entrada normal");

    public string PlainOutputNumber => Say("plain output", "salida normal");

    public string FastInputNumber => Say("fast input", "entrada rápida");

    public string SafetyChannel => Say("coil, channel", "bobina, canal");

    public string FeedbackChannel => Say("feedback contact", "contacto de realimentación");

    public string NetworkCable => Say("network", "red");

    /// <summary>What the table of wires leaves out.</summary>
    public string InsideElsewhere(string diagram) =>
        diagram.Length > 0
            ? Say(
                $"Label each of these wires at both ends with where it goes. Not here: their cross-sections and colours, the terminals that join +24 V, 0 V and PE, the mains side, its protection and the links of 0 V to earth. They are in the circuit diagram of the box, {diagram}.",
                $"Rotule cada uno de estos hilos en ambos extremos con su destino. No están aquí: sus secciones y colores, los bornes que unen +24 V, 0 V y PE, el lado de red, su protección y las uniones de 0 V a tierra. Están en el esquema eléctrico del armario, {diagram}."
            )
            : Say(
                "Label each of these wires at both ends with where it goes. Not here: their cross-sections and colours, the terminals that join +24 V, 0 V and PE, the mains side, its protection and the links of 0 V to earth. They are in the circuit diagram of the box.",
                "Rotule cada uno de estos hilos en ambos extremos con su destino. No están aquí: sus secciones y colores, los bornes que unen +24 V, 0 V y PE, el lado de red, su protección y las uniones de 0 V a tierra. Están en el esquema eléctrico del armario."
            );

    public string ShieldAtDevice => Say("in the gland, all round", "en el prensaestopas, en todo el contorno");

    public string ShieldFolded => Say("not connected, insulate", "sin conectar, aislar");

    public string KeepApart => Say("Group", "Grupo");

    public string GroupPower => Say("power", "potencia");

    public string GroupControl => Say("24 V and signals", "24 V y señales");

    public string GroupNetwork => Say("network", "red");

    public string SwitchedBy => Say("Switched by", "Conmutado por");

    public string InputsAt => Say("At inputs", "En entradas");

    public string OutputsAt => Say("At outputs", "En salidas");

    public string BoxPlaces => Say("Inputs, outputs and ports of the box", "Entradas, salidas y puertos del armario");

    public string BoxPlace => Say("Sort", "Clase");

    public string BoxPlacesLead =>
        Say(
            "The same in every order: a wire that is there never moves. What can never be ordered together may take the same one.",
            "Los mismos en cada pedido: un hilo ya puesto no cambia nunca de sitio. Lo que nunca puede pedirse junto puede tomar el mismo."
        );

    public string Of(BoxPoint point) =>
        point switch
        {
            BoxPoint.SafetyInput => Say("safety input", "entrada segura"),
            BoxPoint.SafetyOutput => Say("safety output", "salida segura"),
            BoxPoint.FastInput => FastInputNumber,
            BoxPoint.Input => PlainInputNumber,
            BoxPoint.Output => PlainOutputNumber,
            BoxPoint.TorqueOff => Say(
                "pair of contacts for safe torque off",
                "pareja de contactos de par desconectado seguro"
            ),
            _ => Say("port of the network switch", "puerto del conmutador de red"),
        };

    public string LayingList => Say("Laying list", "Lista de tendido");

    public string LayingLead =>
        Say(
            "In the order in which the machine is cabled. The way names the points of the cable path that it passes, as the definition of the machine calls them; at both ends the cable drops to its station. Cables of the group power lie in a tray or compartment of their own, or apart from the others as their makers and local practice ask; where they must cross, they cross squarely. Glands are for the cable as stated; their maker decides.",
            "En el orden de cableado de la máquina. El recorrido nombra los puntos de la canalización por los que pasa, tal como los llama la definición de la máquina; en ambos extremos el cable baja a su estación. Los cables del grupo potencia van en una canaleta o compartimento propio, o separados de los demás como pidan sus fabricantes y la práctica local; donde deban cruzarse, se cruzan en ángulo recto. Los prensaestopas son para el cable indicado; decide su fabricante."
        );

    public string WayPassed => Say("Way", "Recorrido");

    public string Lane => Say("Lane", "Pista");

    public string NumberSign => Say("No.", "N.º");

    public string OfHowMany => Say("of", "de");

    public string Gland => Say("Entry at the box", "Entrada en el armario");

    public string BendRadius => Say("Bend radius", "Radio de curvatura");

    public string Wire => Say("Wire", "Hilo");

    public string AtBox => Say("At the box", "En el armario");

    public string AtDevice => Say("At the device", "En el dispositivo");

    public string CrossSection => Say("Cross-section", "Sección");

    public string Ferrule => Say("Ferrule", "Puntera");

    public string Carries => Say("Carries", "Lleva");

    public string BoxTerminal => Say("Terminal in the box", "Borne del armario");

    public string MouldedPin => Say("moulded plug, pin", "conector moldeado, pin");

    public string FoldBack => Say("insulate and fold back", "aislar y plegar");

    public string SpringTerminal => Say("spring terminal", "borne de resorte");

    public string Torque => Say("Torque", "Par");

    public string FromItem => Say("From item", "Desde elemento");

    public string FromPlug => Say("Plug there", "Conector allí");

    public string ToItem => Say("To item", "Hasta elemento");

    public string ToPlug => Say("Plug at the end", "Conector al final");

    public string LabelText => Say("Label", "Etiqueta");

    public string ByHand => Say("wired by hand", "cableado a mano");

    public string Shield => Say("shield", "pantalla");

    public string ShieldClamp => Say("shield clamp at the entry", "abrazadera de pantalla en la entrada");

    public string Sleeves => Say("socket", "hembra");

    public string Pins => Say("pins", "macho");

    public string Angled => Say("angled", "acodado");

    public string Straight => Say("straight", "recto");

    public string Poles => Say("-pole", " polos");

    public string Cables => Say("Cables", "Cables");

    public string CablesLead =>
        Say(
            "Every cable of this machine: what to order, cut, lay and find again.",
            "Todos los cables de esta máquina: qué pedir, cortar, tender y volver a encontrar."
        );

    public string CableSchedule => Say("Cable schedule", "Lista de cables");

    public string Cores => Say("Cores", "Hilos");

    public string CoreColours => Say("Core marks", "Marcas de hilos");

    public string Jacket => Say("Jacket", "Cubierta");

    public string PickList => Say("Pick list by station", "Lista de acopio por estación");

    public string PickLead =>
        Say(
            "What to bring to each station before cabling starts.",
            "Qué llevar a cada estación antes de empezar a cablear."
        );

    public string Bring => Say("Bring", "Traer");

    public string ForItem => Say("For", "Para");

    public string CutToLength => Say("cut to length", "cortar a medida");

    public string Labels => Say("Labels", "Etiquetas");

    public string LabelsLead =>
        Say(
            "Two labels for each cable, one an end. The sheet is A4 with 3 × 8 labels of 70 × 37 mm; print without scaling.",
            "Dos etiquetas por cable, una por extremo. La hoja es A4 con 3 × 8 etiquetas de 70 × 37 mm; imprima sin escalar."
        );

    public string LabelSheet => Say("Label sheet", "Hoja de etiquetas");

    public string LabelsHaveCodes =>
        Say(
            "The code on each label opens the row of its cable in the cable schedule.",
            "El código de cada etiqueta abre la fila de su cable en la lista de cables."
        );

    public string LabelsWithoutCodes =>
        Say(
            "The labels carry no code, since the site states no address.",
            "Las etiquetas no llevan código, porque el sitio no indica dirección."
        );
}
