using System.Collections.Immutable;
using Configurator.Core.Engineering;
using static Configurator.Core.Documents.CautionTopic;

namespace Configurator.Core.Documents;

/// <summary>All cautions, in neutral words. They point to what governs and defer to competent persons.</summary>
/// <remarks>Source: own wording, topics from the standards of the trade (common practice, no source for the words);
/// standards by title, from memory but for 29 CFR 1910.147 (corroborated).</remarks>
internal static partial class CautionTable
{
    public static ImmutableArray<CautionLine> Lines { get; } =
    [
        Of(
            Energy,
            "Isolate and lock every energy source (electric, air, gas, water, steam, product pressure, gravity, heat) before reaching past a guard or cleaning by hand; prove it by trying to start.",
            "Aísle y bloquee toda fuente de energía (eléctrica, aire, gas, agua, vapor, presión de producto, gravedad, calor) antes de meter la mano más allá de un resguardo o limpiar a mano; compruébelo intentando arrancar.",
            "29 CFR 1910.147, ISO 14118",
            Basis.Corroborated
        ),
        Of(
            StoredEnergy,
            "Block raised parts, then let trapped air out; let heaters cool.",
            "Calce las partes elevadas y evacúe después el aire atrapado; deje enfriar los calefactores."
        ),
        Of(
            Restart,
            "A machine may start when power comes back. Everybody clear, guards shut, then unlock.",
            "La máquina puede arrancar al volver la energía. Todos fuera, resguardos cerrados, y entonces desbloquee.",
            "ISO 14118"
        ),
        Of(
            Wiring,
            "Isolate and lock every energy source before changing wiring. Verify by measurement that the circuit is dead.",
            "Aísle y bloquee toda fuente de energía antes de cambiar el cableado. Compruebe midiendo que el circuito está sin tensión."
        ),
        Of(
            Pelv,
            "24 V circuits here are PELV; keep them apart from other voltages. Where one cable carries both, such as that of a motor with brake and encoder, every core has to be insulated for the highest voltage in it (IEC 60204-1, 13.1.3).",
            "Los circuitos de 24 V son PELV; sepárelos de otras tensiones. Donde un cable lleve ambas, como el de un motor con freno y encóder, cada hilo debe estar aislado para la tensión más alta del cable (IEC 60204-1, 13.1.3)."
        ),
        Of(
            ExtraSupply,
            "The extra supply of class B ports is separate; bridging the two 0 V lines removes the safe switching-off of outputs.",
            "La alimentación extra de los puertos clase B está separada; unir las dos líneas de 0 V anula la desconexión segura de las salidas."
        ),
        Of(
            WashDown,
            "An ingress marking holds only with connectors mated, tightened and capped.",
            "El grado de protección solo vale con conectores acoplados, apretados y tapados."
        ),
        Of(
            Dielectric,
            "Before a dielectric test disconnect electronics: masters, devices, drives, supplies and controller.",
            "Antes de un ensayo dieléctrico desconecte la electrónica: maestros, dispositivos, accionamientos, fuentes y controlador.",
            "IEC 60204-1 cl. 18"
        ),
        Of(
            Change,
            "IEC 60204-1 and the local code govern. A changed option needs a new risk check by a competent person; this document does not replace it.",
            "Rigen la IEC 60204-1 y la normativa local. Una opción cambiada requiere una nueva evaluación de riesgos por una persona competente; este documento no la sustituye."
        ),
        Of(
            Performance,
            "Connections and counts are checked here. Performance levels of safety functions are for competent persons (ISO 13849-1, IEC 62061).",
            "Aquí se comprueban conexiones y cantidades. Los niveles de prestaciones de las funciones de seguridad corresponden a personas competentes (ISO 13849-1, IEC 62061)."
        ),
        Of(
            Measurement,
            "Values are planning figures; verify them by measurement at start-up.",
            "Los valores son de planificación; verifíquelos midiendo en la puesta en marcha."
        ),
        .. Program,
        .. Washing,
    ];

    private static ImmutableArray<CautionLine> Washing =>
        [
            Of(
                HotWater,
                "Hot water scalds: face shield, gloves, waterproofs; nobody else within reach of the spray.",
                "El agua caliente quema: pantalla facial, guantes y ropa impermeable; nadie más al alcance del chorro.",
                "ISO 13732-1"
            ),
            Of(
                HotSurface,
                "Hot surfaces: touch or wet them only when a contact thermometer on them shows less than 40 °C.",
                "Superficies calientes: no las toque ni moje hasta que un termómetro de contacto sobre ellas marque menos de 40 °C.",
                "ISO 13732-1"
            ),
            Of(
                CrushingHead,
                "The raised seal head can fall: block it from outside, before the air is vented and before reaching below.",
                "El cabezal de sellado elevado puede caer: cálcelo desde fuera, antes de evacuar el aire y de meter la mano debajo.",
                "ISO 13854, ISO 14118"
            ),
            Of(
                StoredAir,
                "Cylinders hold air after shut-off: vent them, and read zero on the gauge.",
                "Los cilindros guardan aire tras el corte: evacúelo y lea cero en el manómetro.",
                "ISO 4414"
            ),
            Of(
                Electricity,
                "Water and electricity: open no box, connector or cover; no jet on the control box. Electrical work is for competent persons, who first prove absence of voltage.",
                "Agua y electricidad: no abra armarios, conectores ni cubiertas; ningún chorro al armario de control. Los trabajos eléctricos son para personas competentes, que antes verifican la ausencia de tensión.",
                "IEC 60204-1, IEC 60529"
            ),
            Of(
                Chemicals,
                "Chemicals: read the label and the safety data sheet; goggles, gloves, apron. Never mix two products.",
                "Productos químicos: lea la etiqueta y la ficha de seguridad; gafas estancas (goggles), guantes, delantal. No mezcle productos.",
                "29 CFR 1910.1200"
            ),
            Of(
                Caustic,
                "Alkali burns skin and eyes: rinse with water at once, then call for help.",
                "El álcali quema piel y ojos: enjuague con agua enseguida y pida ayuda."
            ),
            Of(
                Acid,
                "Acid burns. Never bring acid to chlorine: poison gas.",
                "El ácido quema. Nunca junte ácido y cloro: gas tóxico."
            ),
            Of(Chlorine, "Chlorine: air the room. Never on acid.", "Cloro: ventile la sala. Nunca sobre ácido."),
            Of(
                Peracetic,
                "Peracetic vapour hurts eyes and lungs: air the room, do not fog without protection.",
                "El vapor peracético daña ojos y pulmones: ventile, no nebulice sin protección."
            ),
            Of(
                Peroxide,
                "Hydrogen peroxide: goggles, face shield, gloves before anything is opened. Shut in between two valves it builds pressure and bursts: shut the drum valve, then flush with water. Extraction on until the vapour time is over.",
                "Peróxido de hidrógeno: gafas estancas (goggles), pantalla facial y guantes antes de abrir nada. Encerrado entre dos válvulas acumula presión y revienta: cierre la válvula del bidón y enjuague con agua. Extracción en marcha hasta el fin del tiempo de vapor."
            ),
            Of(
                CleaningCircuit,
                "The cleaning circuit is hot, caustic and under pressure: open nothing while it runs.",
                "El circuito de limpieza está caliente, cáustico y a presión: no abra nada mientras funciona."
            ),
            Of(
                CautionTopic.Nitrogen,
                "Nitrogen suffocates without warning. Oxygen below 19.5 % or alarm: leave at once; go back in only when the room is aired, a meter shows 19.5 % or more and the supervisor agrees. Local codes govern.",
                "El nitrógeno asfixia sin aviso. Oxígeno por debajo de 19,5 % o alarma: salga de inmediato; vuelva a entrar solo con la sala ventilada, un medidor en 19,5 % o más y permiso del supervisor. Rige la normativa local.",
                "29 CFR 1910.134, 29 CFR 1910.146"
            ),
            Of(
                CautionTopic.Laser,
                "Laser light blinds: lock its own supply; leave its housing shut.",
                "La luz láser ciega: bloquee su alimentación propia; no abra su carcasa.",
                "IEC 60825-1"
            ),
            Of(
                CautionTopic.Ultraviolet,
                "Ultraviolet light burns eyes and skin: lamps off and cold, housing shut.",
                "La luz ultravioleta quema ojos y piel: lámparas apagadas y frías, carcasa cerrada.",
                "IEC 62471"
            ),
            Of(
                BrokenGlass,
                "Broken lamp: stop, touch nothing, hold the product, call the supervisor.",
                "Lámpara rota: pare, no toque nada, retenga el producto, llame al supervisor."
            ),
            Of(
                Blades,
                "Blades and dies cut: cut-resistant gloves, blade caps on.",
                "Cuchillas y troqueles cortan: guantes anticorte, protectores de cuchilla puestos.",
                "ISO 13857"
            ),
            Of(
                SlipperyFloor,
                "Wet floor is slippery: boots, hoses out of the way.",
                "Piso mojado: resbala. Botas, mangueras recogidas.",
                "29 CFR 1910.22"
            ),
            Of(
                Jets,
                "Before any water: every connector mated, tightened or capped.",
                "Antes de usar agua: cada conector acoplado, apretado o tapado."
            ),
            Of(
                Governs,
                "The plant's sanitation programme, its lockout procedure and local codes govern.",
                "Rigen el programa de limpieza de la planta, su procedimiento de bloqueo y etiquetado y la normativa local."
            ),
        ];

    private static CautionLine Of(
        CautionTopic topic,
        string english,
        string spanish,
        string standards = "",
        Basis basis = Basis.FromMemory
    ) => new(topic, english, spanish, standards, basis);
}
