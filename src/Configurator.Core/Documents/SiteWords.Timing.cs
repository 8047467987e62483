namespace Configurator.Core.Documents;

/// <summary>Cycles, answers and positions.</summary>
public sealed partial record SiteWords
{
    public string Timing => Say("Timing", "Tiempos");

    public string TimingLead =>
        Say(
            "Longest times from event to answer, and how far a position may be off. Every free-running part is taken at its worst: it has just begun its cycle. Constant delay can be compensated in the program; only what varies counts as position error.",
            "Tiempos máximos desde el suceso hasta la respuesta, y cuánto puede desviarse una posición. Cada parte con ciclo propio se toma en su peor caso: acaba de empezar su ciclo. El retardo constante se puede compensar en el programa; solo lo que varía cuenta como error de posición."
        );

    public string Answers => Say("Answers in time", "Respuestas a tiempo");

    public string AnswersLead =>
        Say(
            "Milliseconds of each part, at worst, as the definitions of device and control state them; port: a cycle and a message. An event just missed waits for one task cycle, and the next one works on it.",
            "Milisegundos de cada parte, en el peor caso, según indican las definiciones de dispositivo y control; puerto: un ciclo y un mensaje. Un suceso que acaba de perderse espera un ciclo de la tarea, y el siguiente lo procesa."
        );

    public string Positions => Say("Positions by a signal", "Posiciones por una señal");

    public string PositionsLead =>
        Say(
            "Worst: speed times the sum of all that varies (PKG-01, PKG-02). Standard deviation: the same, with each part evenly spread and independent of the others.",
            "Peor caso: velocidad por la suma de todo lo que varía (PKG-01, PKG-02). Desviación típica: lo mismo, con cada parte repartida por igual e independiente de las demás."
        );

    public string WorstFindings => Say("Closest to their limit", "Lo más cercano a su límite");

    public string WorstFindingsLead =>
        Say(
            "The worst over all configurations that can be ordered, in each check the closest to its limit first, with a configuration that comes to it.",
            "Lo peor de todas las configuraciones que se pueden pedir, en cada comprobación primero lo más cercano a su límite, con una configuración que llega a él."
        );

    public string NoNeeds =>
        Say("No fit of this order states a need.", "Ningún montaje de este pedido indica una necesidad.");

    public string Speed => Say("Speed", "Velocidad");

    public string Varies => Say("Varies by", "Varía en");

    public string Worst => Say("Worst", "Peor caso");

    public string Deviation => Say("Standard deviation", "Desviación típica");

    public string Messages => Say("Messages of IO-Link devices", "Mensajes de los dispositivos IO-Link");

    public string MessagesLead =>
        Say(
            "Longest message: a parameter is read and every gap is at its largest (IO-Link Interface and System Specification v1.1.x, IEC 61131-9, A.3.6). What the controller holds of a device is as old as one message at least, and a cycle more at most (IOL-07).",
            "Mensaje más largo: se lee un parámetro y cada pausa es la mayor (IO-Link Interface and System Specification v1.1.x, IEC 61131-9, A.3.6). Lo que el control tiene de un dispositivo es tan viejo como un mensaje al menos, y un ciclo más como máximo (IOL-07)."
        );

    public string MessageType => Say("Message", "Mensaje");

    public string Octets => Say("Octets in/out", "Octetos entrada/salida");

    public string LongestMessage => Say("Longest message", "Mensaje más largo");

    public string InputAge => Say("Input age", "Edad de la entrada");

    public string ProcessImage => Say("Process data of masters", "Datos de proceso de los maestros");

    public string Share => Say("Share used", "Parte usada");

    public string AtMost => Say("at most", "como máximo");

    public string AtLeast => Say("at least", "como mínimo");

    public string ShareUsed => Say("Share of each limit that is used", "Parte usada de cada límite");

    public string StageOf(Engineering.Timing.ChainStage stage) =>
        stage switch
        {
            Engineering.Timing.ChainStage.Device => Say("Device", "Dispositivo"),
            Engineering.Timing.ChainStage.Hub => Say("Hub", "Caja de conexión (hub)"),
            Engineering.Timing.ChainStage.Port => Say("Port", "Puerto"),
            Engineering.Timing.ChainStage.Input => Say("Fast input", "Entrada rápida"),
            Engineering.Timing.ChainStage.Master => Say("Master", "Maestro"),
            Engineering.Timing.ChainStage.Network => Say("Network", "Red"),
            Engineering.Timing.ChainStage.Task => Say("Task", "Tarea"),
            _ => Say("Output", "Salida"),
        };
}
