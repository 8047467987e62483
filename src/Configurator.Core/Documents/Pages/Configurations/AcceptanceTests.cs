namespace Configurator.Core.Documents.Pages.Configurations;

/// <summary>Tests of every machine.</summary>
internal static class AcceptanceTests
{
    public static IEnumerable<AcceptanceTest> General(SiteWords words)
    {
        return
        [
            Of(
                ("Protective bonding", "Conexión equipotencial"),
                ("continuity with 0.2 to 10 A", "continuidad con 0,2 a 10 A"),
                ("resistance fits length and cross-section", "resistencia acorde con longitud y sección"),
                "IEC 60204-1 18.2"
            ),
            Of(
                ("Insulation", "Aislamiento"),
                (
                    "500 V DC on power circuits; electronics and masters disconnected",
                    "500 V CC en circuitos de potencia; electrónica y maestros desconectados"
                ),
                ("at least 1 Mohm", "al menos 1 Mohm"),
                "IEC 60204-1 18.3"
            ),
            Of(
                ("Voltage test, where asked for", "Ensayo de tensión, si se pide"),
                (
                    "by qualified persons only; electronics and masters disconnected",
                    "solo personas cualificadas; electrónica y maestros desconectados"
                ),
                ("no breakdown", "sin perforación"),
                "IEC 60204-1 18.4"
            ),
            Of(
                ("Residual voltage", "Tensión residual"),
                ("after switching off", "tras desconectar"),
                ("at most 60 V after 5 s; 1 s at exposed pins", "60 V como máximo tras 5 s; 1 s en pines accesibles"),
                "IEC 60204-1 18.5"
            ),
            Of(
                ("Functions", "Funciones"),
                ("safety functions first, then all others", "primero las de seguridad, luego las demás"),
                ("as specified", "según especificación"),
                "IEC 60204-1 18.6"
            ),
            Of(
                ("Labels and documents", "Etiquetas y documentos"),
                ("every designation against these documents", "cada designación con estos documentos"),
                ("present and readable", "presente y legible"),
                ""
            ),
            Of(
                ("Air", "Aire"),
                ("hold pressure with the supply shut", "mantener presión con la alimentación cerrada"),
                ("loss below the plan's value", "pérdida menor que la prevista"),
                ""
            ),
            Of(
                ("Hygiene walk", "Ronda de higiene"),
                ("drain, radii, pockets, tightness of plugs, caps", "drenaje, radios, huecos, apriete de conectores, tapas"),
                ("as the sanitation notes ask", "como piden las notas de limpieza"),
                ""
            ),
            Of(
                ("Trial run", "Marcha de prueba"),
                ("rate, register, dwell, rejects", "cadencia, registro, tiempo de sellado, rechazos"),
                ("as the contract says", "según el contrato"),
                ""
            ),
        ];

        AcceptanceTest Of(
            (string En, string Es) about,
            (string En, string Es) measure,
            (string En, string Es) expected,
            string tolerance
        ) =>
            new(
                Either(about.En, about.Es),
                Either(measure.En, measure.Es),
                Either(expected.En, expected.Es),
                tolerance
            );

        string Either(string english, string spanish) => words.Language == "es" ? spanish : english;
    }
}
