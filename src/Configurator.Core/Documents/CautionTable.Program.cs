using System.Collections.Immutable;
using static Configurator.Core.Documents.CautionTopic;

namespace Configurator.Core.Documents;

/// <summary>Forcing, loading and watching from afar: what moves when nobody expects it.</summary>
internal static partial class CautionTable
{
    private static ImmutableArray<CautionLine> Program =>
        [
            Of(
                Forcing,
                "Forcing an output, loading a program or constants, or resetting from afar can start motion, heat, gas or dosing that nobody at the machine expects. Before that, see that nobody is within reach, and isolate and lock what must not move.",
                "Forzar una salida, cargar un programa o constantes o rearmar a distancia puede poner en marcha movimientos, calor, gas o dosificación que nadie espera junto a la máquina. Antes, compruebe que no haya nadie al alcance, y aísle y bloquee lo que no deba moverse.",
                "ISO 14118"
            ),
            Of(
                Unattended,
                "No restart after a stop, a lost connection or a new device may happen by itself: a deliberate start at the machine is needed.",
                "Ningún rearranque tras un paro, una conexión perdida o un dispositivo nuevo puede ocurrir por sí solo: hace falta un arranque deliberado junto a la máquina.",
                "ISO 14118, IEC 60204-1"
            ),
            Of(
                SafetyCopies,
                "Safety inputs and outputs belong to the safety controller. What the machine program holds of them is for display alone; no safety function may rest on it, on IO-Link process data or on a substitute value.",
                "Las entradas y salidas de seguridad pertenecen al controlador de seguridad. Lo que el programa tiene de ellas es solo para mostrar; ninguna función de seguridad puede basarse en ello, en datos de proceso IO-Link ni en un valor sustitutivo."
            ),
            Of(
                Substitutes,
                "A substitute value of 0 may look like a good reading. Use a value only while its port says that it is valid; a competent person decides what each output does when communication is lost.",
                "Un valor sustitutivo de 0 puede parecer una lectura correcta. Use un valor solo mientras su puerto indique que es válido; una persona competente decide qué hace cada salida cuando se pierde la comunicación."
            ),
            Of(
                ReadsOnly,
                "A monitoring system reads and never writes: settings have one owner, the controller. It stops, starts and releases nothing.",
                "Un sistema de supervisión lee y nunca escribe: los ajustes tienen un solo dueño, el control. No para, no arranca y no libera nada."
            ),
            Of(
                FromAfar,
                "A reading from afar is no proof that a machine is safe to touch: isolate, lock and verify at the machine.",
                "Una lectura a distancia no prueba que se pueda tocar la máquina: aísle, bloquee y verifique junto a ella."
            ),
            Of(
                NetworkAccess,
                "The plant's rules for network access govern.",
                "Rigen las normas de la planta para el acceso a la red.",
                "IEC 62443"
            ),
        ];
}
