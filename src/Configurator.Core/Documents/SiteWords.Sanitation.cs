namespace Configurator.Core.Documents;

/// <summary>The sheet of the cleaning crew: short orders, one thing a sentence.</summary>
public sealed partial record SiteWords
{
    public string AreaMap => Say("Where to wash how", "Dónde lavar y cómo");

    public string EnergiesTitle => Say("Energies while washing", "Energías durante el lavado");

    public string EnergyWord => Say("Energy", "Energía");

    public string WhereAndWhy => Say("Where, why", "Dónde, por qué");

    public string CoverTitle => Say("Cover, once locked", "Cubra, ya con bloqueo");

    public string NeverCoverTitle => Say("Never cover", "No cubra nunca");

    public string RemoveTitle => Say("Take off or open, once locked", "Quite o abra, ya con bloqueo");

    public string Nothing => Say("Nothing", "Nada");

    public string AfterTitle => Say("After the wash", "Después del lavado");

    public string InspectTitle => Say("Look at", "Mire");

    public string RestartTitle => Say("Before production, in this order", "Antes de producir, en este orden");

    public string SetByPlant => Say("set by plant", "lo fija la planta");

    public string SwabLimit => Say("Swab limit", "Límite de hisopo");

    public string AllergenLimit => Say("Allergen limit", "Límite de alérgenos");

    public string DryingWait => Say("Drying wait", "Espera de secado");

    public string SwabResult => Say("Swab result", "Resultado de hisopo");

    public string WashSignOff => Say("Signed off", "Firma");

    public string NameField => Say("Name", "Nombre");

    public string TimeField => Say("Date, time", "Fecha, hora");

    public string CrewField => Say("Crew", "Cuadrilla");

    public string CapsAndConnectors(int caps, int connectors) =>
        Say(
            $"Check {caps} caps and {connectors} connectors: tight, dry outside",
            $"Compruebe {caps} tapones y {connectors} conectores: apretados, secos por fuera"
        );

    public string GuardsBack =>
        Say(
            "Still locked: tools counted, wash hoods off, parts back; guards back last",
            "Aún bloqueado: herramientas contadas, fundas de lavado fuera, piezas en su sitio; por último, los resguardos"
        );

    /// <param name="notYet">What stays locked.</param>
    public string UnlockLast(string notYet) =>
        Say(
            "Everybody clear: each person takes off their own lock. Valves stay shut, main switch off",
            "Todos fuera: cada quien quita su candado. Las válvulas siguen cerradas, el interruptor principal apagado"
        ) + (notYet.Length > 0 ? Say($". Still locked: {notYet}", $". Sigue bloqueado: {notYet}") : "");

    public string MainsOn =>
        Say("Main switch on. Do not start yet", "Conecte el interruptor principal. No arranque todavía");

    public string AirOn =>
        Say("Open the air valve slowly; hands clear", "Abra despacio la válvula de aire; manos fuera");

    public string BarsOut(string parts) =>
        Say(
            $"Guards shut, reset. Heads lifted clear of the bars: pull the bars out from outside ({parts}). Count: out ____ = in ____",
            $"Resguardos cerrados, rearme. Con los cabezales levantados y libres, saque las barras desde fuera ({parts}). Cuente: fuera ____ = puestas ____"
        );

    public string BarsIn =>
        Say(
            "Heads up, air on, guards shut: push in every yellow bar listed below, from outside, one for each head. Bars in: ____. A bar does not go in: stop, call the supervisor.",
            "Cabezales arriba, con aire, resguardos cerrados: meta desde fuera cada barra amarilla indicada abajo, una por cabezal. Barras puestas: ____. Si una barra no entra, pare y llame al supervisor."
        );

    public string ScrapFirst => Say("Scrap the first pieces", "Deseche las primeras piezas");

    public string MistFirst =>
        Say(
            "Peroxide gear still on: rinse the mist chamber for 5 min at low pressure. Until then nobody takes out film or trash.",
            "Con el equipo para peróxido aún puesto, enjuague la cámara de niebla 5 min a baja presión. Hasta entonces nadie saca película ni restos."
        );

    public string CoolBeforeHand =>
        Say(
            "Contact thermometer on every hot part: below 40 °C before hand or water.",
            "Termómetro de contacto en cada parte caliente: menos de 40 °C antes de tocar o mojar."
        );

    public string NeverWaterOnHot => Say("Never water on a hot part.", "Nunca agua sobre una parte caliente.");

    public string HotWaterGear =>
        Say(
            "Face shield, gloves and waterproofs on: the water scalds. Nobody else within reach of the spray.",
            "Pantalla facial, guantes y ropa impermeable puestos: el agua quema. Nadie más al alcance del chorro."
        );

    public string StartEmpty =>
        Say("Guards shut, reset: start empty", "Resguardos cerrados, rearme: arranque en vacío");

    public string RunOut =>
        Say(
            "Run the product out, then stop production. Guards stay shut.",
            "Agote el producto en línea y pare la producción. Los resguardos siguen cerrados."
        );

    public string LockAll =>
        Say(
            "Make each energy safe as the table says, from the top down. Own lock, own tag. Read zero on each gauge of what is locked.",
            "Asegure cada energía según la tabla, de arriba abajo. Candado y etiqueta propios. Lea cero en cada manómetro de lo bloqueado."
        );

    public string TryIt =>
        Say(
            "Try it: press start. Nothing may move, the panel stays dark. If not: stop, call the supervisor.",
            "Pruébelo: pulse marcha. Nada debe moverse, el panel sigue apagado. Si no: pare y llame al supervisor."
        );

    public string OpenNow => Say("Only now open the guards.", "Solo ahora abra los resguardos.");

    public string BoxInWashedArea(string area) =>
        Say(
            $"{area}: hose the floor only, at low pressure. Wipe the control box by hand; never aim at it.",
            $"{area}: manguera solo al suelo, a baja presión. Limpie el armario de control con paño; no le apunte nunca."
        );

    public string WashedOtherwise(string areas) =>
        Say(
            $"Because of what is fitted, {areas}: not washed as on the standard machine. Map and steps already say so.",
            $"Por lo que lleva montado, {areas}: no se lavan como en la máquina estándar. El mapa y los pasos ya lo dicen."
        );

    public string DryFirst =>
        Say(
            "Take product, film and trash out dry. No compressed air: it spreads allergens.",
            "Saque en seco producto, película y restos. Sin aire comprimido: esparce alérgenos."
        );

    public string CoverNow =>
        Say("Cover, take off and open what is listed above.", "Cubra, quite y abra lo indicado arriba.");

    public string RinseWith(string areas) =>
        Say(
            $"{areas}: rinse top to bottom, water 49–60 °C (120–140 °F), about 14 bar (200 psi).",
            $"{areas}: enjuague de arriba abajo, agua a 49–60 °C (120–140 °F), unos 14 bar (200 psi)."
        );

    public string RinseLow(string areas) =>
        Say($"{areas}: low pressure only, from the hose.", $"{areas}: solo baja presión, con manguera.");

    public string KeepDry(string areas) => Say($"{areas}: no water. Wipe.", $"{areas}: sin agua. Limpie con paño.");

    public string HotLance(string areas) =>
        Say(
            $"{areas}: hot water to 80 °C (175 °F), lance moving, 0.5 m (20 in) from lenses, motors, connectors, seals and bearings.",
            $"{areas}: agua caliente hasta 80 °C (175 °F), lanza en movimiento, a 0,5 m (20 in) de lentes, motores, conectores, juntas y rodamientos."
        );

    public string JetsOff =>
        Say(
            "All through: never aim at connectors, glands, seals, bearings, panels.",
            "Siempre: no apunte nunca a conectores, prensaestopas, juntas, rodamientos ni paneles."
        );

    public string FoamWith(string areas) =>
        Say($"{areas}: foam from bottom to top. Use ONE of:", $"{areas}: espuma de abajo arriba. Use UNO de:");

    public string SanitizeWith(string areas) =>
        Say($"{areas}: spray at low pressure. Use ONE of:", $"{areas}: rocíe a baja presión. Use UNO de:");

    public string NeverHere(string agents) => Say($"Never here: {agents}.", $"Aquí nunca: {agents}.");

    public string NoAgentLeft(string areas) =>
        Say(
            $"{areas}: no agent suits everything fitted. Ask before you go on.",
            $"{areas}: ningún producto sirve para todo lo montado. Pregunte antes de seguir."
        );

    public string ScrubIt => Say("Scrub. Do not let foam dry.", "Cepille. No deje secar la espuma.");

    public string RinseOff =>
        Say(
            "Flood-rinse at low pressure, in the order of foaming, until no foam is left.",
            "Enjuague a baja presión, en el orden de la espuma, hasta que no quede espuma."
        );

    public string AlkaliOut =>
        Say("Rinse each cleaner off before the next one.", "Enjuague cada detergente antes del siguiente.");

    public string LookAndSwab =>
        Say(
            "Still locked: look with a torch. Swab. Not clean: go back to step 3.",
            "Aún bloqueado: mire con linterna. Tome muestras con hisopo. Si no está limpio, vuelva al paso 3."
        );

    public string ContactTime =>
        Say(
            "Keep the contact time of the label. Leave no standing water.",
            "Respete el tiempo de contacto de la etiqueta. No deje agua estancada."
        );

    public string DrainAndWipe =>
        Say(
            "Still locked: drain. Wipe or squeegee dry.",
            "Aún bloqueado: vacíe. Seque con paño o jalador (España: rasqueta de goma)."
        );

    public string Refit =>
        Say("Refit what you took off. Grease of grade H1 only.", "Monte lo que quitó. Solo grasa de grado H1.");

    public string NotTranslated =>
        Say("Some notes below are not translated yet.", "Algunas notas de abajo aún no están traducidas.");

    public string SanitationStandards =>
        Say(
            "Governing texts to look up: EN 1672-2, ISO 14159, 21 CFR 117 (hygiene); 29 CFR 1910.147, ISO 14118 (lockout); 29 CFR 1910.134, 1910.146 (oxygen); IEC 60529, ISO 20653 (ingress); the cleaner's label and safety data sheet; the plant's programme and local codes. Steps: university food-safety text and public sanitation guides.",
            "Textos que rigen: EN 1672-2, ISO 14159, 21 CFR 117 (higiene); 29 CFR 1910.147, ISO 14118 (bloqueo y etiquetado); 29 CFR 1910.134, 1910.146 (oxígeno); IEC 60529, ISO 20653 (protección); la etiqueta y la ficha de seguridad; el programa de la planta y la normativa local. Pasos: texto universitario y guías públicas de limpieza."
        );
}
