using Configurator.Core.Engineering.Ports;
using Configurator.Core.Engineering.Signals;

namespace Configurator.Core.Documents;

/// <summary>Signals, enable constants, settings of ports.</summary>
public sealed partial record SiteWords
{
    public string Controller => Say("Controller I/O", "E/S del control");

    public string ControllerLead =>
        Say(
            "What the controller program sees of this machine, how each port is set, and which constants tell the one program of this model what is fitted.",
            "Lo que el programa del control ve de esta máquina, cómo se ajusta cada puerto y qué constantes dicen al único programa de este modelo qué hay montado."
        );

    public string ProgramFiles => Say("Files for the program", "Archivos para el programa");

    public string TypesFile =>
        Say(
            "structures of IEC 61131-3 with every signal of this model, the same for every order",
            "estructuras IEC 61131-3 con todas las señales de este modelo, iguales para cada pedido"
        );

    public string EnableFile =>
        Say("constants of IEC 61131-3 for this order", "constantes IEC 61131-3 para este pedido");

    public string Signals => Say("Signals", "Señales");

    public string SignalsLead =>
        Say(
            "Values as they travel. Octet 0 travels first, and of a value the most significant octet. Octet: the first one that a value touches. Bit: its lowest bit, in the last octet that it touches. Bit offset: the same, counted from bit 0 of the last octet of all, as device descriptions do. A tag is the fit's name, its ordinal and the signal's name, at most 64 letters, digits and single underscores; it is the same in every order.",
            "Valores tal como viajan. El octeto 0 viaja primero, y de un valor, el octeto más significativo. Octeto: el primero que toca un valor. Bit: su bit más bajo, en el último octeto que toca. Desplazamiento: lo mismo, contado desde el bit 0 del último octeto de todos, como en las descripciones de dispositivos. Una etiqueta es el nombre del montaje, su ordinal y el nombre de la señal, con 64 letras, cifras y guiones bajos sencillos como máximo; es igual en cada pedido."
        );

    public string ProcessDataItems => Say("Process data", "Datos de proceso");

    public string Identity => Say("Identity", "Identidad");

    public string Tag => Say("Tag", "Etiqueta");

    public string Octet => Say("Octet", "Octeto");

    public string Bit => Say("Bit", "Bit");

    public string BitOffset => Say("Bit offset", "Desplazamiento");

    public string OneCount => Say("One count", "Una cuenta");

    public string Direction => Say("Direction", "Sentido");

    public string LiveWhen => Say("Live when", "Activa cuando");

    public string AlwaysLive => Say("always", "siempre");

    public string RawSignal => Say("octets that no definition describes", "octetos que ninguna definición describe");

    public string PlainSignal => Say("switching signal", "señal de conmutación");

    public string SecondSignal => Say("second switching signal", "segunda señal de conmutación");

    public string SafetySignal => Say("safety channel, for display alone", "canal de seguridad, solo para mostrar");

    public string Of(SignalKind kind) =>
        kind switch
        {
            SignalKind.Input => Say("input", "entrada"),
            SignalKind.Output => Say("output", "salida"),
            SignalKind.FastInput => Say("fast input of the box", "entrada rápida del armario"),
            SignalKind.BoxInput => Say("input of the box", "entrada del armario"),
            SignalKind.BoxOutput => Say("output of the box", "salida del armario"),
            SignalKind.SafetyInput => Say("input of the safety controller", "entrada del controlador de seguridad"),
            _ => Say("output of the safety controller", "salida del controlador de seguridad"),
        };

    public string Undescribed => Say("Wired, signals as in the data sheet", "Cableado, señales según la hoja de datos");

    public string UndescribedLead =>
        Say(
            "Wired into the control box; what their cores carry, such as ready, start or a drive's network data, is not in the definitions and has no tag here.",
            "Cableados al armario de control; lo que llevan sus hilos, como listo, marcha o los datos de red de un accionamiento, no está en las definiciones y no tiene etiqueta aquí."
        );

    public string EnableBits => Say("Enable constants of this order", "Constantes de habilitación de este pedido");

    public string EnableLead =>
        Say(
            "One for every option of this model. Where an option is not ordered, its signals are idle: the program neither waits for them nor acts on them.",
            "Una por cada opción de este modelo. Si una opción no está pedida, sus señales están inactivas: el programa no las espera ni actúa con ellas."
        );

    public string Constant => Say("Constant", "Constante");

    public string PortSettings => Say("Port settings", "Ajustes de puertos");

    public string PortSettingsLead =>
        Say(
            "Every port of every master and hub that is fitted; what nothing uses is switched off. Same type: VendorID and DeviceID must agree, else the port stays out of operation. Where recipes set a device, the controller writes its settings at every start of the port and the master keeps no copy; else a copy in the master sets a replaced device. Substitute values hold while communication is lost (common practice, no source).",
            "Cada puerto de cada maestro y caja de conexión (hub) montados; lo que nada usa está desactivado. Mismo tipo: VendorID y DeviceID deben coincidir; si no, el puerto queda fuera de servicio. Si las recetas ajustan un dispositivo, el control escribe sus ajustes en cada arranque del puerto y el maestro no guarda copia; si no, una copia en el maestro ajusta un dispositivo sustituido. Los valores sustitutivos valen mientras falta la comunicación (práctica común, sin fuente)."
        );

    public string PinFour => Say("Pin 4", "Pin 4");

    public string InspectionLevel => Say("Device check", "Comprobación del dispositivo");

    public string PortCycle => Say("Port cycle", "Ciclo del puerto");

    public string BackupRestore => Say("Backup and restore", "Copia y restauración");

    public string SubstituteValue => Say("When communication is lost", "Si se pierde la comunicación");

    public string InputsZero => Say("inputs 0 and not valid", "entradas a 0 y no válidas");

    public string OutputsOff => Say("outputs 0 (off)", "salidas a 0 (apagadas)");

    internal string Of(PortMode mode) =>
        mode switch
        {
            PortMode.IoLink => "IO-Link",
            PortMode.DigitalInput => ModeSwitching,
            _ => Say("off", "desactivado"),
        };

    internal string Of(PinTwoMode mode) =>
        mode switch
        {
            PinTwoMode.DigitalInput => ModeSwitching,
            PinTwoMode.ExtraSupply => Say("extra supply 2L+", "alimentación extra 2L+"),
            PinTwoMode.Off => Say("off", "desactivado"),
            _ => "",
        };

    internal string Of(Inspection inspection) =>
        inspection == Inspection.SameType
            ? Say("same type", "mismo tipo")
            : Say("none: its identity is not defined", "ninguna: identidad no definida");

    internal string Of(Backup backup) =>
        backup switch
        {
            Backup.BackupAndRestore => Say("backup and restore", "copia y restauración"),
            Backup.ControllerWrites => Say(
                "off: the controller writes the settings",
                "desactivada: el control escribe los ajustes"
            ),
            _ => Say("off until the device is checked", "desactivada hasta comprobar el dispositivo"),
        };
}
