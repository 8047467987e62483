using Configurator.Core.Model;

namespace Configurator.Core.Documents;

/// <summary>Hygiene checks and their page.</summary>
public sealed partial record SiteWords
{
    public string VerdictUnstated => Say("not stated", "no indicado");

    public string VerdictReview => Say("to be compared", "por comparar");

    public string Hygiene => Say("Hygiene", "Higiene");

    public string HygieneLead =>
        Say(
            "Every washed part against its area, how that is washed and the agents used there. What is not stated, or needs a person to compare, is neither passed nor failed. The label, the maker's sheet and the plant decide.",
            "Cada parte lavada frente a su área, cómo se lava y los productos usados. Lo no indicado o lo que alguien debe comparar no pasa ni falla. Deciden la etiqueta, la hoja del fabricante y la planta."
        );

    public string HygieneNotStated =>
        Say(
            "The definition of this machine does not say how it is cleaned, so nothing of it was checked.",
            "La definición de esta máquina no dice cómo se limpia, así que no se ha comprobado nada."
        );

    public string Areas => Say("Areas", "Áreas");

    public string WashUsual => Say("Washed as a rule", "Lavado habitual");

    public string WashHere => Say("Washed here", "Lavado aquí");

    public string WashWorst => Say("Most severe that can be ordered", "El más severo que se puede pedir");

    public string MarkingNeeded => Say("Marking needed", "Marcado necesario");

    public string CablesHere => Say("Cables ending here", "Cables que acaban aquí");

    public string PartsHere => Say("Washed parts", "Partes lavadas");

    public string AgentsTitle => Say("Agents", "Productos");

    public string AgentsLead =>
        Say(
            "No known conflict means: nothing fitted in the area has a material that the table says to keep from the agent, at the stated concentration, temperature and time. The label and the plant decide.",
            "Sin conflicto conocido: nada montado en el área tiene un material que la tabla diga apartar del producto, a la concentración, temperatura y tiempo indicados. Deciden la etiqueta y la planta."
        );

    public string Agent => Say("Agent", "Producto");

    public string StepWord => Say("Step", "Paso");

    public string InUse => Say("In use", "En uso");

    public string NoKnownConflict => Say("no known conflict", "sin conflicto conocido");

    public string RuledOut => Say("do not use", "no usar");

    public string RuledOutBy => Say("Ruled out by", "Excluido por");

    public string WashedParts => Say("Washed parts", "Partes lavadas");

    public string Required => Say("Asked", "Pedido");

    public string Stated => Say("Stated", "Indicado");

    public string WashedAllOrders => Say("Washing over all orders", "Lavado en todos los pedidos");

    public string WashedAllOrdersLead =>
        Say(
            "Proved with the rules of the machine: the most severe washing that some order brings to each area, and how the parts that can be mounted there together with it fare.",
            "Demostrado con las reglas de la máquina: el lavado más severo que algún pedido lleva a cada área, y el resultado de las partes que pueden montarse allí junto con él."
        );

    public string OpenFindings => Say("Not passed", "No pasan");

    public static string NameOf(string language) =>
        language switch
        {
            "en" => "English",
            "es" => "Español",
            _ => language,
        };

    public string LanguagesOfPage => Say("Languages of this page", "Idiomas de esta página");

    public string OfEnergy(Energy energy) =>
        energy switch
        {
            Energy.Electricity => Say("Electricity", "Electricidad"),
            Energy.WorkingAir => Say("Working air", "Aire de trabajo"),
            Energy.PurgeAir => Say("Purge air", "Aire de barrido"),
            Energy.Nitrogen => Say("Nitrogen", "Nitrógeno"),
            Energy.Peroxide => Say("Peroxide", "Peróxido"),
            Energy.Water => Say("Water", "Agua"),
            Energy.CleaningCircuit => Say("Cleaning circuit", "Circuito de limpieza"),
            Energy.ProductPressure => Say("Product pressure", "Presión de producto"),
            Energy.Heat => Say("Heat", "Calor"),
            Energy.Gravity => Say("Raised parts", "Partes elevadas"),
            Energy.Laser => Say("Laser", "Láser"),
            Energy.Ultraviolet => Say("Ultraviolet lamps", "Lámparas ultravioleta"),
            _ => Say("Mains of the coder", "Alimentación eléctrica del codificador"),
        };

    public string OfState(EnergyState state, Energy energy) =>
        (state, energy) switch
        {
            (EnergyState.Locked, _) => Say("LOCK", "BLOQUEAR"),
            (EnergyState.LetDown, Energy.Gravity) => Say("BLOCK FIRST", "CALZAR PRIMERO"),
            (EnergyState.LetDown, Energy.Heat) => Say("LET COOL", "DEJAR ENFRIAR"),
            (EnergyState.LetDown, _) => Say("LET DOWN", "DESPRESURIZAR"),
            _ => Say("KEEP ON", "DEJAR PUESTO"),
        };
}
