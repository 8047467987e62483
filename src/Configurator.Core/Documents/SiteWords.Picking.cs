using System.Collections.Immutable;

namespace Configurator.Core.Documents;

/// <summary>What the scripts of the page that picks an order say; figures stand for what they fill in.</summary>
public sealed partial record SiteWords
{
    public ImmutableArray<(string Name, string Text)> Picking =>
        [
            ("state_impossible", Say("Cannot be ordered", "No se puede pedir")),
            ("state_open", Say("Not complete yet", "Aún incompleto")),
            ("state_allowed", Say("Allowed", "Permitido")),
            ("state_checked", Say("Checked", "Comprobado")),
            ("state_released", Say("Released", "Liberado")),
            (
                "explain_impossible",
                Say(
                    "Some rules cannot hold together with what was chosen.",
                    "Algunas reglas no pueden cumplirse con lo elegido."
                )
            ),
            (
                "explain_open",
                Say("The rules ask for more than was chosen so far.", "Las reglas piden más de lo elegido hasta ahora.")
            ),
            (
                "explain_allowed",
                Say(
                    "All rules hold. This exact order has not been engineered unless it says so.",
                    "Se cumplen todas las reglas. Este pedido exacto no se ha calculado salvo que se indique."
                )
            ),
            (
                "explain_checked",
                Say(
                    "This exact order has been engineered without failed findings.",
                    "Este pedido exacto se ha calculado sin resultados fallidos."
                )
            ),
            ("explain_released", Say("Its revision is approved.", "Su revisión está aprobada.")),
            (
                "explainUnchecked",
                Say(
                    "This exact order has not been engineered: ask engineering before it is promised.",
                    "Este pedido exacto no se ha calculado: consulte a ingeniería antes de prometerlo."
                )
            ),
            (
                "explainUnreleased",
                Say(
                    "No released configuration is exactly this order.",
                    "Ninguna configuración liberada es exactamente este pedido."
                )
            ),
            (
                "isOfCheckedSet",
                Say(
                    "One of the checked set: engineered without failed findings.",
                    "Del conjunto comprobado: calculado sin resultados fallidos."
                )
            ),
            (
                "isPublished",
                Say(
                    "A published configuration, engineered without failed findings.",
                    "Configuración publicada, calculada sin resultados fallidos."
                )
            ),
            ("hasFailed", Say("Published, but with failed findings.", "Publicada, pero con resultados fallidos.")),
            ("isDraft", Say("Published as a draft.", "Publicada como borrador.")),
            ("yes", Say("yes", "sí")),
            ("notYet", Say("not yet", "aún no")),
            ("kind_chosen", Say("chosen", "elegida")),
            ("kind_left-out", Say("left out", "excluida")),
            ("kind_comes", Say("comes with {0}", "viene con {0}")),
            ("kind_needed", Say("needed by the rest of the order", "necesaria para el resto del pedido")),
            ("kind_ruled-out", Say("ruled out", "descartada")),
            ("kind_never", Say("can never be ordered", "nunca se puede pedir")),
            ("kind_instead", Say("can be taken instead", "se puede tomar en su lugar")),
            ("kind_free", Say("", "")),
            ("why", Say("Why?", "¿Por qué?")),
            ("whyNot", Say("Why not?", "¿Por qué no?")),
            ("without", Say("Without", "Sin")),
            ("undecided", Say("not decided yet", "sin decidir")),
            ("noneOfThem", Say("none, or not decided yet", "ninguna, o sin decidir")),
            ("cannotBe", Say("Why this cannot be ordered", "Por qué no se puede pedir")),
            ("ruleSays", Say("This rule is in the way:", "Lo impide esta regla:")),
            ("rulesSay", Say("These rules together are in the way:", "Lo impiden estas reglas juntas:")),
            ("asChosen", Say("Because of what was said of: {0}", "Por lo indicado sobre: {0}")),
            ("waysOut", Say("Nearest orders that work:", "Pedidos más cercanos que funcionan:")),
            ("noWayOut", Say("No order works with it.", "Ningún pedido funciona con ella.")),
            ("leaveOut", Say("leave out {0}", "quitar {0}")),
            ("add", Say("add {0}", "añadir {0}")),
            ("takeTimes", Say("take {0} {1} times", "tomar {0} {1} veces")),
            ("stillOpen", Say("Still open", "Queda abierto")),
            ("openChoice", Say("Choose: {0}", "Elegir: {0}")),
            ("openNumber", Say("Say how many: {0}", "Indicar cuántas: {0}")),
            ("taken", Say("Taken", "Incluido")),
            ("included", Say("included", "incluida")),
            (
                "nothingYet",
                Say("Nothing yet: start with what has to be chosen.", "Nada aún: empiece por lo que hay que elegir.")
            ),
            ("notReleased", Say("not released", "no liberada")),
            ("notReleasedHere", Say("released for {0} only", "liberada solo para {0}")),
            ("left", Say("{0} configurations left", "quedan {0} configuraciones")),
            ("notCounted", Say("number of configurations not computed", "número de configuraciones sin calcular")),
            (
                "loadsOfOrder",
                Say(
                    "Sums of what is taken so far, and what no order exceeds (proved)",
                    "Sumas de lo incluido hasta ahora, y lo que ningún pedido supera (demostrado)"
                )
            ),
            ("load", Say("Load", "Carga")),
            ("now", Say("This order", "Este pedido")),
            ("mostOfAll", Say("Any order, at most", "Cualquier pedido, máximo")),
            ("machineHas", Say("Machine has", "La máquina tiene")),
            (
                "trunk",
                Say(
                    "Trunk, {0}: volts at the last master, with every extension",
                    "Troncal, {0}: tensión en el último maestro, con todas las ampliaciones"
                )
            ),
            ("atLeast", Say("never below {0}", "nunca menos de {0}")),
            ("leadTime", Say("Longest lead time", "Plazo de entrega más largo")),
            ("days", Say("{0} days", "{0} días")),
            ("lineRate", Say("Cycles of the slowest station", "Ciclos de la estación más lenta")),
            ("slowest", Say("limited by {0}", "limitados por {0}")),
            ("nearestPublished", Say("Nearest published configuration", "Configuración publicada más cercana")),
            ("differs", Say("differs in {0}", "difiere en {0}")),
            ("whatDiffers", Say("What differs", "En qué difiere")),
            ("hereThere", Say("{0} here, {1} there", "{0} aquí, {1} allí")),
            ("startFrom", Say("Start from it", "Partir de ella")),
            ("saveFile", Say("Save as configuration", "Guardar como configuración")),
            ("copySummary", Say("Copy summary", "Copiar resumen")),
            ("askEngineering", Say("Ask engineering", "Consultar a ingeniería")),
            ("putBeside", Say("Put this order aside to compare", "Apartar este pedido para comparar")),
            ("putPublishedBeside", Say("Compare with it", "Comparar con ella")),
            ("publishedOnes", Say("Published configuration", "Configuración publicada")),
            ("differencesOnly", Say("Differences only", "Solo diferencias")),
            ("startAgain", Say("Start again", "Empezar de nuevo")),
            ("yourOrder", Say("Your order", "Su pedido")),
            ("putAside", Say("Order {0} put aside", "Pedido {0} apartado")),
            ("nothingBeside", Say("Nothing to compare with yet.", "Aún no hay con qué comparar.")),
            ("compared", Say("Options, loads and parts compared", "Opciones, cargas y piezas comparadas")),
            ("takeAway", Say("take away: {0}", "retirar: {0}")),
            ("besideNow", Say("{0} side by side", "{0} lado a lado")),
            ("options", Say("Options", "Opciones")),
            ("loads", Say("Loads", "Cargas")),
            ("parts", Say("Parts", "Piezas")),
            ("noDifference", Say("No difference.", "Ninguna diferencia.")),
            ("summaryHead", Say("{0}, machine revision {1}", "{0}, revisión {1} de la máquina")),
            ("summaryState", Say("State of this order: {0}.", "Estado de este pedido: {0}.")),
            ("question", Say("Question", "Pregunta")),
            ("text", Say("Text", "Texto")),
            ("copy", Say("Copy", "Copiar")),
            ("copied", Say("Copied.", "Copiado.")),
            (
                "copyYourself",
                Say(
                    "The text is selected: copy it with the keyboard.",
                    "El texto está seleccionado: cópielo con el teclado."
                )
            ),
            ("openMail", Say("Open in mail", "Abrir en el correo")),
            ("close", Say("Close", "Cerrar")),
            (
                "saveLead",
                Say(
                    "Save the file, put it into {0} of the definitions, and run the check.",
                    "Guarde el archivo, colóquelo en {0} de las definiciones y ejecute la comprobación."
                )
            ),
            ("fileId", Say("Id, also the name of the file", "Id, también nombre del archivo")),
            ("fileTitle", Say("Title", "Título")),
            ("fileDocument", Say("Document number", "Número de documento")),
            ("download", Say("Save file", "Guardar archivo")),
            (
                "idForm",
                Say(
                    "The id is lower-case words with hyphens, such as plain-yoghurt.",
                    "El id son palabras en minúsculas con guiones, como yogur-natural."
                )
            ),
            ("idUsed", Say("There is a configuration {0} already.", "Ya existe una configuración {0}.")),
            (
                "documentForm",
                Say(
                    "The document number is capital letters and digits, such as P4-201.",
                    "El número de documento son mayúsculas y cifras, como P4-201."
                )
            ),
            ("documentUsed", Say("Document number {0} is taken.", "El número de documento {0} ya está en uso.")),
            ("titleMissing", Say("A title is missing.", "Falta un título.")),
            ("toldComes", Say("Also included: {0}.", "También incluido: {0}.")),
            ("toldRuledOut", Say("{0} more options ruled out.", "{0} opciones más descartadas.")),
            (
                "noticeVersion",
                Say(
                    "This link has the form {0}, which this page cannot read: the order starts empty.",
                    "Este enlace tiene la forma {0}, que esta página no sabe leer: el pedido empieza vacío."
                )
            ),
            (
                "noticeUnknown",
                Say("“{0}” is not offered here and was left out.", "“{0}” no se ofrece aquí y se ha quitado.")
            ),
            ("noticeFormer", Say("“{0}” is now called {1}.", "“{0}” se llama ahora {1}.")),
            (
                "noticeNumber",
                Say(
                    "{0} cannot be taken {1} times, only {2} to {3}.",
                    "{0} no se puede tomar {1} veces, solo de {2} a {3}."
                )
            ),
            (
                "noticeChanged",
                Say(
                    "This order was: {0}, at machine revision {1}. With the rules of revision {2} it no longer works as it is.",
                    "Este pedido estaba: {0}, con la revisión {1} de la máquina. Con las reglas de la revisión {2} ya no vale tal cual."
                )
            ),
        ];
}
