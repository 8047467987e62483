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
            "Isolate and lock every energy source (electric, air, gas, water, steam, product pressure, gravity, heat) before reaching past a guard, cleaning by hand or changing wiring.",
            "Aísle y bloquee toda fuente de energía (eléctrica, aire, gas, agua, vapor, presión de producto, gravedad, calor) antes de meter la mano más allá de un resguardo, limpiar a mano o cambiar el cableado.",
            "29 CFR 1910.147, ISO 14118",
            Basis.Corroborated
        ),
        Of(
            StoredEnergy,
            "Exhaust trapped air, block raised parts and let heaters cool; wait until capacitors are discharged.",
            "Purgue el aire atrapado, bloquee las partes elevadas y deje enfriar los calefactores; espere a que los condensadores estén descargados."
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
            "Rigen la IEC 60204-1 y el código local. Una opción cambiada requiere una nueva evaluación de riesgos por una persona competente; este documento no la sustituye."
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
                "Hot water scalds: face shield, gloves, waterproofs; nobody else in the spray.",
                "El agua caliente quema: pantalla facial, guantes y ropa impermeable; nadie más dentro del chorro.",
                "ISO 13732-1"
            ),
            Of(
                HotSurface,
                "Hot surfaces: wait until they are below 40 °C before touching or wetting them.",
                "Superficies calientes: espere a que bajen de 40 °C antes de tocarlas o mojarlas.",
                "ISO 13732-1"
            ),
            Of(
                CrushingHead,
                "The raised seal head can fall: block it before reaching below.",
                "El cabezal de sellado elevado puede caer: bloquéelo antes de meter la mano debajo.",
                "ISO 13854, ISO 14118"
            ),
            Of(
                StoredAir,
                "Cylinders hold air after shut-off: vent them, and read zero on the gauge.",
                "Los cilindros guardan aire tras el corte: purgue y lea cero en el manómetro.",
                "ISO 4414"
            ),
            Of(
                Electricity,
                "Water and electricity: no open box, connector or cover; no jet on the control box.",
                "Agua y electricidad: ningún armario, conector ni tapa abiertos; ningún chorro al armario de control.",
                "IEC 60204-1, IEC 60529"
            ),
            Of(
                Chemicals,
                "Chemicals: read the label and the safety data sheet; goggles, gloves, apron. Never mix two products.",
                "Productos químicos: lea la etiqueta y la ficha de seguridad; gafas, guantes, delantal. No mezcle productos.",
                "29 CFR 1910.1200, label"
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
                "Hydrogen peroxide and its vapour: extraction on until the time is over; goggles, face shield, gloves.",
                "Peróxido de hidrógeno y su vapor: extracción encendida hasta el fin del tiempo; gafas, pantalla, guantes."
            ),
            Of(
                CleaningCircuit,
                "The cleaning circuit is hot, caustic and under pressure: open nothing while it runs.",
                "El circuito de limpieza está caliente, cáustico y a presión: no abra nada mientras funciona."
            ),
            Of(
                CautionTopic.Nitrogen,
                "Nitrogen suffocates without warning: shut, lock, air the room, carry an oxygen meter.",
                "El nitrógeno asfixia sin aviso: cierre, bloquee, ventile y lleve un medidor de oxígeno.",
                "29 CFR 1910.146, ISO 14118"
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
                "Lámpara rota: pare, no toque nada, retenga el producto, avise al encargado."
            ),
            Of(
                Blades,
                "Blades and dies cut: cut-resistant gloves, guard caps on.",
                "Cuchillas y troqueles cortan: guantes anticorte, fundas puestas.",
                "ISO 13857"
            ),
            Of(
                SlipperyFloor,
                "Wet floor is slippery: boots, hoses out of the way.",
                "Suelo mojado resbala: botas, mangueras recogidas.",
                "29 CFR 1910.22"
            ),
            Of(
                Jets,
                "Keep jets off connectors, seals, bearings and panels. Check that every connector is mated, tightened or capped.",
                "No dirija chorros a conectores, juntas, rodamientos ni paneles. Compruebe que cada conector esté acoplado, apretado o tapado."
            ),
            Of(
                Governs,
                "The plant's sanitation programme, its lockout procedure and local codes govern.",
                "Rigen el programa de limpieza de la planta, su procedimiento de bloqueo y los códigos locales."
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
