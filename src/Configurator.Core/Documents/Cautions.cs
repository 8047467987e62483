using System.Collections.Immutable;

namespace Configurator.Core.Documents;

/// <summary>The usual cautions, in neutral words. They point to what governs and defer to competent persons.</summary>
/// <remarks>Source: own wording, topics from the standards of the trade (common practice, no source for the
/// words).</remarks>
internal static class Cautions
{
    public static ImmutableArray<string> Energy(SiteWords words) =>
        Of(
            words,
            (
                "Isolate and lock every energy source (electric, air, gas, water, steam, product pressure, gravity, heat) before reaching past a guard, cleaning by hand or changing wiring.",
                "Aísle y bloquee toda fuente de energía (eléctrica, aire, gas, agua, vapor, presión de producto, gravedad, calor) antes de meter la mano más allá de un resguardo, limpiar a mano o cambiar el cableado."
            ),
            (
                "Exhaust trapped air, block raised parts and let heaters cool; wait until capacitors are discharged.",
                "Purgue el aire atrapado, bloquee las partes elevadas y deje enfriar los calefactores; espere a que los condensadores estén descargados."
            )
        );

    public static ImmutableArray<string> Wiring(SiteWords words) =>
        Of(
            words,
            (
                "Isolate and lock every energy source before changing wiring. Verify by measurement that the circuit is dead.",
                "Aísle y bloquee toda fuente de energía antes de cambiar el cableado. Compruebe midiendo que el circuito está sin tensión."
            ),
            (
                "24 V circuits here are PELV; do not mix them with other voltages in one cable or connector.",
                "Los circuitos de 24 V son PELV; no los mezcle con otras tensiones en un cable o conector."
            ),
            (
                "The extra supply of class B ports is separate; bridging the two 0 V lines removes the safe switching-off of outputs.",
                "La alimentación extra de los puertos clase B está separada; unir las dos líneas de 0 V anula la desconexión segura de las salidas."
            ),
            (
                "An ingress marking holds only with connectors mated, tightened and capped.",
                "El grado de protección solo vale con conectores acoplados, apretados y tapados."
            ),
            (
                "IEC 60204-1 and the local code govern. A changed option needs a new risk check by a competent person; this document does not replace it.",
                "Rigen la IEC 60204-1 y el código local. Una opción cambiada requiere una nueva evaluación de riesgos por una persona competente; este documento no la sustituye."
            )
        );

    public static ImmutableArray<string> Sanitation(SiteWords words) =>
        [
            .. Energy(words),
            .. Of(
                words,
                (
                    "Follow the cleaner's label; never mix chlorine products with acid. Wear the protection that the label and the plant ask for.",
                    "Siga la etiqueta del producto; nunca mezcle productos clorados con ácido. Use la protección que pidan la etiqueta y la planta."
                ),
                (
                    "Keep jets off connectors, seals, bearings and panels. Check that every connector is mated, tightened or capped.",
                    "No dirija chorros a conectores, juntas, rodamientos ni paneles. Compruebe que cada conector esté acoplado, apretado o tapado."
                ),
                (
                    "The plant's sanitation programme, its lockout procedure and local codes govern.",
                    "Rigen el programa de limpieza de la planta, su procedimiento de bloqueo y los códigos locales."
                )
            ),
        ];

    public static ImmutableArray<string> Safety(SiteWords words) =>
        Of(
            words,
            (
                "Connections and counts are checked here. Performance levels of safety functions are for competent persons (ISO 13849-1, IEC 62061).",
                "Aquí se comprueban conexiones y cantidades. Los niveles de prestaciones de las funciones de seguridad corresponden a personas competentes (ISO 13849-1, IEC 62061)."
            )
        );

    private static ImmutableArray<string> Of(
        SiteWords words,
        params ReadOnlySpan<(string English, string Spanish)> lines
    )
    {
        var said = ImmutableArray.CreateBuilder<string>(lines.Length);
        foreach (var (english, spanish) in lines)
        {
            said.Add(words.Language == "es" ? spanish : english);
        }

        return said.MoveToImmutable();
    }
}
